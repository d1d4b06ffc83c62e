const squaresAndCubes = /(?<=\d[\u00A0 ]?|[/·×]|per )(mm|cm|m|in|ft|yd)([23])(?![\w-]|\.\d)/g;
const degrees = /(?<=\d[\u00A0 ]?)deg([CF])\b/g;

/** What the service says in words, with the signs of units that its papers print: the data spells them in letters. */
export const withSigns = (text: string): string =>
  text
    .replace(squaresAndCubes, (_, unit: string, power: string) => `${unit}${power === '2' ? '²' : '³'}`)
    .replace(degrees, '°$1');
