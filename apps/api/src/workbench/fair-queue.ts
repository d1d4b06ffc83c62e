/** Something that waits, for whom, and how much work it is. */
export interface Waiting {
  readonly organisationId: string;
  readonly expectedMs: number;
}

/**
 * Who is next, when several organisations want more than there is: the one that was given the least work so far (start-time
 * fair queueing, Goyal, Vin and Cheng 1996). An organisation that was away does not save up turns: it joins at the level
 * of those that are there. Within an organisation the first to come is the first to go.
 */
export class FairQueue<Item extends Waiting> {
  private readonly waiting = new Map<string, Item[]>();
  /** Work given to each organisation, on one scale. */
  private readonly given = new Map<string, number>();
  private level = 0;

  get size(): number {
    return [...this.waiting.values()].reduce((sum, items) => sum + items.length, 0);
  }

  add(item: Item): void {
    const { organisationId } = item;
    const known = this.waiting.get(organisationId);
    if (known === undefined) {
      this.given.set(organisationId, Math.max(this.level, this.given.get(organisationId) ?? 0));
      this.waiting.set(organisationId, [item]);
    } else known.push(item);
  }

  /** The next in turn among those organisations that may have one more. */
  take(mayHaveMore: (organisationId: string) => boolean): Item | undefined {
    const next = [...this.waiting.keys()]
      .filter(mayHaveMore)
      .reduce<string | undefined>(
        (least, one) => (least === undefined || this.givenTo(one) < this.givenTo(least) ? one : least),
        undefined,
      );
    const item = next === undefined ? undefined : this.waiting.get(next)?.shift();
    if (next === undefined || item === undefined) return undefined;
    this.level = this.givenTo(next);
    this.given.set(next, this.level + item.expectedMs);
    this.forgetIfDone(next);
    return item;
  }

  /** False when it was not waiting. */
  remove(item: Item): boolean {
    const items = this.waiting.get(item.organisationId) ?? [];
    const at = items.indexOf(item);
    if (at < 0) return false;
    items.splice(at, 1);
    this.forgetIfDone(item.organisationId);
    return true;
  }

  /** Everything that waits, in no particular order. */
  clear(): readonly Item[] {
    const all = [...this.waiting.values()].flat();
    this.waiting.clear();
    return all;
  }

  /**
   * Work that will be done before a newcomer of this organisation: all that waits for its own, and of every other
   * organisation's at most as much, because they take turns.
   */
  workBefore({ organisationId, expectedMs }: Waiting): number {
    const workOf = (items: readonly Item[]): number => items.reduce((sum, item) => sum + item.expectedMs, 0);
    const own = workOf(this.waiting.get(organisationId) ?? []);
    return [...this.waiting]
      .filter(([other]) => other !== organisationId)
      .reduce((sum, [, items]) => sum + Math.min(workOf(items), own + expectedMs), own);
  }

  private givenTo(organisationId: string): number {
    return this.given.get(organisationId) ?? 0;
  }

  /** An organisation without anything waiting is forgotten once everybody has caught up with it. */
  private forgetIfDone(organisationId: string): void {
    if (this.waiting.get(organisationId)?.length === 0) this.waiting.delete(organisationId);
    for (const [one, given] of this.given) {
      if (!this.waiting.has(one) && given <= this.level) this.given.delete(one);
    }
  }
}
