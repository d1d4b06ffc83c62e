import type { CoreBill, CorePiece, CutCoreSheet, MosaicFinding, SolidFill } from '#lib/coring';
import { solidOverCoreKgPerM2 } from '#lib/methods';
import type { Check, CoreSection, CoreSheetLayout } from '../document/estimate-document.js';
import { bayInOpenTime } from '../stages/open-time.js';
import type { Job } from '../job/job.js';
import { lipOrWider, lipWords, type FilledLip } from './lip-or-wider.js';

/** `spareMm` is how far the cut could be moved out over its lip. */
export function coreSection(job: Job, bill: CoreBill, spareMm: number): CoreSection {
  const { stack, mosaic, waste } = bill;
  const cavityMm = job.answers.core.cavityMm.value;
  const hasCore = mosaic.pieces.length > 0;
  return {
    material: job.core.code,
    materialName: job.core.name,
    stack: stackRows(bill, cavityMm),
    cavityMm,
    stackMm: hasCore ? stack.height.value : cavityMm,
    flushMm: hasCore ? stack.flush.value : 0,
    netAreaM2: bill.netArea.value,
    wasteAreaM2: bill.boughtArea.value - bill.netArea.value,
    purchaseAreaM2: bill.boughtArea.value,
    wasteByCause: [
      { cause: 'kerf', areaM2: squareMetres(waste.kerfMm2) },
      { cause: 'trim', areaM2: squareMetres(waste.trimMm2) },
      { cause: 'whole sheets', areaM2: squareMetres(waste.roundingMm2) },
      { cause: 'scraps', areaM2: squareMetres(waste.scrapsMm2) },
    ],
    pieces: mosaic.pieces.map((piece) => pieceSection(piece)),
    division: bill.division.words,
    solidFills: mosaic.solidFills.map((fill) => solidSection(fill)),
    solidAreaM2: mosaic.solidAreaM2,
    solidVolumeL: mosaic.solidVolumeL,
    sheets: bill.cuts.flatMap(({ thicknessMm, form, sheets }) =>
      sheets.map((sheet) => sheetSection(sheet, thicknessMm, form)),
    ),
    kerfMm: bill.kerfMm,
    utilisation: bill.utilisation,
    massChangeKg: stack.massChange.value + solidOverCoreKg(job, bill),
    ...(stack.waterLeaving === undefined ? {} : { waterLeavingKg: stack.waterLeaving.value }),
    notes: [
      ...(hasCore ? [stack.check.words, ...(stack.camber === undefined ? [] : [stack.camber.words])] : []),
      ...(hasCore ? divisionNotes(job, bill) : []),
      ...mosaic.findings.map(({ words }) => words),
      ...lipNotes(job, bill, spareMm),
    ],
  };
}

/** What lies under a lip and nobody asked to fill. */
export const filledLips = ({ mosaic }: CoreBill): readonly FilledLip[] =>
  mosaic.solidFills.filter(({ isUnderLip, because }) => isUnderLip && because !== 'asked');

/** A lip that is filled is set against a cut that takes more of it in. */
function lipNotes({ record }: Job, bill: CoreBill, spareMm: number): readonly string[] {
  const compared = lipOrWider(filledLips(bill), spareMm);
  const flange = record.method?.flangeMm === undefined ? 'usual' : 'stated';
  return compared === undefined ? [] : [lipWords(compared, spareMm, flange)];
}

/** Why bays are small, and what joints cost where a sheet carries load of its own. */
function divisionNotes(job: Job, { mosaic }: CoreBill): readonly string[] {
  const bays = new Set(mosaic.pieces.map(({ bay, opening, layer }) => `${opening}/${layer}/${bay}`)).size;
  const places = new Set(mosaic.pieces.map(({ opening, layer }) => `${opening}/${layer}`)).size;
  const bay = bays > places ? bayInOpenTime(job) : undefined;
  return [
    ...(bay === undefined ? [] : [bay.words]),
    ...(job.core.coreType === 'marine-plywood' && mosaic.pieces.length > places ? [PLYWOOD_JOINTS] : []),
  ];
}

/** Source: [WOOD-HANDBOOK-2010] butt and scarf joints; [FROM-MEMORY] the groove and its tape. */
const PLYWOOD_JOINTS =
  'joints of plywood lie off beams and fittings: a butt keeps at most 25 % of the strength along the grain, a scarf of 1:12 about 90 %; fill a V at each butt with paste and lay one tape of 150 mm over it (priced here where one layer is bedded; a joint along the grain is only filled), or scarf the lengths before they are bedded';

/** What is filled solid weighs more than the core it stands for. */
const solidOverCoreKg = ({ answers }: Job, { mosaic }: CoreBill): number =>
  mosaic.solidAreaM2 * solidOverCoreKgPerM2(answers.core.cavityMm.value);

const pieceSection = ({
  label,
  beddingOrder,
  opening,
  bay,
  outline,
  holes,
  thicknessMm,
  areaM2,
  isUnderLip,
  grainDeg,
  bleedHoles,
  form,
  layer,
}: CorePiece): CoreSection['pieces'][number] => ({
  label,
  beddingOrder,
  opening,
  bay,
  outline,
  holes,
  thicknessMm,
  areaM2,
  isUnderLip,
  ...(grainDeg === undefined ? {} : { grainDeg }),
  bleedHoles,
  form,
  layer,
});

const solidSection = ({
  opening,
  kind,
  outline,
  holes,
  areaM2,
  volumeL,
  widthMm,
  lifts,
  isUnderLip,
}: SolidFill): CoreSection['solidFills'][number] => ({
  opening,
  kind,
  outline,
  holes,
  areaM2,
  volumeL,
  widthMm,
  lifts,
  isUnderLip,
});

const squareMetres = (areaMm2: number): number => areaMm2 / (1000 * 1000);

/** Where no piece is bedded the cavity holds solid laminate, or the core that was in it. */
function stackRows({ stack, mosaic }: CoreBill, cavityMm: number): CoreSection['stack'] {
  if (mosaic.pieces.length > 0) return coreRows(stack);
  const layer =
    mosaic.solidFills.length > 0 ? 'solid laminate from skin to skin' : 'old core, left where it is';
  return [{ layer, thicknessMm: cavityMm }];
}

function coreRows({ layers, bondLine, wetLine }: CoreBill['stack']): CoreSection['stack'] {
  const bond = (number: number) =>
    number > layers.length && wetLine.value > 0
      ? { layer: 'resin under the new skin, laid wet', thicknessMm: wetLine.value }
      : { layer: `bond line ${number}`, thicknessMm: bondLine.value };
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
  placed: sheet.placements.map(({ pieceId, outline, holes, turnDeg, cutOrder }) => ({
    piece: pieceId,
    outline,
    holes,
    turnDeg,
    cutOrder,
  })),
  offcutsKept: sheet.offcutsKept.map(({ outline }) => outline),
});

/** The new skin must not stand proud; what was found while dividing the core is a check of its own. */
export const coreChecks = (bill: CoreBill): readonly Check[] => [
  ...(bill.mosaic.pieces.length === 0 ? [] : [flushCheck(bill)]),
  ...bill.mosaic.findings.flatMap((finding) => findingCheck(finding)),
];

const flushCheck = ({ stack: { check, flush } }: CoreBill): Check => ({
  code: 'core-flush',
  title: 'New core and bond lines in the cavity',
  state: 'repaired',
  unit: 'mm',
  demand: flush.value,
  verdict: check.verdict === 'holds' ? 'passes' : 'fails',
  governs: check.words,
  source: 'DECK-REPAIR-PRACTICE',
  ...(check.nextBest === undefined ? {} : { remedy: check.nextBest.words }),
});

/** What is filled solid is told, not checked; it is priced as it is. */
function findingCheck({ code, opening, words }: MosaicFinding): readonly Check[] {
  if (code === 'filled-solid' || code === 'much-filled-solid') return [];
  return [
    {
      code: opening === undefined ? `core-${code}` : `core-${code}-${opening}`,
      title: 'Division of the core',
      unit: '1',
      verdict: code === 'cannot-be-slid-in' ? 'fails' : 'not-established',
      governs: words,
      source: 'COMMON-PRACTICE',
    },
  ];
}
