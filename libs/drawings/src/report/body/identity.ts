import { metresText } from '../../reader.js';
import { bodySection, facts, paragraph, type Facts, type Section } from '../document.js';
import type { ReportRequest } from '../request.js';
import { dateText, word } from '../said.js';
import { joined } from './speaking.js';

/** Who, what, where and when; everything that nobody stated is named as not stated. */
export function vesselSection(request: ReportRequest): Section {
  const said = request.reader.words.body;
  const missing = missingIn(request);
  return bodySection('identity', said.identity, [
    pairs(said.identity, statedIn(request)),
    ...(missing.length === 0 ? [] : [paragraph(said.notStated(missing.join(', ')))]),
  ]);
}

const pairs = (caption: string, rows: readonly (readonly [string, string])[]): Facts => ({
  ...facts(
    caption,
    rows.filter(([, value]) => value !== ''),
  ),
  across: 2,
});

function statedIn(request: ReportRequest): readonly (readonly [string, string])[] {
  const { record, estimate, issue, reader } = request;
  const said = reader.words.body;
  const { vessel, inspection, parties, occurrence } = record;
  const surveyor = parties?.surveyor;
  return [
    [said.vessel, vessel?.name ?? ''],
    [said.builderAndModel, joined([vessel?.builder, vessel?.model])],
    [said.registration, vessel?.registration ?? ''],
    [said.hullNumber, vessel?.hullNumber ?? ''],
    [said.craft, craftSaid(request)],
    [reader.words.identity.panel, estimate.scope.panel.name],
    [
      said.inspectedAt,
      joined([
        inspection?.place,
        inspection?.lies === undefined ? undefined : word(said.lies, inspection.lies),
      ]),
    ],
    [said.inspectedOn, inspection?.on === undefined ? '' : dateText(reader, inspection.on)],
    [said.conditions, inspection?.conditions ?? ''],
    [said.instruments, inspection?.instruments ?? ''],
    [said.client, parties?.client ?? ''],
    [said.instructedBy, parties?.instructedBy ?? ''],
    [said.surveyor, joined([surveyor?.name, surveyor?.qualification, surveyor?.firm])],
    [said.event, occurrence?.on === undefined ? '' : dateText(reader, occurrence.on)],
    [said.insurerReference, occurrence?.insurerReference ?? ''],
    [
      said.document,
      said.documentSaid(
        estimate.reference ?? issue.id.slice(0, SHORT_ID),
        String(issue.revision),
        dateText(reader, issue.madeAt),
      ),
    ],
  ];
}

/** As much of a long identifier as tells two documents of one file apart; the foot of each page has all of it. */
const SHORT_ID = 8;

function craftSaid({ record: { craft }, reader }: ReportRequest): string {
  const said = reader.words.identity;
  if (craft === undefined) return '';
  return joined([
    craft.craftType === undefined ? undefined : word(said.craftTypes, craft.craftType),
    craft.lengthHullM === undefined ? undefined : said.hullLength(metresText(reader, craft.lengthHullM)),
    craft.yearBuilt === undefined ? undefined : said.built(String(craft.yearBuilt)),
  ]);
}

/** In the order in which a report names them. */
function missingIn({ record, reader }: ReportRequest): readonly string[] {
  const { fields } = reader.words.body;
  const { vessel, inspection, parties, occurrence } = record;
  const asked: readonly (readonly [string, unknown])[] = [
    [fields.vessel, vessel?.name],
    [fields.builder, vessel?.builder ?? vessel?.model],
    [fields.registration, vessel?.registration],
    [fields.hullNumber, vessel?.hullNumber],
    [fields.place, inspection?.place],
    [fields.lies, inspection?.lies],
    [fields.day, inspection?.on],
    [fields.conditions, inspection?.conditions],
    [fields.instruments, inspection?.instruments],
    [fields.client, parties?.client],
    [fields.instructedBy, parties?.instructedBy],
    [fields.surveyor, parties?.surveyor?.name],
    [fields.cause, occurrence?.cause],
  ];
  return asked.filter(([, value]) => value === undefined).map(([name]) => name);
}
