import { describe, expect, test } from 'vitest';
import { type ClaimWith, claimJob } from '../../src/files/store/job-lock.ts';
import { askToKeep, roomLeftMb, type Storage } from '../../src/files/store/keep-storage.ts';
import { sayStoreTrouble } from '../../src/files/store/store-trouble.ts';
import { fakeBrowser } from './fake-locks.ts';

const tab = (browser: ReturnType<typeof fakeBrowser>, onTaken: ClaimWith['onTaken'] = () => {}): ClaimWith => ({
  locks: browser.locks,
  channel: browser.channel,
  onTaken,
  patienceMs: 20,
});
const never = () => {
  throw new Error('this tab should not lose the job');
};

describe('one job in two tabs', () => {
  test('belongs to the first; the second may look', async () => {
    const browser = fakeBrowser();
    expect((await claimJob('a', tab(browser, never))).mine).toBe(true);
    const second = await claimJob('a', tab(browser));
    expect(second.mine).toBe(false);
    expect(second.mine === false && second.sentence).toContain('open in another tab');
    expect((await claimJob('b', tab(browser))).mine).toBe(true);
  });

  test('is free again when it is released', async () => {
    const browser = fakeBrowser();
    const first = await claimJob('a', tab(browser, never));
    if (!first.mine) throw new Error('not mine');
    first.release();
    await new Promise((resolve) => setTimeout(resolve, 0));
    expect((await claimJob('a', tab(browser, never))).mine).toBe(true);
  });

  test('is taken over only after the first has kept its last steps', async () => {
    const browser = fakeBrowser();
    const order: string[] = [];
    await claimJob(
      'a',
      tab(browser, async (sentence) => {
        order.push(sentence);
        await new Promise((resolve) => setTimeout(resolve, 5));
        order.push('kept');
      }),
    );
    const second = await claimJob('a', tab(browser));
    if (second.mine) throw new Error('should be taken');
    const mine = await second.takeOver();
    order.push('taken over');
    expect(mine.mine).toBe(true);
    expect(order).toEqual([
      'This job was taken over by another tab. You can only look at it here.',
      'kept',
      'taken over',
    ]);
  });

  test('goes back and forth', async () => {
    const browser = fakeBrowser();
    const lost: string[] = [];
    const claim = (name: string) =>
      claimJob(
        'a',
        tab(browser, () => void lost.push(name)),
      );
    await claim('one');
    const two = await claim('two');
    if (two.mine) throw new Error('should be taken');
    await two.takeOver();
    const one = await claim('one again');
    if (one.mine) throw new Error('should be taken');
    await one.takeOver();
    expect(lost).toEqual(['one', 'two']);
  });

  test('is taken from a tab that sleeps, which learns of it when it wakes', async () => {
    const browser = fakeBrowser();
    const lost: string[] = [];
    await claimJob(
      'a',
      tab(browser, () => void lost.push('first')),
    );
    browser.goDeaf();
    const second = await claimJob('a', tab(browser, never));
    if (second.mine) throw new Error('should be taken');
    expect((await second.takeOver()).mine).toBe(true);
    expect(lost).toEqual(['first']);
  });

  test('is let go even where the last steps could not be kept', async () => {
    const browser = fakeBrowser();
    await claimJob(
      'a',
      tab(browser, () => Promise.reject(new Error('full'))),
    );
    const second = await claimJob('a', tab(browser));
    if (second.mine) throw new Error('should be taken');
    expect((await second.takeOver()).mine).toBe(true);
  });

  test('leaves no ear behind', async () => {
    const browser = fakeBrowser();
    const first = await claimJob('a', tab(browser));
    await claimJob('a', tab(browser));
    expect(browser.wiresOf('kickset-job-a')).toBe(1);
    if (first.mine) first.release();
    expect(browser.wiresOf('kickset-job-a')).toBe(0);
  });

  test('in a browser without locks belongs to whoever opens it', async () => {
    const browser = fakeBrowser();
    expect((await claimJob('a', { ...tab(browser), locks: undefined })).mine).toBe(true);
  });
});

describe('what the browser promises', () => {
  test.each<[Storage | undefined, boolean | null]>([
    [{ persisted: async () => true }, true],
    [{ persisted: async () => false, persist: async () => true }, true],
    [{ persist: async () => false }, false],
    [{ persist: () => Promise.reject(new Error('no')) }, null],
    [{}, null],
    [undefined, null],
  ])('%j', async (storage, kept) => {
    const told = await askToKeep(storage);
    expect(told.kept).toBe(kept);
    expect(told.sentence).toMatch(/\.$/);
  });

  test('room left, where it is told', async () => {
    expect(await roomLeftMb({ estimate: async () => ({ usage: 40e6, quota: 100e6 }) })).toBe(60);
    expect(await roomLeftMb({ estimate: async () => ({}) })).toBeNull();
    expect(await roomLeftMb(undefined)).toBeNull();
  });

  test.each([
    ['QuotaExceededError', 'no room left'],
    ['InvalidStateError', 'was closed'],
    ['SecurityError', 'does not let Kickset keep anything'],
    ['Whatever', 'could not be kept'],
  ])('%s in a sentence', (name, said) => {
    const sentence = sayStoreTrouble(Object.assign(new Error('x'), { name }));
    expect(sentence).toContain(said);
    expect(sentence).toContain('file');
  });
});
