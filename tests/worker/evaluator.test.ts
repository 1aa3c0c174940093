import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { example } from '../../src/engine/example.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Evaluator, Report } from '../../src/report/report.ts';
import { answer } from '../../src/worker/answer.ts';
import { createEvaluator, type Port } from '../../src/worker/evaluator.ts';
import type { Answer, Ask } from '../../src/worker/messages.ts';

const AFTER = { option: 'A', when: 'after' } as const;
const plan: Plan = example().run('c', 'cold', [
  [0, 0, 300],
  [1000, 0, 300],
]).plan;

/** A worker in the test's hand: it works when it is told to. */
class Bench implements Port {
  readonly asked: Ask[] = [];
  onmessage: ((event: { readonly data: Answer }) => void) | null = null;
  onerror: ((event: { readonly message: string }) => void) | null = null;
  private done = 0;
  postMessage(ask: Ask): void {
    this.asked.push(ask);
  }
  get waitingForIt(): number {
    return this.asked.length - this.done;
  }
  work(change: (a: Answer) => Answer = (a) => a): void {
    const ask = this.asked[this.done++];
    if (!ask) throw new Error('nothing was asked');
    this.onmessage?.({ data: change(answer(ask)) });
  }
  breakDown(message: string): void {
    this.done++;
    this.onerror?.({ message });
  }
}

function bench(): { at: Bench; ask: (revision: number) => Promise<number>; evaluate: Evaluator } {
  const at = new Bench();
  const evaluate = createEvaluator(at);
  const ask = (revision: number): Promise<number> => evaluate(plan, AFTER, revision).then((r: Report) => r.revision);
  return { at, ask, evaluate };
}

describe('the engine behind a port', () => {
  test('an ask is sent on at once, and answered with a report of its own revision', async () => {
    const { at, ask } = bench();
    const told = ask(7);
    expect(at.asked.map((a) => a.revision)).toEqual([7]);
    at.work();
    expect(await told).toBe(7);
  });

  test('while one is worked out only the newest waits: what it overtook is never worked out', async () => {
    const { at, ask } = bench();
    const told = [1, 2, 3, 4].map(ask);
    expect(at.asked.map((a) => a.revision)).toEqual([1]);
    at.work();
    expect(at.asked.map((a) => a.revision)).toEqual([1, 4]);
    at.work();
    expect(await Promise.all(told)).toEqual([1, 4, 4, 4]);
    expect(at.waitingForIt).toBe(0);
  });

  test('an ask made in the moment an answer comes is not lost', async () => {
    const { at, ask } = bench();
    const again = ask(1).then(() => ask(2));
    at.work();
    await Promise.resolve();
    await Promise.resolve();
    await Promise.resolve();
    at.work();
    expect(await again).toBe(2);
  });

  test('an answer to an ask that is not at work is dropped', async () => {
    const { at, ask } = bench();
    const first = ask(1);
    at.work();
    expect(await first).toBe(1);
    const second = ask(2);
    at.onmessage?.({ data: answer({ n: 1, plan, chosen: AFTER, revision: 1 }) });
    expect(at.asked).toHaveLength(2);
    at.work();
    expect(await second).toBe(2);
  });

  test('a plan the engine cannot take fails with its sentence, and the next ask goes on', async () => {
    const { at, ask, evaluate } = bench();
    const broken = evaluate({ ...plan, legs: null as unknown as Plan['legs'] }, AFTER, 1);
    const next = ask(2);
    at.work();
    await expect(broken).rejects.toThrow(/\w+/);
    at.work();
    expect(await next).toBe(2);
  });

  test('a worker that breaks down fails what it was at, not what waits', async () => {
    const { at, ask } = bench();
    const [lost, next] = [ask(1), ask(2)];
    at.breakDown('out of memory');
    await expect(lost).rejects.toThrow('out of memory');
    at.work();
    expect(await next).toBe(2);
  });

  test('whatever the order of asks and answers: one at work, nobody gets older than asked, all are answered', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.boolean(), { maxLength: 40 }), async (steps) => {
        const { at, ask } = bench();
        const told: Promise<[asked: number, got: number]>[] = [];
        let revision = 0;
        for (const isAsk of steps) {
          if (isAsk) {
            const mine = ++revision;
            told.push(ask(mine).then((got) => [mine, got]));
          } else if (at.waitingForIt > 0) at.work();
          expect(at.waitingForIt).toBeLessThanOrEqual(1);
        }
        while (at.waitingForIt > 0) at.work();
        const all = await Promise.all(told);
        expect(all.every(([asked, got]) => got >= asked)).toBe(true);
        expect(all.at(-1)?.[1] ?? 0).toBe(revision);
        expect(at.asked.length).toBeLessThanOrEqual(revision);
      }),
      { numRuns: 60 },
    );
  });
});
