import type { DefectRecord } from '#lib/estimate';

/** A record that is valid by default; tests change one thing at a time. Invented. */
export const aRecord = (changes: Partial<DefectRecord> = {}): DefectRecord => ({
  title: 'Invented deck',
  panel: {
    outline: [
      [0, 0],
      [2000, 0],
      [2000, 1000],
      [0, 1000],
    ],
  },
  outerSkin: { thicknessMm: 3 },
  innerSkin: { thicknessMm: 2 },
  core: { thicknessMm: 12.7 },
  zones: [
    {
      id: 'Z1',
      outline: [
        [700, 350],
        [1300, 350],
        [1300, 650],
        [700, 650],
      ],
    },
  ],
  ...changes,
});
