import { expect, test } from 'vitest';
import { memoryPort } from '../../src/files/store/memory-port.ts';
import { step, storeContract } from './store-contract.ts';

storeContract('memory', async () => memoryPort());

test('a write that fails leaves everything as it was', async () => {
  const port = memoryPort();
  await port.append(step('a', 1));
  port.failWith(new Error('full'));
  await expect(port.append(step('a', 2))).rejects.toThrow('full');
  await expect(port.remove('a')).rejects.toThrow('full');
  port.failWith(null);
  expect(await port.steps('a', 0)).toEqual([step('a', 1)]);
});
