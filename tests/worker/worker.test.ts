import { afterEach, expect, test, vi } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { example } from '../../src/engine/example.ts';
import { answer } from '../../src/worker/answer.ts';
import type { Answer, Ask } from '../../src/worker/messages.ts';

const chosen = { option: 'A', when: 'after' } as const;
const { plan } = example().run('c', 'cold', [
  [0, 0, 300],
  [1000, 0, 300],
]);

afterEach(() => vi.unstubAllGlobals());

test('answers with the report of the plan and revision it was asked for', () => {
  const got = answer({ n: 3, plan, chosen, revision: 9 });
  expect(got).toEqual({ n: 3, ok: true, report: evaluate(plan, chosen, 9) });
});

test('answers with a sentence where the engine throws', () => {
  const broken = { ...plan, nodes: undefined } as unknown as typeof plan;
  const got = answer({ n: 4, plan: broken, chosen, revision: 1 });
  expect(got.ok).toBe(false);
  expect(got.n).toBe(4);
  expect(got.ok ? '' : got.why).not.toBe('');
});

test('what is asked and what is answered can be sent between threads', () => {
  const ask: Ask = { n: 1, plan, chosen, revision: 1 };
  expect(answer(structuredClone(ask))).toEqual(structuredClone(answer(ask)));
});

test('the worker answers each message with one message', async () => {
  const sent: Answer[] = [];
  const scope: { onmessage: ((event: { data: Ask }) => void) | null; postMessage: (a: Answer) => void } = {
    onmessage: null,
    postMessage: (a) => void sent.push(a),
  };
  vi.stubGlobal('self', scope);
  await import('../../src/worker/evaluate.worker.ts');
  scope.onmessage?.({ data: { n: 1, plan, chosen, revision: 5 } });
  expect(sent.map((a) => [a.n, a.ok && a.report.revision])).toEqual([[1, 5]]);
});
