/** The least that an estimate needs, so that the first try from the documentation works. Invented. */
export const leastRecord = {
  panel: {
    outline: [
      [0, 0],
      [2000, 0],
      [2000, 900],
      [0, 900],
    ],
  },
  outerSkin: { thicknessMm: 3 },
  innerSkin: { thicknessMm: 2 },
  core: { thicknessMm: '1/2 in' },
  zones: [
    {
      id: 'Z1',
      outline: [
        [700, 300],
        [1250, 300],
        [1250, 620],
        [700, 620],
      ],
    },
  ],
};
