import { describe, expect, test } from '@jest/globals';
import {
  batchCard,
  CHECK_LINE_MM,
  defaultReader,
  defectMap,
  figure,
  gantt,
  jointSection,
  landscape,
  openingPlan,
  phone,
  piecePlan,
  plyPlan,
  portrait,
  sheetLayout,
  svgOf,
  templateTiles,
  textBox,
  textMarks,
  type Drawing,
  type DrawingRequest,
  type Reader,
  type SheetFormat,
} from './index.js';
import { inks } from './sheet/svg.js';
import {
  sampleBatch,
  sampleContourMap,
  sampleDefectMap,
  sampleGantt,
  sampleOpeningPlan,
  samplePiecePlan,
  samplePlyPlan,
  sampleReBedSection,
  sampleSection,
  sampleSheetLayout,
} from '../../../test/support/sample-deck.js';

const block = { job: 'Foredeck of a sailing yacht', reference: 'R-0001', made: '2026-03-02', sheet: '1' };
const us: Reader = { ...defaultReader, locale: 'en-US', units: 'us' };

const all = (request: DrawingRequest): readonly Drawing[] => [
  defectMap(sampleDefectMap, request),
  defectMap(sampleContourMap, request),
  openingPlan(sampleOpeningPlan, request),
  piecePlan(samplePiecePlan, request),
  plyPlan(samplePlyPlan, request),
  sheetLayout(sampleSheetLayout, request),
  jointSection(sampleSection, request),
  jointSection(sampleReBedSection, request),
  ...gantt(sampleGantt, request),
  batchCard(sampleBatch, request),
];

/** Pairs of texts whose boxes cover each other by more than a hair, and texts that leave the sheet. */
function collisions(drawing: Drawing): readonly string[] {
  const texts = textMarks(drawing.marks).map((mark) => ({ says: mark.text, box: textBox(mark) }));
  const clash = texts.flatMap(({ says, box: a }, index) =>
    texts.slice(index + 1).flatMap(({ says: other, box: b }) => {
      const overlapX = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
      const overlapY = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
      return overlapX > 0.05 && overlapY > 0.05 ? [`${drawing.name}: "${says}" on "${other}"`] : [];
    }),
  );
  const outside = texts.flatMap(({ says, box }) =>
    box.x < -0.05 ||
    box.y < -0.05 ||
    box.x + box.width > drawing.widthMm + 0.05 ||
    box.y + box.height > drawing.heightMm + 0.05
      ? [`${drawing.name}: "${says}" leaves the sheet`]
      : [],
  );
  return [...clash, ...outside];
}

const formats: readonly (readonly [string, SheetFormat])[] = [
  ['A4 landscape', landscape('a4')],
  ['A4 portrait', portrait('a4')],
  ['letter landscape', landscape('letter')],
  ['letter portrait', portrait('letter')],
  ['a figure of 176 by 130 mm', figure(176, 130)],
  ['a figure of 176 by 200 mm', figure(176, 200)],
  ['a phone', phone],
];

describe.each(formats)('on %s', (_, format) => {
  test.each([
    ['millimetres', defaultReader],
    ['feet and inches', us],
  ] as const)('no text lies on another, in %s', (__, reader) => {
    expect(all({ format, reader, block }).flatMap(collisions)).toEqual([]);
  });
});

describe('a drawing', () => {
  const request = { format: landscape('a4'), reader: defaultReader, block };

  test('is the same bytes each time', () => {
    expect(all(request).map(svgOf)).toEqual(all(request).map(svgOf));
  });

  test('names and describes itself to a screen reader', () => {
    for (const drawing of all(request)) {
      const svg = svgOf(drawing);
      expect(svg).toMatch(
        new RegExp(`role="img" aria-labelledby="${drawing.name}-title ${drawing.name}-desc"`),
      );
      expect(svg).toMatch(/<title [^>]*>[^<]+<\/title>\n<desc [^>]*>[^<]{20,}<\/desc>/);
    }
  });

  test('carries no script, style, link or event', () => {
    for (const drawing of all(request))
      expect(svgOf(drawing)).not.toMatch(/<script|<style|href=|\son\w+=|style=|url\(/i);
  });

  test('shows the deck as it is seen: port stays port from above, and changes sides from below', () => {
    const upright = openingPlan(sampleOpeningPlan, { ...request, format: portrait('a4') });
    const across = openingPlan(sampleOpeningPlan, request);
    const turnOf = (drawing: Drawing): number => {
      const spot = (says: string): readonly [number, number] => {
        const box = textBox(textMarks(drawing.marks).find((mark) => mark.text.startsWith(says))!);
        return [box.x + box.width / 2, box.y + box.height / 2];
      };
      const [[ax, ay], [bx, by], [cx, cy]] = [spot('A '), spot('B '), spot('cleat S')];
      return Math.sign((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
    };
    expect(turnOf(upright)).toBe(turnOf(across));
    const below = openingPlan({ ...sampleOpeningPlan, seenFrom: 'below' }, request);
    expect(turnOf(below)).toBe(-turnOf(across));
    const saysSo = /Seen from below.*port and starboard change sides/;
    const notesOf = (drawing: Drawing): string =>
      textMarks(drawing.marks)
        .map((mark) => mark.text)
        .join(' ');
    expect(notesOf(below)).toMatch(saysSo);
    expect(notesOf(across)).not.toMatch(saysSo);
  });

  test('states the scale at which the deck was drawn', () => {
    const drawing = openingPlan(sampleOpeningPlan, request);
    expect(drawing.scale?.text).toBe('1:20');
    expect(textMarks(drawing.marks).map((mark) => mark.text)).toContain('1:20');
  });

  test('gives each corner of an opening on a tapered deck its way forward and its offset to a side', () => {
    const says = textMarks(openingPlan(sampleOpeningPlan, request).marks).map((mark) => mark.text);
    for (const value of ['0', '100', '660', '1260', '1680', 'P 540', 'P 220', 'S 130', 'S 670'])
      expect(says).toContain(value);
  });

  test('gives each corner of an opening on a square deck its distance from two edges', () => {
    const outer = [
      [0, -1050],
      [2250, -1050],
      [2250, 1050],
      [0, 1050],
    ] as const;
    const panel = { ...sampleOpeningPlan.panel, outer };
    const square = openingPlan({ ...sampleOpeningPlan, panel }, request);
    const says = textMarks(square.marks).map((mark) => mark.text);
    for (const value of ['0', '100', '660', '1260', '1680', '510', '830', '1180', '1720'])
      expect(says).toContain(value);
  });

  test('says on which side of its line to saw', () => {
    const saysOf = (isSkinKept: boolean) =>
      textMarks(openingPlan({ ...sampleOpeningPlan, isSkinKept }, request).marks)
        .map((mark) => mark.text)
        .join(' ');
    expect(saysOf(false)).toContain('saw along its inner side');
    expect(saysOf(true)).toContain('half of what it takes falls on each side');
  });

  test('tells beam, bulkhead and edge apart in line and legend', () => {
    const along = (y: number) => ({ from: [200, y], to: [900, y] }) as const;
    const supports = [
      { kind: 'beam', ...along(-300) },
      { kind: 'bulkhead', ...along(0) },
      { kind: 'toe-rail', ...along(300) },
    ] as const;
    const panel = { ...sampleOpeningPlan.panel, supports };
    const { marks } = openingPlan({ ...sampleOpeningPlan, panel }, request);
    const says = textMarks(marks).map((mark) => mark.text);
    for (const value of ['beam below', 'bulkhead below', 'toe rail']) expect(says).toContain(value);
    const types = new Set(marks.flatMap((mark) => (mark.kind === 'path' ? [mark.line] : [])));
    for (const type of ['hidden', 'hidden-wide', 'edge']) expect(types).toContain(type);
  });

  test('shows hostile names as text', () => {
    const evil = '</text><script>alert(1)</script>';
    const svg = svgOf(defectMap({ ...sampleDefectMap, fittings: [{ id: evil, at: [400, 0] }] }, request));
    expect(svg).not.toContain('<script>');
    expect(svg).toContain('&lt;script&gt;');
  });
});

describe('a full-size template', () => {
  const outline = [
    [0, 0],
    [300, 20],
    [320, 260],
    [150, 330],
    [-10, 240],
  ] as const;
  const tiles = templateTiles({ label: 'A1', outline, holes: [], grainDeg: 0, bleedHoles: [] }, 'a4', {
    reader: defaultReader,
    block,
  });

  test('of a piece 330 mm by 330 mm takes four A4 pages', () => {
    expect(tiles).toHaveLength(4);
  });

  test('has a check line of 100 mm on every page, and the page itself is in millimetres', () => {
    for (const tile of tiles) {
      const svg = svgOf(tile);
      const long = [...svg.matchAll(/d="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)"/g)]
        .filter((line) => line[2] === line[4])
        .map((line) => Number(line[3]) - Number(line[1]));
      expect(long).toContain(CHECK_LINE_MM);
      expect(svg).toContain(
        `width="${tile.widthMm}mm" height="${tile.heightMm}mm" viewBox="0 0 ${tile.widthMm} ${tile.heightMm}"`,
      );
    }
  });

  test('shows the whole outline at least once over its pages', () => {
    const perimeter = outline.reduce((sum, [x, y], index) => {
      const [nextX, nextY] = outline[(index + 1) % outline.length];
      return sum + Math.hypot(nextX - x, nextY - y);
    }, 0);
    const drawn =
      tiles
        .flatMap(({ marks }) =>
          marks.flatMap((mark) =>
            mark.kind === 'path' && !mark.closed && mark.line === 'visible' && mark.rings[0].length > 1
              ? mark.rings
              : [],
          ),
        )
        .map((ring) =>
          ring
            .slice(1)
            .reduce((sum, [x, y], index) => sum + Math.hypot(x - ring[index][0], y - ring[index][1]), 0),
        )
        .reduce((sum, long) => sum + long, 0) -
      tiles.length * CHECK_LINE_MM;
    expect(drawn).toBeGreaterThanOrEqual(perimeter);
    expect(drawn).toBeLessThan(perimeter * 1.1);
  });

  test('no text lies on another', () => {
    expect(tiles.flatMap(collisions)).toEqual([]);
  });
});

describe('a calendar with dates', () => {
  test('counts its days as dates, and on a phone writes every name in full above its bar', () => {
    const dated = { ...sampleGantt, startDate: '2027-02-26' };
    const svg = gantt(dated, { format: phone, reader: defaultReader, block }).map(svgOf).join('');
    expect(svg).toContain('26 Feb');
    expect(svg).not.toContain('Day from the start');
    const long = {
      tasks: [{ ...sampleGantt.tasks[0], title: 'Trim, sound the new core, mend what sounds hollow' }],
      startDate: '2027-02-26',
    };
    expect(gantt(long, { format: phone, reader: defaultReader, block }).map(svgOf).join('')).toContain(
      'mend what sounds hollow',
    );
  });
});

describe('on a phone', () => {
  test('no name of a section is cut short: layers are numbered from the top and listed below', () => {
    const said = textMarks(jointSection(sampleSection, { format: phone, reader: defaultReader, block }).marks)
      .map(({ text }) => text)
      .join(' ')
      .replace(/\s+/g, ' ');
    expect(said).not.toContain('…');
    expect(said).toContain('1: 4.0 mm outer skin, stays 2: 1.07 mm ply 4, Biaxial with mat 600 g/m²');
    expect(said).toContain('2.0 mm inner skin');
  });

  test('a long legend lengthens the sheet and leaves the deck its scale', () => {
    const few = defectMap(
      { ...sampleDefectMap, readings: [], fittings: [] },
      { format: phone, reader: defaultReader, block },
    );
    const many = defectMap(sampleDefectMap, { format: phone, reader: defaultReader, block });
    expect(many.heightMm).toBeGreaterThan(few.heightMm);
    expect(many.scale).toEqual(few.scale);
  });
});

describe('bands of chance', () => {
  const withBands = (probabilities: readonly number[]) =>
    defectMap(
      {
        ...sampleContourMap,
        contours: probabilities.map((probability) => ({ ...sampleContourMap.contours[0], probability })),
      },
      { format: landscape('a4'), reader: defaultReader, block },
    );
  const said = (drawing: Drawing) => textMarks(drawing.marks).map(({ text }) => text);

  test('stand in the legend in words, the surest first, each up to where the next begins', () => {
    const words = said(withBands([0.9, 0.1, 0.35, 0.5]));
    expect(words.filter((text) => text.includes('%'))).toEqual([
      'core almost surely bad, 90 % to 100 %',
      'core more likely bad than sound, 50 % to 90 %',
      'core may be bad, 35 % to 50 %',
      'small chance of bad core, 10 % to 35 %',
      'little sign of bad core, under 10 %',
    ]);
  });

  test('under one word share one entry', () => {
    const words = said(withBands([0.5, 0.6, 0.8]));
    expect(words.filter((text) => text.includes('more likely bad'))).toEqual([
      'core more likely bad than sound, 50 % to 100 %',
    ]);
  });

  test('are measured by a lightness that gives the published 50.0 for mid grey', () => {
    expect(lightnessOf('#777777')).toBeCloseTo(50.03, 1);
  });

  test('grow darker by at least ten steps of CIE lightness, so that grey print tells them apart', () => {
    const lightness = (['paper', 'band-1', 'band-2', 'band-3', 'band-4', 'ink'] as const).map((fill) =>
      lightnessOf(inks[fill]),
    );
    const falls = lightness.slice(1).map((value, index) => lightness[index] - value);
    expect(lightness[0]).toBeCloseTo(100, 3);
    expect(Math.min(...falls.slice(1))).toBeGreaterThan(10);
    expect(falls[0]).toBeGreaterThan(5);
  });

  test('bear the places to read next by number, in the shape of their kind', () => {
    const drawing = withBands([0.5]);
    expect(said(drawing)).toEqual(
      expect.arrayContaining([
        '1',
        '2',
        '3',
        'tap here next, in this order',
        'take a plug here next, in this order',
      ]),
    );
  });
});

/** CIE lightness of an sRGB colour. Source: IEC 61966-2-1 for sRGB, CIE 15 for lightness; the grey #777777 is 50.0 in published tables. */
function lightnessOf(hex: string): number {
  const whole = hex.length === 4 ? [...hex.slice(1)].map((digit) => digit + digit).join('') : hex.slice(1);
  const [red, green, blue] = [0, 2, 4].map((start) => {
    const value = Number.parseInt(whole.slice(start, start + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  const luminance = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  return luminance > 216 / 24389 ? 116 * Math.cbrt(luminance) - 16 : (luminance * 24389) / 27;
}
