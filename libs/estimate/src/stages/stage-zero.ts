import { operations } from '#lib/work';

/** Labour up to and with the hold point: the hold and everything that must come before it. */
export const isStageZero = ({ code }: { readonly code: string }): boolean => stageZeroCodes.has(code);

function upToHold(): readonly string[] {
  const after = new Map(operations.map(({ code, after: before }) => [code, before]));
  const found = new Set(operations.filter(({ isHoldPoint }) => isHoldPoint === true).map(({ code }) => code));
  // A set grows while it is walked, so each predecessor is visited once.
  for (const code of found) for (const before of after.get(code) ?? []) found.add(before);
  return [...found];
}

const stageZeroCodes: ReadonlySet<string> = new Set(upToHold().map((code) => `labour-${code}`));
