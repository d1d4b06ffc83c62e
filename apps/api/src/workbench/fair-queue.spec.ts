import { describe, expect, test } from '@jest/globals';
import { FairQueue, type Waiting } from './fair-queue.js';

interface Ticket extends Waiting {
  readonly id: string;
}
const ticket = (id: string, organisationId: string, expectedMs = 100): Ticket => ({
  id,
  organisationId,
  expectedMs,
});
const everybody = (): boolean => true;
const inOrder = (queue: FairQueue<Ticket>): string => {
  const order: string[] = [];
  for (let next = queue.take(everybody); next !== undefined; next = queue.take(everybody))
    order.push(next.id);
  return order.join(' ');
};

describe('who is next', () => {
  test('one organisation is served in the order in which it came', () => {
    const queue = new FairQueue<Ticket>();
    for (const id of ['a1', 'a2', 'a3']) queue.add(ticket(id, 'A'));
    expect(inOrder(queue)).toBe('a1 a2 a3');
  });

  test('a newcomer does not wait behind the fifty of another organisation', () => {
    const queue = new FairQueue<Ticket>();
    for (let n = 1; n <= 50; n += 1) queue.add(ticket(`a${n}`, 'A'));
    queue.take(everybody);
    queue.add(ticket('b1', 'B'));
    expect(inOrder(queue).split(' ').slice(0, 2)).toContain('b1');
  });

  test('turns are counted by work, not by number', () => {
    const queue = new FairQueue<Ticket>();
    for (const id of ['a1', 'a2']) queue.add(ticket(id, 'A', 1000));
    for (let n = 1; n <= 10; n += 1) queue.add(ticket(`b${n}`, 'B', 100));
    expect(inOrder(queue)).toBe('a1 b1 b2 b3 b4 b5 b6 b7 b8 b9 b10 a2');
  });

  test('whoever was away saves up no turns', () => {
    const queue = new FairQueue<Ticket>();
    for (let n = 1; n <= 20; n += 1) queue.add(ticket(`a${n}`, 'A'));
    for (let n = 1; n <= 10; n += 1) queue.take(everybody);
    for (let n = 1; n <= 5; n += 1) queue.add(ticket(`b${n}`, 'B'));
    const first = inOrder(queue).split(' ').slice(0, 6);
    expect(first.filter((id) => id.startsWith('a')).length).toBeGreaterThanOrEqual(2);
  });

  test('an organisation that may have no more is passed over, not lost', () => {
    const queue = new FairQueue<Ticket>();
    queue.add(ticket('a1', 'A'));
    queue.add(ticket('b1', 'B'));
    expect(queue.take((organisation) => organisation !== 'A')?.id).toBe('b1');
    expect(queue.take((organisation) => organisation !== 'A')).toBeUndefined();
    expect(queue.size).toBe(1);
    expect(queue.take(everybody)?.id).toBe('a1');
  });

  test('what was withdrawn is not handed out', () => {
    const queue = new FairQueue<Ticket>();
    const [one, two] = [ticket('a1', 'A'), ticket('a2', 'A')];
    queue.add(one);
    queue.add(two);
    expect(queue.remove(one)).toBe(true);
    expect(queue.remove(one)).toBe(false);
    expect(inOrder(queue)).toBe('a2');
  });
});

describe('how much comes before a newcomer', () => {
  test('all of its own, and of others no more than its turns', () => {
    const queue = new FairQueue<Ticket>();
    for (let n = 1; n <= 50; n += 1) queue.add(ticket(`a${n}`, 'A', 200));
    queue.add(ticket('b1', 'B', 100));
    expect(queue.workBefore(ticket('c1', 'C', 150))).toBe(150 + 100);
    expect(queue.workBefore(ticket('b2', 'B', 100))).toBe(100 + 200);
    expect(queue.workBefore(ticket('a51', 'A', 200))).toBe(50 * 200 + 100);
  });
});
