import { bodySection, list, paragraph, row, table, wide, type Section } from '../document.js';
import type { ReportRequest } from '../request.js';

/** What nobody looked at; limits of the calculation stand with the calculation. */
export function limitSection({ estimate, record, reader }: ReportRequest): Section {
  const said = reader.words.body;
  const ofTheMath = new Set(estimate.panel?.limits ?? []);
  const own = record.inspection?.notInspected;
  const next = estimate.scope.nextReadings;
  const limits = estimate.limits.filter((limit) => !ofTheMath.has(limit));
  return bodySection('not-inspected', said.limits, [
    list([
      ...(own === undefined ? [] : [own]),
      ...limits,
      ...(next === undefined ? [] : [next.advice.text]),
      said.excluded(estimate.scope.excluded.join('; ')),
    ]),
  ]);
}

export function reinspectionSection({ estimate: { conclusion }, reader }: ReportRequest): Section {
  const said = reader.words.body;
  return bodySection('reinspection', said.reinspection, [
    table(
      said.reinspection,
      [wide(said.when, 2), wide(said.look, 3), wide(said.accept, 4), wide(said.by, 2)],
      conclusion.reinspection.map(({ when, before, look, accept, by }) =>
        row(said.beforeWhat(when, before), look, accept, by),
      ),
    ),
  ]);
}

/** The surveyor's statement, and apart from it that the owner has it. */
export function signatureSections({ record, reader }: ReportRequest): readonly Section[] {
  const { body: said, signature, report } = reader.words;
  const surveyor = record.parties?.surveyor;
  const name =
    surveyor?.name === undefined
      ? report.notStated
      : [surveyor.name, surveyor.qualification].filter((part) => part !== undefined).join(', ');
  return [
    bodySection('statement', said.signature, [
      paragraph(said.statement),
      { kind: 'signature', fields: [said.surveyorSigns(name), `${signature.place}, ${signature.date}`] },
    ]),
    bodySection('acknowledgement', said.acknowledgement, [
      paragraph(said.acknowledged),
      { kind: 'signature', fields: [said.ownerSigns, `${signature.place}, ${signature.date}`] },
    ]),
  ];
}
