import type { CalendarTask } from '#lib/estimate';
import type { Reader } from '../../reader.js';
import {
  dense,
  narrow,
  numeric,
  paragraph,
  row,
  table,
  task,
  wide,
  type Row,
  type Section,
  type Table,
} from '../document.js';
import type { ReportRequest } from '../request.js';
import { hoursText, waitText, weekdayText } from '../said.js';
import { atHand, type AtHand } from './at-hand.js';

/** What is done on which day, what must be at hand, behind which gate, and a place to write who did it and when; the hold point stands out. */
export const dayPlanTasks = (request: ReportRequest): readonly Section[] => {
  const { jobPack, signature } = request.reader.words;
  return request.estimate.process.calendar.tasks.length === 0
    ? []
    : [
        task('plan', jobPack.plan, [
          dense(paragraph(jobPack.planLead)),
          dayTable(request),
          ...(request.estimate.process.calendar.tasks.some(({ isHoldPoint }) => isHoldPoint)
            ? [
                paragraph(jobPack.holdPoint),
                { kind: 'signature', fields: [jobPack.signedBy, signature.signature] } as const,
              ]
            : []),
        ]),
      ];
};

function dayTable(request: ReportRequest): Table {
  const { columns, jobPack } = request.reader.words;
  const things = atHand(request);
  return dense(
    table(
      jobPack.plan,
      [
        narrow(columns.day),
        wide(columns.step, 6),
        numeric(columns.work),
        numeric(columns.wait),
        wide(jobPack.doneBy, 1),
        wide(jobPack.doneAt, 1),
      ],
      [...daysOf(request)].flatMap(([day, tasks]) => [
        row(day, needsOf(tasks, things, request.reader)),
        ...tasks.map((one) => taskRow(one, request.reader)),
      ]),
    ),
  );
}

/** Tasks in the order of the calendar, by the day they begin on. */
function daysOf({
  estimate: { process },
  reader,
}: ReportRequest): ReadonlyMap<string, readonly CalendarTask[]> {
  const days = new Map<string, CalendarTask[]>();
  for (const one of process.calendar.tasks) {
    const day = dayText(one, reader);
    days.set(day, [...(days.get(day) ?? []), one]);
  }
  return days;
}

/** What must be at hand from this day on, and the gates that its steps stand behind. */
function needsOf(
  tasks: readonly CalendarTask[],
  things: readonly AtHand[],
  { words: { jobPack } }: Reader,
): string {
  const own = things.filter(({ from }) => tasks.some(({ code }) => code === from));
  const kinds = ['goods', 'tools', 'hired'] as const;
  const named = kinds.flatMap((kind) => {
    const said = [...new Set(own.filter((thing) => thing.kind === kind).map((thing) => thing.said))];
    return said.length === 0 ? [] : [jobPack.atHand[kind](said.join('; '))];
  });
  const gates = [...new Set(tasks.map(({ gate }) => gate))].flatMap((gate) =>
    gate === 'none' ? [] : [jobPack.planGates[gate]],
  );
  return [
    ...(named.length === 0 ? [jobPack.atHand.nothing] : named),
    ...(gates.length === 0 ? [] : [jobPack.planGate(gates.join('; '))]),
  ].join(' ');
}

const taskRow = ({ title, labourH, waitH, isHoldPoint }: CalendarTask, reader: Reader): Row => ({
  ...row(
    '',
    title,
    labourH === 0 ? '' : hoursText(reader, labourH),
    waitH === 0 ? '' : waitText(reader, waitH),
    '',
    '',
  ),
  ...(isHoldPoint ? { emphasis: 'hold' } : {}),
});

const dayText = ({ startDay, startAt }: CalendarTask, reader: Reader): string =>
  startAt === undefined
    ? reader.words.calendar.day(String(Math.floor(startDay) + 1))
    : weekdayText(reader, startAt);
