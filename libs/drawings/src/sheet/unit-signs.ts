const squaresAndCubes = /(?<=\d[\u00A0 ]?|[/·×]|per )(mm|cm|m|in|ft|yd)([23])(?![\w-]|\.\d)/g;
const degrees = /(?<=\d[\u00A0 ]?)deg([CF])\b/g;

/** Units in running text as they are printed: m² for m2, °C for degC. The data spells them in letters that any program can read. */
export const withUnitSigns = (text: string): string =>
  text
    .replace(squaresAndCubes, (_, unit: string, power: string) => `${unit}${power === '2' ? '²' : '³'}`)
    .replace(degrees, '°$1');
