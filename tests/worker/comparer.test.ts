import { describe, expect, test } from 'vitest';
import { differences, tally } from '../../src/engine/evaluate.ts';
import { answerCompare } from '../../src/worker/answer-compare.ts';
import { type ComparePort, createComparer } from '../../src/worker/comparer.ts';
import type { CompareAsk } from '../../src/worker/messages.ts';
import { demoPlan } from '../engine/demo-file.ts';

const BEFORE = { option: 'A', when: 'before' } as const;
const built = (option: string) => ({ option, when: 'after' }) as const;

/** A worker that answers when it is told to, in the order it is told. */
function slowPort(): ComparePort & { readonly asked: CompareAsk[]; answer(at: number): void } {
  const asked: CompareAsk[] = [];
  const port: ReturnType<typeof slowPort> = {
    asked,
    onmessage: null,
    onerror: null,
    postMessage: (ask) => void asked.push(structuredClone(ask)),
    answer(at) {
      const ask = asked[at];
      if (ask) port.onmessage?.({ data: answerCompare(ask) });
    },
  };
  return port;
}

describe('a comparison in a thread of its own', () => {
  test('gives each question its own answer, in whatever order they come', async () => {
    const plan = demoPlan('extension');
    const port = slowPort();
    const comparer = createComparer(port);
    const [a, b] = [comparer.tally(plan, built('A')), comparer.tally(plan, built('B'))];
    const between = comparer.differences(plan, BEFORE, built('B'));
    for (const at of [2, 1, 0]) port.answer(at);
    expect(await a).toEqual(tally(plan, built('A')));
    expect(await b).toEqual(tally(plan, built('B')));
    expect(await between).toEqual(differences(plan, BEFORE, built('B')));
  });

  test('tells what went wrong', async () => {
    const port = slowPort();
    const comparer = createComparer(port);
    const asked = comparer.tally(demoPlan('flat'), built('A'));
    port.onmessage?.({ data: { n: 1, why: 'It broke.' } });
    await expect(asked).rejects.toThrow('It broke.');
    const other = comparer.differences(demoPlan('flat'), BEFORE, built('A'));
    port.onerror?.({ message: 'The thread is gone.' });
    await expect(other).rejects.toThrow('The thread is gone.');
  });

  test('a plan that is none is one sentence', () => {
    const answer = answerCompare({ n: 3, compare: 'tally', plan: {} as ReturnType<typeof demoPlan>, chosen: BEFORE });
    expect(answer).toMatchObject({ n: 3 });
    expect('why' in answer).toBe(true);
  });
});
