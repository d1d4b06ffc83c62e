/** What was asked and answered in a real run, under `METHOD /path/{part}`: the body, and the answers by status. */
export type RecordedExamples = Readonly<
  Record<string, { readonly body?: unknown; readonly answers: Readonly<Record<string, unknown>> }>
>;
