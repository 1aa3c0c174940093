import { describe, expect, test } from 'vitest';
import { askToKeep, isKept, sayUse, storageUse } from '../../src/files/store/keep-storage.ts';

const refusing = {
  persisted: () => Promise.reject(new Error('closed')),
  persist: () => Promise.reject(new Error('closed')),
};

describe('asking the browser to keep jobs', () => {
  test('is not done twice where it keeps them already', async () => {
    let asked = 0;
    const persist = async () => {
      asked += 1;
      return false;
    };
    expect(await askToKeep({ persisted: async () => true, persist })).toMatchObject({ kept: true });
    expect(asked).toBe(0);
    expect(await askToKeep({ persisted: async () => false, persist })).toMatchObject({ kept: false });
    expect(asked).toBe(1);
  });

  test('never throws, and advises a file where nothing is promised', async () => {
    for (const storage of [undefined, {}, refusing]) {
      const { kept, sentence } = await askToKeep(storage);
      expect(kept).toBeNull();
      expect(sentence).toContain('Save important jobs as files');
    }
  });

  test('what it has said already is read without asking', async () => {
    expect(await isKept({ persisted: async () => true })).toBe(true);
    expect(await isKept({ persisted: async () => false })).toBe(false);
    for (const storage of [undefined, {}, refusing]) expect(await isKept(storage)).toBeNull();
  });
});

describe('storage in use', () => {
  test('is told as far as the browser tells it', async () => {
    expect(await storageUse({ estimate: async () => ({ usage: 1_240_000, quota: 2_100_000_000 }) })).toEqual({
      usedMb: 1.24,
      mayMb: 2100,
    });
    expect(await storageUse({ estimate: async () => ({ usage: 5 }) })).toBeNull();
    expect(await storageUse({ estimate: () => Promise.reject(new Error('closed')) })).toBeNull();
    expect(await storageUse(undefined)).toBeNull();
  });

  test.each([
    [{ usedMb: 0, mayMb: 9.94 }, '0.0 MB of 9.9 MB'],
    [{ usedMb: 1.24, mayMb: 2100 }, '1.2 MB of 2.1 GB'],
    [{ usedMb: 345.6, mayMb: 999 }, '346 MB of 999 MB'],
  ])('%o is said "%s"', (use, said) => {
    expect(sayUse(use)).toBe(said);
  });
});
