import { FARTHEST_MM, MOST_CORNERS } from '#lib/geometry';
import { problem, type Problem } from '#lib/kernel';
import { Field, shownValue, type Said } from './field.js';
import { listFaults, listSchema, type ListLimits } from './plain-fields.js';

/** The schema of `[xMm, yMm]`, x forward, y to starboard. */
export const pointSchema = {
  type: 'array' as const,
  items: { type: 'number' as const, minimum: -FARTHEST_MM, maximum: FARTHEST_MM },
  minItems: 2,
  maxItems: 2,
  description: '[xMm, yMm]: x forward, y to starboard, in the deck plane.',
};

/** The same as an entry of a list, where it is said once for all lists. */
const entrySchema = { ...pointSchema, 'x-name': 'PointInput' };

/** One point `[xMm, yMm]`. */
export const Point = (said: Said = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'a point [xMm, yMm]',
    check: pointFaults,
    schema: { ...pointSchema, ...describedBy(said), ...examples(said) },
  });

/** A list of points; `Outline` is the closed form with at least three. Checked in one pass, not one object per point. */
export const Points = (said: Said & ListLimits = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'a list of points [xMm, yMm]',
    check: (value) => pointListFaults(value, said),
    schema: {
      type: 'array',
      items: entrySchema,
      ...listSchema({ most: MOST_CORNERS, ...said }),
      ...describedBy(said),
      ...examples(said),
    },
  });

/** The corners of a shape in order round its edge, the last joined to the first: 3 to 2,000 points. */
export const Outline = (said: Said = {}): PropertyDecorator => Points({ ...said, least: 3 });

/** Several outlines, such as holes. */
export const Outlines = (said: Said & ListLimits = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'a list of outlines',
    check: (value) =>
      listFaults(value, { of: 'outlines', most: 100, ...said }, (outline) =>
        pointListFaults(outline, { least: 3 }),
      ),
    schema: {
      type: 'array',
      items: { type: 'array', items: entrySchema, minItems: 3, maxItems: MOST_CORNERS },
      ...listSchema({ most: 100, ...said }),
      ...describedBy(said),
      ...examples(said),
    },
  });

function pointListFaults(value: unknown, { least = 0, most = MOST_CORNERS }: ListLimits): readonly Problem[] {
  if (Array.isArray(value) && value.length <= most && value.length >= least && value.every(isPoint))
    return [];
  return listFaults(value, { of: 'points [xMm, yMm]', least, most }, pointFaults);
}

export const pointFaults = (value: unknown): readonly Problem[] =>
  isPoint(value)
    ? []
    : [
        problem('not-a-point', '', {
          mostMm: FARTHEST_MM,
          value: Array.isArray(value) && value.length <= 4 ? shortList(value) : shownValue(value),
        }),
      ];

const shortList = (value: readonly unknown[]): string => `[${value.map(shownValue).join(', ')}]`;

const isPoint = (value: unknown): boolean =>
  Array.isArray(value) && value.length === 2 && isCoordinate(value[0]) && isCoordinate(value[1]);

const isCoordinate = (value: unknown): boolean =>
  typeof value === 'number' && value >= -FARTHEST_MM && value <= FARTHEST_MM;

const examples = ({ example }: Said) => (example === undefined ? {} : { examples: [example] });
const describedBy = ({ description }: Said) => (description === undefined ? {} : { description });
