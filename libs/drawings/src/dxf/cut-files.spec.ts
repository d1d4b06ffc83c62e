import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from '@jest/globals';
import { sampleEstimate, smallSample } from '../../../../test/support/sample-estimate.js';
import { piecesDxf, sheetsDxf } from './cut-files.js';
import { cutFile } from './estimate-cut-files.js';

const square = (x: number, y: number, size: number) =>
  [
    [x, y],
    [x + size, y],
    [x + size, y + size],
    [x, y + size],
  ] as const;
const pieces = [
  {
    label: 'A1',
    outline: square(100, 100, 200),
    holes: [square(150, 150, 20)],
    bleedHoles: [[200, 250]] as const,
    grainDeg: 0,
  },
  {
    label: 'A2\nlower',
    outline: [
      [0, 0],
      [120.5, 0],
      [60.25, 80],
    ] as const,
  },
];
const sheets = [
  {
    label: '1220 x 610, first',
    outline: [
      [0, 0],
      [1220, 0],
      [1220, 610],
      [0, 610],
    ] as const,
    hasGrain: true,
    placed: [{ piece: 'A1', outline: square(5, 5, 200), cutOrder: 1 }],
    offcutsKept: [square(300, 0, 500)],
  },
];

/** Debian's general-purpose reader of the format (python3-ezdxf), where it is installed. */
const python = '/usr/bin/python3';
const audit = `
import sys, json, ezdxf
doc = ezdxf.readfile(sys.argv[1])
report = doc.audit()
space = doc.modelspace()
lines = [e for e in space if e.dxftype() == 'LWPOLYLINE']
print(json.dumps({'errors': len(report.errors), 'fixes': len(report.fixes), 'units': doc.units, 'closed': all(e.closed for e in lines),
  'count': len(lines), 'layers': sorted({e.dxf.layer for e in space}), 'corners': [[round(v, 6) for v in p] for p in lines[0].get_points('xy')]}))
`;
import { opened } from '../../../../test/samples/opened.js';

function readerOrReason(): { readonly can: boolean; readonly reason: string } {
  try {
    execFileSync(python, ['-c', 'import ezdxf'], { stdio: 'ignore' });
    return { can: true, reason: '' };
  } catch {
    return { can: false, reason: 'python3-ezdxf is not installed here' };
  }
}

function audited(text: string): ReturnType<typeof JSON.parse> {
  const folder = mkdtempSync(join(tmpdir(), 'dxf-'));
  try {
    const file = join(folder, 'cut.dxf');
    writeFileSync(file, text);
    return JSON.parse(execFileSync(python, ['-c', audit, file], { encoding: 'utf8' }));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const reader = readerOrReason();
const withReader = reader.can ? test : test.skip;

describe(`files for a cutting machine${reader.can ? '' : ` (not audited: ${reader.reason})`}`, () => {
  withReader(
    'pieces open without errors or repairs, closed, in millimetres, a layer for each purpose',
    () => {
      expect(audited(piecesDxf(pieces, '3 mm kerf, saw outside the outlines'))).toMatchObject({
        errors: 0,
        fixes: 0,
        units: 4,
        closed: true,
        count: 3,
        layers: ['bleed hole', 'grain', 'hole', 'label', 'piece edge'],
        corners: [
          [0, 0],
          [200, 0],
          [200, 200],
          [0, 200],
        ],
      });
    },
  );

  withReader('sheets open without errors or repairs, with their pieces and what is worth keeping', () => {
    expect(audited(sheetsDxf(sheets))).toMatchObject({
      errors: 0,
      fixes: 0,
      closed: true,
      count: 3,
      layers: ['grain', 'label', 'offcut kept', 'piece edge', 'sheet edge'],
    });
  });

  test('a viewer is told that the drawing is metric and where it lies', () => {
    const lines = piecesDxf(pieces, '3 mm kerf, saw outside the outlines')
      .split('\n')
      .map((line) => line.trim());
    const after = (name: string): readonly string[] =>
      lines.slice(lines.indexOf(name) + 1, lines.indexOf(name) + 5);
    expect(after('$MEASUREMENT').slice(0, 2)).toEqual(['70', '1']);
    expect(after('$EXTMIN')).toEqual(['10', '0', '20', '-30']);
    // The words stand 30 mm under the pieces; 200 mm, 50 mm between, 120.5 mm; the taller piece is 200 mm.
    expect(after('$EXTMAX')).toEqual(['10', '370.5', '20', '200']);
  });

  test('a hole of a core piece survives into the file of the estimate', () => {
    const estimate = opened(sampleEstimate(smallSample));
    const [first, ...others] = estimate.core.pieces;
    const [[x, y]] = first.outline;
    const holes = [square(x + 20, y + 20, 30)];
    const text = cutFile('piece-plan', {
      core: { ...estimate.core, pieces: [{ ...first, holes }, ...others] },
    });
    const count = (of: string | undefined): number => (of?.match(/\nhole\n/g) ?? []).length;
    expect(count(text)).toBe(count(cutFile('piece-plan', estimate)) + 1);
  });

  test('the same pieces give the same file, byte for byte, and no label breaks a line', () => {
    expect(piecesDxf(pieces, '3 mm kerf, saw outside the outlines')).toBe(
      piecesDxf(pieces, '3 mm kerf, saw outside the outlines'),
    );
    expect(piecesDxf(pieces, '3 mm kerf, saw outside the outlines')).toContain('A2 lower');
  });
});
