import type { Reinforcement } from '#lib/catalogue';
import { computeChecked, entered, fromCatalogue, sumOf, type Figure } from '#lib/provenance';
import { fraction, gPerM2, kgPerM3 } from '#lib/units';
import type { LaidPly, Layup } from './layup.js';
import { findPlyMethod } from '../ply/ply-properties.js';
import { plyThickness, resinPerArea } from '../ply/ply-thickness.js';

export interface LayupFigures {
  readonly thicknessMm: Figure<'mm'>;
  readonly glassGPerM2: Figure<'g/m2'>;
  readonly resinGPerM2: Figure<'g/m2'>;
}

export interface LayupSource {
  readonly material: Reinforcement;
  readonly layup: Layup;
  /** Where the fibre fraction was typed, when it was. */
  readonly fractionAt?: string;
}

/** Thickness, glass and resin of one fabric as figures that can say why. */
export function layupFigures(source: LayupSource): LayupFigures {
  const {
    material,
    layup: { plies },
  } = source;
  const parts = plies.map((ply, i) => plyFigures(source, ply, i));
  const named = <K extends keyof LayupFigures>(key: K) =>
    Object.fromEntries(parts.map((part, i) => [`layer${i + 1}`, part[key]]));
  return {
    thicknessMm: sumOf('mm', `thickness of ${material.name}`, named('thicknessMm')),
    glassGPerM2: sumOf('g/m2', `glass in ${material.name}`, named('glassGPerM2')),
    resinGPerM2: sumOf('g/m2', `resin in ${material.name}, no waste`, named('resinGPerM2')),
  };
}

function plyFigures(source: LayupSource, ply: LaidPly, i: number): LayupFigures {
  const { material, layup } = source;
  const arealMassGPerM2 = fromCatalogue('g/m2', gPerM2(ply.arealMassGPerM2), `glass of layer ${i + 1}`, {
    item: material.code,
    field: 'layers',
    cite: material.arealMassGPerM2.cite,
  });
  const density = (meaning: string, value: number) =>
    fromCatalogue('kg/m3', kgPerM3(value), meaning, {
      item: layup.method,
      field: meaning,
      cite: findPlyMethod(layup.method)?.cite ?? material.arealMassGPerM2.cite,
    });
  const fibreMassFraction = fractionFigure(source, ply, i);
  return {
    glassGPerM2: arealMassGPerM2,
    resinGPerM2: computeChecked(resinPerArea, { arealMassGPerM2, fibreMassFraction }),
    thicknessMm: computeChecked(plyThickness, {
      arealMassGPerM2,
      fibreMassFraction,
      fibreDensityKgPerM3: density('fibre density', layup.fibreDensityKgPerM3),
      resinDensityKgPerM3: density('cured resin density', layup.resinDensityKgPerM3),
    }),
  };
}

function fractionFigure({ material, fractionAt }: LayupSource, ply: LaidPly, i: number): Figure<'1'> {
  const meaning = `fibre mass fraction of layer ${i + 1}, in proportion to the fabric's own`;
  if (fractionAt !== undefined) return entered('1', fraction(ply.fibreMassFraction), meaning, fractionAt);
  const { low, high, cite } = material.fibreMassFraction;
  return fromCatalogue('1', fraction(ply.fibreMassFraction), meaning, {
    item: material.code,
    field: 'fibreMassFraction',
    cite,
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
  });
}
