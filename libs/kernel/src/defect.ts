/** We failed: a broken promise inside the program, never the caller's doing. Always reported. */
export class Defect extends Error {
  override readonly name = 'Defect';
}

/** Closes a `switch` over a union; reaching it means a member was added and forgotten here. */
export function unreachable(impossible: never): never {
  throw new Defect(`Unhandled case: ${JSON.stringify(impossible)}`);
}
