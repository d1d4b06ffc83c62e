import type { GradedFinding } from '#lib/estimate';
import {
  bodySection,
  facts,
  narrow,
  paragraph,
  row,
  table,
  wide,
  type Block,
  type Section,
} from '../document.js';
import { damageFigure } from '../figures.js';
import type { ReportRequest } from '../request.js';
import { word } from '../said.js';
import { aboutMoney, timeSaid } from './speaking.js';

/** Finding, verdict, price and time: what a reader with one minute takes away. */
export function summarySection(request: ReportRequest): Section {
  const { estimate, reader } = request;
  const { conclusion, summary } = estimate;
  const said = reader.words.body;
  const { p10, p90 } = summary.totalRange;
  return bodySection('summary', said.summary, [
    {
      ...facts(said.summary, [
        [said.finding, gravest(request)],
        [said.verdict, conclusion.verdict.sentence],
        [
          said.price,
          said.priceFromTo(
            aboutMoney(reader, summary.total),
            aboutMoney(reader, p10),
            aboutMoney(reader, p90),
          ),
        ],
        [said.time, timeSaid(request)],
      ]),
      isStrong: true,
    },
  ]);
}

const order = ['before-use', 'next-opportunity', 'monitor'] as const;

const byGravity = (findings: readonly GradedFinding[]): readonly GradedFinding[] =>
  [...findings].sort((a, b) => order.indexOf(a.class) - order.indexOf(b.class));

/** The gravest in one line, with how many more there are. */
function gravest({ estimate, reader }: ReportRequest): string {
  const said = reader.words.body;
  const [first, ...more] = byGravity(estimate.conclusion.findings);
  if (first === undefined) return reader.words.report.none;
  const rest = more.length === 0 ? '' : ` (${said.moreFindings(String(more.length))})`;
  return `${classSaid(reader, first)}: ${firstSentence(first.wording.text)}${rest}`;
}

const classSaid = (reader: ReportRequest['reader'], { class: graded }: GradedFinding): string =>
  word(reader.words.body.classes, graded);

/** Up to its first full stop. */
const firstSentence = (text: string): string => /^.*?[.!?](?=\s|$)/s.exec(text)?.[0] ?? text;

/** Each finding with its class and restriction, the gravest first; then what is recommended, and the deck. */
export function findingSection(request: ReportRequest): Section {
  const { estimate, record, reader } = request;
  const said = reader.words.body;
  const findings = byGravity(estimate.conclusion.findings);
  const cause = record.occurrence?.cause;
  return bodySection('findings', said.findings, [
    table(
      said.findings,
      [narrow(said.class), wide(said.finding, 3), wide(said.restriction, 2)],
      findings.map((finding) =>
        row(classSaid(reader, finding), finding.wording.text, finding.restriction.text),
      ),
    ),
    ...adviceBlocks(findings, reader),
    ...(cause === undefined ? [] : [paragraph(said.cause(cause))]),
    damageFigure(request),
  ]);
}

/** Places with the same advice share it. */
function adviceBlocks(findings: readonly GradedFinding[], reader: ReportRequest['reader']): readonly Block[] {
  const advices = [...new Set(findings.map(({ recommendation }) => recommendation.text))];
  return advices.map((advice) => {
    const places = findings.filter(({ recommendation }) => recommendation.text === advice);
    return paragraph(
      reader.words.body.recommended(
        `${reader.words.body.recommendation}, ${places.map(({ about }) => about).join(', ')}`,
        advice,
      ),
    );
  });
}
