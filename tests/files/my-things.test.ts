import { expect, test } from 'vitest';
import { memoryPort } from '../../src/files/store/memory-port.ts';
import { dropThing, keepThing, myThings } from '../../src/files/store/my-things.ts';

const boiler = (id: string, name: string) => ({ id, kind: 'boiler', name, fields: { inputKwHotWater: 30 } });

test('things are kept beside the jobs, by name, one of an id', async () => {
  const port = memoryPort();
  expect(await myThings(port)).toEqual([]);
  await keepThing(port, boiler('t1', 'Wall boiler'));
  await keepThing(port, boiler('t2', 'Floor boiler'));
  await keepThing(port, boiler('t1', 'Attic boiler'));
  expect((await myThings(port)).map((t) => t.name)).toEqual(['Attic boiler', 'Floor boiler']);
  await dropThing(port, 't2');
  expect((await myThings(port)).map((t) => t.id)).toEqual(['t1']);
});

test('what cannot be read is passed over and stays where it is', async () => {
  const port = memoryPort();
  await port.putShelf('my-things', [{ id: 'odd', later: true }, null, boiler('t1', 'Wall boiler')]);
  expect((await myThings(port)).map((t) => t.id)).toEqual(['t1']);
  await keepThing(port, boiler('t2', 'Floor boiler'));
  expect(await port.shelf('my-things')).toContainEqual({ id: 'odd', later: true });
});
