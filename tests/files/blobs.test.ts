import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBase64, toBase64 } from '../../src/files/format/base64.ts';
import {
  blobsForFile,
  blobsFromFile,
  dropUnusedBlobs,
  hashOf,
  keepBlob,
  pictureUse,
} from '../../src/files/store/blobs.ts';
import { memoryPort } from '../../src/files/store/memory-port.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { flatPlan } from '../demo/flat-plan.ts';

const bytes = (...of: number[]) => Uint8Array.from(of);
function withPictures(...hashes: string[]): Plan {
  const plan = flatPlan();
  for (const hash of hashes) {
    plan.blobRefs[hash] = { id: hash, hash, kind: 'photo', name: '', mediaType: 'image/jpeg', on: null, place: null };
  }
  return plan;
}

describe('pictures', () => {
  test('are named by their bytes', async () => {
    // Digest of the three letters abc, as the standard of the hash gives it.
    const abc = 'sha256-ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
    expect(await hashOf(bytes(97, 98, 99))).toBe(abc);
  });

  test('go into a file and come out of it', async () => {
    const here = memoryPort();
    const hash = await keepBlob(here, bytes(1, 2, 255), 'image/jpeg');
    const plan = withPictures(hash, 'sha256-not-here');
    const { blobs, missing } = await blobsForFile(here, plan);
    expect(missing).toEqual(['sha256-not-here']);
    const there = memoryPort();
    expect(await blobsFromFile(there, plan, blobs)).toEqual({ spoiled: [] });
    expect(await there.blob(hash)).toEqual({ hash, mediaType: 'image/jpeg', bytes: bytes(1, 2, 255) });
  });

  test('whose bytes do not fit their name are left out and named', async () => {
    const port = memoryPort();
    const hash = await hashOf(bytes(1));
    const told = await blobsFromFile(port, withPictures(hash), { [hash]: toBase64(bytes(2)), bad: '***' });
    expect(told.spoiled).toEqual([hash, 'bad']);
    expect(await port.blobHashes()).toEqual([]);
  });

  test('are kept once, and dropped when no plan uses them', async () => {
    const port = memoryPort();
    const used = await keepBlob(port, bytes(1), 'image/png');
    await keepBlob(port, bytes(1), 'image/png');
    await keepBlob(port, bytes(2), 'image/png');
    expect(await port.blobHashes()).toHaveLength(2);
    expect(await dropUnusedBlobs(port, [flatPlan(), withPictures(used)])).toBe(1);
    expect(await port.blobHashes()).toEqual([used]);
  });

  test('are counted once each, with those that are not here', async () => {
    const port = memoryPort();
    const hash = await keepBlob(port, bytes(1, 2, 3), 'image/jpeg');
    const plan = withPictures(hash, 'sha256-not-here');
    plan.blobRefs.again = { id: 'again', hash, kind: 'photo', name: '', mediaType: '', on: null, place: null };
    expect(await pictureUse(port, plan)).toEqual({ pictures: 2, bytes: 3, missing: ['sha256-not-here'] });
  });

  test('of any bytes survive being text', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 20000 }), (any) => {
        expect(fromBase64(toBase64(any))).toEqual(Uint8Array.from(any));
      }),
      { numRuns: 30 },
    );
  });
});
