import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import type { Caller } from '../access/roles.js';
import { AuditTrail } from '../audit/audit-trail.js';
import { answer, HttpProblem, notFound } from '../edge/problems.js';
import { Database, type Transaction } from '../persistence/database.js';
import { undecodable, uploadFaults } from '../pictures/upload.js';
import { Workbench } from '../workbench/workbench.js';
import type { PhotographQueryDto } from './dto/photograph.dto.js';
import type { EstimateRow } from './estimate.entity.js';
import { EstimatesRepository } from './estimates.repository.js';
import { rootIdIn } from './estimates.service.js';
import { MOST_PHOTOGRAPHS, photographLimits } from './photograph-limits.js';
import { photographJob } from './photograph.job.js';
import { shownOf } from './photograph.mapper.js';
import { PhotographsRepository, type NewPhotograph, type PhotographNote } from './photographs.repository.js';

/** A photograph of the deck, without its picture. */
export interface DeckPhotograph {
  /** Number that the photograph has on the plan and in the report, from 1. */
  readonly number: number;
  /** Words under the photograph in the report. */
  readonly caption: string;
  /** Where it was taken, in the deck plane; absent when nobody said. */
  readonly at?: readonly [number, number];
  /** 0 towards the bow, 90 to starboard. */
  readonly directionDeg?: number;
  /** Width of the kept picture. */
  readonly widthPx: number;
  /** Height of the kept picture. */
  readonly heightPx: number;
  /** When the photograph was taken in (RFC 3339). */
  readonly addedAt: string;
  /** Address of the picture. */
  readonly href: string;
  /** Form in which the picture is kept. */
  readonly mediaType: 'image/jpeg';
}

export interface PhotographList {
  /** Photographs of the estimate, by their number. */
  readonly items: readonly DeckPhotograph[];
}

export interface PhotographPlace {
  readonly id: string;
  readonly number: string;
}

/** A photograph as it is handed in. */
export interface GivenPhotograph {
  readonly said: PhotographQueryDto;
  readonly uploaded: Uint8Array;
  /** Whether another photograph of the same number is left alone. */
  readonly isNewOnly: boolean;
}

/** Photographs of the deck of an estimate; its revisions show the same. */
@Injectable()
export class PhotographsService {
  constructor(
    private readonly database: Database,
    private readonly workbench: Workbench,
  ) {}

  list({ organisationId }: Caller, id: string): Promise<PhotographList> {
    return this.database.inOrganisation(organisationId, async (tx) => {
      const notes = await PhotographsRepository.in(tx).notesOf(await rootIdIn(tx, id));
      return { items: notes.map((note) => viewOf(id, note)) };
    });
  }

  picture({ organisationId }: Caller, { id, number }: PhotographPlace): Promise<Uint8Array> {
    return this.database.inOrganisation(organisationId, async (tx) => {
      const found = await PhotographsRepository.in(tx).find(await rootIdIn(tx, id), numbered(number));
      if (found === null) throw noPhotograph(number);
      return found.picture;
    });
  }

  /**
   * Every fault of words and picture at once; the picture is judged and drawn anew before it is kept.
   *
   * @throws {HttpProblem} precondition-failed, when the number is taken and the photograph there is left alone
   */
  async put(
    caller: Caller,
    { id, number }: PhotographPlace,
    { said, uploaded, isNewOnly }: GivenPhotograph,
  ): Promise<DeckPhotograph> {
    const { organisationId } = caller;
    const row = await this.database.inOrganisation(organisationId, (tx) => rowIn(tx, id));
    const place = placeOf(said, row);
    const faults = [...(place.ok ? [] : place.problems), ...uploadFaults(uploaded, photographLimits)];
    answer(faults.length === 0 ? success(undefined) : refusal(...faults));
    const drawn = await this.workbench.do(photographJob, uploaded, caller);
    const { bytes, ...size } = answer(drawn === undefined ? refusal(undecodable) : success(drawn));
    const one: NewPhotograph = {
      number: numbered(number),
      caption: said.caption,
      ...answer(place),
      ...size,
      picture: bytes,
    };
    return this.database.inOrganisation(organisationId, async (tx) => {
      const photographs = PhotographsRepository.in(tx);
      const addedAt = isNewOnly
        ? await photographs.add(row.rootId, one)
        : await photographs.put(row.rootId, one);
      if (addedAt === undefined) throw numberTaken(one.number);
      await recorded(tx, caller, row.rootId, { action: 'changed', after: noted(one) });
      return viewOf(id, { ...one, addedAt });
    });
  }

  async remove(caller: Caller, { id, number }: PhotographPlace): Promise<void> {
    await this.database.inOrganisation(caller.organisationId, async (tx) => {
      const rootId = await rootIdIn(tx, id);
      if (!(await PhotographsRepository.in(tx).remove(rootId, numbered(number)))) throw noPhotograph(number);
      await recorded(tx, caller, rootId, { action: 'removed', before: { number: numbered(number) } });
    });
  }
}

async function rowIn(tx: Transaction, id: string): Promise<EstimateRow> {
  await rootIdIn(tx, id);
  const row = await EstimatesRepository.in(tx).find(id);
  if (row === null) throw notFound(`The estimate ${id}`);
  return row;
}

const numberTaken = (number: number): HttpProblem =>
  new HttpProblem('precondition-failed', {
    detail: `The estimate has a photograph ${number} already; list its photographs and take a number that is free.`,
  });

const noPhotograph = (number: string) => notFound(`A photograph ${JSON.stringify(number.slice(0, 10))}`);

/** @throws {HttpProblem} not-found, for what can be the number of no photograph */
function numbered(said: string): number {
  const number = /^[1-9]\d?$/.test(said) ? Number(said) : 0;
  if (number < 1 || number > MOST_PHOTOGRAPHS)
    throw notFound(
      `A photograph ${JSON.stringify(said.slice(0, 10))}; they are numbered 1 to ${MOST_PHOTOGRAPHS}, and it`,
    );
  return number;
}

type Placed = Pick<NewPhotograph, 'xMm' | 'yMm' | 'directionDeg'>;

/** On the plan only where the plan is: a place beyond the box round the panel could not be drawn. */
function placeOf({ at, directionDeg }: PhotographQueryDto, { input }: EstimateRow): Outcome<Placed> {
  if (at === undefined)
    return directionDeg === undefined
      ? success({ xMm: null, yMm: null, directionDeg: null })
      : refusal(problem('missing', '/at', { expected: 'the place that the direction is seen from' }));
  const [xMm, yMm] = at.split(',').map(Number);
  const faults = ([xMm, yMm] as const).flatMap((value, axis) =>
    beyond(
      value,
      input.panel.outline.map((corner) => corner[axis]),
    ),
  );
  return faults.length > 0
    ? refusal(...faults)
    : success({ xMm, yMm, directionDeg: directionDeg === undefined ? null : Number(directionDeg) });
}

function beyond(value: number, corners: readonly number[]): readonly Problem[] {
  const [least, most] = [Math.min(...corners), Math.max(...corners)];
  return value >= least && value <= most
    ? []
    : [
        problem('out-of-range', '/at', {
          value: `${value} mm`,
          range: `on the panel, ${least} to ${most} mm`,
        }),
      ];
}

const viewOf = (id: string, note: PhotographNote): DeckPhotograph => ({
  ...shownOf(note),
  widthPx: note.widthPx,
  heightPx: note.heightPx,
  addedAt: note.addedAt.toISOString(),
  href: `/v1/estimates/${id}/photographs/${note.number}`,
  mediaType: 'image/jpeg',
});

/** The audit trail, which forgets nothing, keeps what a picture was by its hash, and no caption: it may name people. */
const noted = ({
  picture,
  number,
  xMm,
  yMm,
  directionDeg,
  widthPx,
  heightPx,
}: NewPhotograph): Readonly<Record<string, unknown>> => ({
  number,
  xMm,
  yMm,
  directionDeg,
  widthPx,
  heightPx,
  sha256: createHash('sha256').update(picture).digest('hex'),
});

const recorded = (
  tx: Transaction,
  caller: Caller,
  rootId: string,
  deed: { readonly action: 'changed' | 'removed'; readonly before?: unknown; readonly after?: unknown },
): Promise<void> => AuditTrail.in(tx).add(caller, { subject: 'photograph', code: rootId, ...deed });
