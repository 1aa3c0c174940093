import { describe, expect, test } from 'vitest';
import { sums } from '../../src/engine/evaluate.ts';
import { answerSums } from '../../src/worker/answer-sums.ts';
import type { SumsAnswer, SumsAsk } from '../../src/worker/messages.ts';
import { createSums, type SumsPort } from '../../src/worker/sums.ts';

/** A worker that answers when it is told to, in the order it is told. */
function port() {
  const asked: SumsAsk[] = [];
  const p: SumsPort = { postMessage: (ask) => void asked.push(ask), onmessage: null, onerror: null };
  const answer = (ask: SumsAsk | undefined): void => {
    if (ask) p.onmessage?.({ data: answerSums(ask) as SumsAnswer });
  };
  return { p, asked, answer };
}

describe('sums asked of the engine thread', () => {
  test('all there are, with what they ask for and their example', async () => {
    const { p, asked, answer } = port();
    const list = createSums(p).list();
    answer(asked[0]);
    const cards = await list;
    expect(cards.map((c) => c.id)).toEqual([...sums.keys()]);
    for (const card of cards) {
      expect(card.topic).not.toBe('');
      expect(card.example.from).not.toBe('');
      expect(JSON.parse(JSON.stringify(card))).toEqual(card);
    }
  });

  test('each question gets its own answer, in whichever order they come', async () => {
    const { p, asked, answer } = port();
    const all = createSums(p);
    const one = all.work('cut-length', { centres: '1000', x1: '12', x2: '12' });
    const two = all.work('cut-length', { centres: '500', x1: '12', x2: '12' });
    answer(asked[1]);
    answer(asked[0]);
    const [first, second] = await Promise.all([one, two]);
    expect(first.ok && first.working.result?.value).toBe(976);
    expect(second.ok && second.working.result?.value).toBe(476);
  });

  test('the text of every cited source comes with the working', async () => {
    const { p, asked, answer } = port();
    const got = createSums(p).work('joist-band', { cut: 'hole', span: '3000', depth: '200' });
    answer(asked[0]);
    const told = await got;
    expect(told.ok && told.sources.map((s) => s.id)).toEqual(['joist-notching-page']);
  });

  test('a slip comes back as one sentence', async () => {
    const { p, asked, answer } = port();
    const all = createSums(p);
    const got = all.work('joist-band', { cut: 'hole', span: 'wide', depth: '200' });
    const none = all.work('no-such-sum', {});
    answer(asked[0]);
    expect(await got).toEqual({ ok: false, why: expect.stringContaining('span') });
    answer(asked[1]);
    expect(await none).toMatchObject({ ok: false });
  });

  test('a breakdown fails everything that waits', async () => {
    const { p } = port();
    const all = createSums(p);
    const waiting = [all.list(), all.work('cut-length', {})];
    p.onerror?.({ message: 'out of memory' });
    for (const w of waiting) await expect(w).rejects.toThrow('out of memory');
  });
});
