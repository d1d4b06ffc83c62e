import type { CoreBill, CutCoreSheet } from '#lib/coring';
import type { Check, CoreSection, CoreSheetLayout } from '../document/estimate-document.js';
import type { Job } from '../job/job.js';

export function coreSection(job: Job, bill: CoreBill): CoreSection {
  const { stack, mosaic, waste } = bill;
  return {
    material: job.core.code,
    materialName: job.core.name,
    stack: stackRows(bill),
    cavityMm: job.answers.core.cavityMm.value,
    stackMm: stack.height.value,
    flushMm: stack.flush.value,
    netAreaM2: bill.netArea.value,
    wasteAreaM2: bill.boughtArea.value - bill.netArea.value,
    purchaseAreaM2: bill.boughtArea.value,
    wasteByCause: [
      { cause: 'kerf', areaM2: squareMetres(waste.kerfMm2) },
      { cause: 'trim', areaM2: squareMetres(waste.trimMm2) },
      { cause: 'whole sheets', areaM2: squareMetres(waste.roundingMm2) },
      { cause: 'scraps', areaM2: squareMetres(waste.scrapsMm2) },
    ],
    pieces: mosaic.pieces.map(
      ({
        label,
        beddingOrder,
        opening,
        outline,
        thicknessMm,
        areaM2,
        grainDeg,
        bleedHoles,
        form,
        layer,
      }) => ({
        label,
        beddingOrder,
        opening,
        outline,
        thicknessMm,
        areaM2,
        grainDeg,
        bleedHoles,
        form,
        layer,
      }),
    ),
    sheets: bill.cuts.flatMap(({ thicknessMm, form, sheets }) =>
      sheets.map((sheet) => sheetSection(sheet, thicknessMm, form)),
    ),
    utilisation: bill.utilisation,
    massChangeKg: stack.massChange.value,
    ...(stack.waterLeaving === undefined ? {} : { waterLeavingKg: stack.waterLeaving.value }),
    notes: [
      stack.check.words,
      ...(stack.camber === undefined ? [] : [stack.camber.words]),
      ...mosaic.findings.map(({ words }) => words),
    ],
  };
}

const squareMetres = (areaMm2: number): number => areaMm2 / (1000 * 1000);

function stackRows({ stack: { layers, bondLine } }: CoreBill): CoreSection['stack'] {
  const bond = (number: number) => ({ layer: `bond line ${number}`, thicknessMm: bondLine.value });
  return [
    bond(1),
    ...layers.flatMap(({ thicknessMm, form }, index) => [
      { layer: `core, ${form}`, thicknessMm },
      bond(index + 2),
    ]),
  ];
}

const sheetSection = (
  sheet: CutCoreSheet,
  thicknessMm: number,
  form: 'plain' | 'scored',
): CoreSheetLayout => ({
  label: sheet.label,
  lengthMm: sheet.lengthMm,
  widthMm: sheet.widthMm,
  thicknessMm,
  form,
  isBought: sheet.isBought,
  utilisation: sheet.utilisation,
  placed: sheet.placements.map(({ pieceId, outline, turnDeg, cutOrder }) => ({
    piece: pieceId,
    outline,
    turnDeg,
    cutOrder,
  })),
  offcutsKept: sheet.offcutsKept.map(({ outline }) => outline),
});

/** The new skin must not stand proud; what was found while dividing the core is a check of its own. */
export const coreChecks = ({ stack: { check, flush }, mosaic }: CoreBill): readonly Check[] => [
  {
    code: 'core-flush',
    title: 'New core and bond lines in the cavity',
    state: 'repaired',
    unit: 'mm',
    demand: flush.value,
    verdict: check.verdict === 'holds' ? 'passes' : 'fails',
    governs: check.words,
    source: 'DECK-REPAIR-PRACTICE',
    ...(check.nextBest === undefined ? {} : { remedy: check.nextBest.words }),
  },
  ...mosaic.findings.map(({ code, piece, words }): Check => ({
    code: piece === undefined ? `core-${code}` : `core-${code}-${piece}`,
    title: 'Division of the core',
    unit: '1',
    verdict: code === 'cannot-be-slid-in' ? 'fails' : 'not-established',
    governs: words,
    source: 'COMMON-PRACTICE',
  })),
];
