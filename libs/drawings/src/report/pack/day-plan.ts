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
  type Section,
  type Table,
} from '../document.js';
import type { ReportRequest } from '../request.js';
import { hoursText, waitText, weekdayText } from '../said.js';

/** What is done on which day, behind which gate, and a place to write who did it and when; the hold point stands out. */
export const dayPlanTasks = (request: ReportRequest): readonly Section[] => {
  const { jobPack, signature } = request.reader.words;
  return request.estimate.process.calendar.tasks.length === 0
    ? []
    : [
        task('plan', jobPack.plan, [
          paragraph(jobPack.planLead),
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

function dayTable({ estimate: { process }, reader }: ReportRequest): Table {
  const { columns, jobPack } = reader.words;
  const days = process.calendar.tasks.map((one) => dayText(one, reader));
  return dense(
    table(
      jobPack.plan,
      [
        narrow(columns.day),
        wide(columns.step, 5),
        numeric(columns.work),
        numeric(columns.wait),
        wide(jobPack.doneBy, 1.2),
        wide(jobPack.doneAt, 1.2),
      ],
      process.calendar.tasks.map(({ title, labourH, waitH, isHoldPoint }, index) => ({
        ...row(
          days[index] === days[index - 1] ? '' : days[index],
          title,
          labourH === 0 ? '' : hoursText(reader, labourH),
          waitH === 0 ? '' : waitText(reader, waitH),
          '',
          '',
        ),
        ...(isHoldPoint ? { emphasis: 'hold' } : {}),
      })),
    ),
  );
}

const dayText = ({ startDay, startAt }: CalendarTask, reader: Reader): string =>
  startAt === undefined
    ? reader.words.calendar.day(String(Math.floor(startDay) + 1))
    : weekdayText(reader, startAt);
