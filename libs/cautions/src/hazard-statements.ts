/** Meaning of the hazard statements that the shipped materials carry. Source: [GHS], from memory of the purple book's wording. */
export const hazardStatements: Readonly<Record<string, string>> = {
  H225: 'highly flammable liquid and vapour',
  H226: 'flammable liquid and vapour',
  H242: 'heating may cause a fire',
  H290: 'may be corrosive to metals',
  H302: 'harmful if swallowed',
  H304: 'may be fatal if swallowed and enters airways',
  H312: 'harmful in contact with skin',
  H314: 'causes severe skin burns and eye damage',
  H315: 'causes skin irritation',
  H317: 'may cause an allergic skin reaction',
  H318: 'causes serious eye damage',
  H319: 'causes serious eye irritation',
  H331: 'toxic if inhaled',
  H332: 'harmful if inhaled',
  H334: 'may cause allergy or asthma symptoms or breathing difficulties if inhaled',
  H335: 'may cause respiratory irritation',
  H336: 'may cause drowsiness or dizziness',
  H361d: 'suspected of damaging the unborn child',
  H372: 'causes damage to organs through prolonged or repeated exposure',
  H411: 'toxic to aquatic life with long lasting effects',
  H412: 'harmful to aquatic life with long lasting effects',
  EUH066: 'repeated exposure may cause skin dryness or cracking',
};

export interface HazardStatement {
  readonly code: string;
  readonly text: string;
}

/** Statements for codes, each once, in order of code; a code without words keeps its code. */
export const statementsFor = (codes: readonly string[]): readonly HazardStatement[] =>
  [...new Set(codes)]
    .sort()
    .map((code) => ({ code, text: hazardStatements[code] ?? 'see the safety data sheet' }));
