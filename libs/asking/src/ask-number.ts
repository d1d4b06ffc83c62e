import type { Range } from '#lib/kernel';
import { assumed, entered } from '#lib/provenance';
import { assumptionFrom, inUnit } from './unit-figures.js';
import { numberFaults, wholeFaults } from './request-faults.js';
import { otherwiseIn, settledOr } from './settled-or.js';
import type { FigureAs, Otherwise, Question } from './question.js';

export interface NumberAsked<U extends string, O> extends Wording {
  readonly unit: U;
  readonly range: Range;
  readonly isWhole?: boolean;
  readonly otherwise?: O;
}

/** How a question is put to a person. */
export interface Wording {
  readonly meaning: string;
  /** Said in the place of the meaning. */
  readonly description?: string;
  /** Said after the meaning, or after what is said in its place. */
  readonly note?: string;
  /** As a caller may write it. */
  readonly example?: unknown;
}

export interface NumberQuestion<U extends string, O> extends Question<number, FigureAs<U, O>, O> {
  readonly unit: U;
  readonly range: Range;
}

/** A number with its unit and the range in which an answer can be given. */
export function ask<const U extends string, const O extends Otherwise<number> | undefined = undefined>(
  asked: NumberAsked<U, O>,
): NumberQuestion<U, O> {
  const { unit, range, meaning, isWhole = false } = asked;
  const otherwise = otherwiseIn(asked);
  const within = { ...range, unit };
  return {
    ...asked,
    otherwise,
    form: { kind: 'number', unit, range, isWhole },
    accepts: isNumber,
    faults: (said, at) => (isWhole ? wholeFaults(at, said, within) : numberFaults(at, said, within)),
    settle: (said, at, answers) =>
      settledOr(said, {
        at,
        answers,
        otherwise,
        accepts: isNumber,
        entered: (value) => entered<U>(unit, inUnit(unit, value), meaning, at),
        assumed: ({ value, ...rest }) => assumed<U>(unit, inUnit(unit, value), meaning, { at, ...rest }),
        listed: assumptionFrom,
      }),
  };
}

const isNumber = (said: unknown): said is number => typeof said === 'number';
