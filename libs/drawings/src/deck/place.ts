/** A place on the deck: `[xMm, yMm]`, x forward, y to starboard, seen from above. */
export type Place = readonly [xMm: number, yMm: number];
export type Outline = readonly Place[];

/** A region of the deck plane: its outer edge and what is left out of it. */
export interface Area {
  readonly outer: Outline;
  readonly holes: readonly Outline[];
}

export const ringsOf = ({ outer, holes }: Area): readonly Outline[] => [outer, ...holes];
