import { expect, test } from 'vitest';
import { keepBlob } from '../../src/files/store/blobs.ts';
import { dropOrphans } from '../../src/files/store/drop-orphans.ts';
import { memoryPort } from '../../src/files/store/memory-port.ts';
import { createJob } from '../../src/files/store/open-job.ts';
import { flatPlan } from '../demo/flat-plan.ts';
import { step } from './store-contract.ts';

const photo = (n: number) => Uint8Array.of(n, n, n);

test('a picture goes when no job has spoken of it twice; one that an undo may bring back stays', async () => {
  const port = memoryPort();
  const [inPlan, inStep, orphan] = await Promise.all([1, 2, 3].map((n) => keepBlob(port, photo(n), 'image/jpeg')));
  const plan = flatPlan();
  plan.blobRefs.b = {
    id: 'b',
    hash: inPlan ?? '',
    kind: 'photo',
    name: '',
    mediaType: 'image/jpeg',
    on: null,
    place: null,
  };
  await createJob(port, plan, { savedAt: '2026-05-01T09:00:00.000Z', writer: 'test' });
  const inverse = [{ op: 'add', path: ['blobRefs', 'c'], value: { hash: inStep } }];
  await port.append(step(plan.id, 7, { entry: { label: 'delete', patches: [], inverse } }));

  expect(await dropOrphans(port)).toBe(0);
  expect(await port.blobHashes()).toHaveLength(3);
  const late = await keepBlob(port, photo(4), 'image/jpeg');
  expect(await dropOrphans(port)).toBe(1);
  expect([...(await port.blobHashes())].sort()).toEqual([inPlan, inStep, late].sort());
  expect(orphan).toBeDefined();

  await port.remove(plan.id);
  expect(await dropOrphans(port)).toBe(1);
  expect(await dropOrphans(port)).toBe(2);
  expect(await port.blobHashes()).toEqual([]);
  expect(await dropOrphans(port)).toBe(0);
});

test('a picture that found a job in the meantime is no longer counted as lost', async () => {
  const port = memoryPort();
  const hash = await keepBlob(port, photo(1), 'image/jpeg');
  expect(await dropOrphans(port)).toBe(0);
  const plan = flatPlan();
  plan.blobRefs.b = { id: 'b', hash, kind: 'photo', name: '', mediaType: 'image/jpeg', on: null, place: null };
  await createJob(port, plan, { savedAt: '2026-05-01T09:00:00.000Z', writer: 'test' });
  expect(await dropOrphans(port)).toBe(0);
  await port.remove(plan.id);
  expect(await dropOrphans(port)).toBe(0);
  expect(await port.blobHashes()).toEqual([hash]);
});
