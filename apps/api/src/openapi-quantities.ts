import { exampleOf, siUnitOf, unitsOf, type Dimension } from '#lib/units';
import { isRecord } from './edge/dto/field.js';

type Node = Record<string, unknown>;

/** What a request may state with a unit of its own, by the name of its schema. */
const dimensions: Readonly<Record<string, Dimension>> = {
  LengthInput: 'length',
  AreaInput: 'area',
  MassInput: 'mass',
  TemperatureInput: 'temperature',
  ArealMassInput: 'areal mass',
  SpeedInput: 'speed',
};

/** Begins with a number and ends with a unit; which units there are is for the description to say. */
const TYPED = '^\\s*-?[0-9./].*[A-Za-z°\'"][23]?\\s*$';

/** A quantity as a person may type it: said once, and referred to by every field that takes one. */
export const namedQuantities: Readonly<Record<string, object>> = Object.fromEntries(
  Object.entries(dimensions).map(([name, dimension]) => [
    name,
    {
      description: `A number in ${siUnitOf(dimension)}, or text with its unit: ${unitsOf(dimension).join(', ')}. Limits that stand beside a reference to this are in ${siUnitOf(dimension)}.`,
      type: ['number', 'string'],
      minLength: 2,
      maxLength: 40,
      pattern: TYPED,
      examples: [exampleOf(dimension)],
    },
  ]),
);

const byUnits = new Map(
  Object.entries(dimensions).map(([name, dimension]) => [
    `With a unit: ${unitsOf(dimension).join(', ')}.`,
    name,
  ]),
);

/** The name of the quantity that a field takes, and what the field says beside it: its words, limits and examples. */
export function quantityNameOf(part: Node): { readonly name: string; readonly beside: Node } | undefined {
  const { oneOf, ...said } = part;
  if (!Array.isArray(oneOf) || oneOf.length !== 2) return undefined;
  const [number, text]: readonly unknown[] = oneOf;
  if (!isRecord(number) || !isRecord(text) || typeof text.description !== 'string') return undefined;
  const name = byUnits.get(text.description);
  const limits = Object.fromEntries(Object.entries(number).filter(([key]) => key !== 'type'));
  return name === undefined ? undefined : { name, beside: { ...said, ...limits } };
}
