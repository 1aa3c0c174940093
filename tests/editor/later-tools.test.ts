import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { LATER_TOOLS } from '../../src/editor/tools/later-tools.ts';
import { tools } from '../../src/editor/tools/tools.ts';

const folder = fileURLToPath(new URL('../../src/editor/later', import.meta.url));

test('the bench knows of every tool that comes later, by the words of the tool itself', () => {
  const files = readdirSync(folder).filter((file) => file.endsWith('.tool.ts'));
  expect(LATER_TOOLS.map((t) => `${t.id}.tool.ts`).sort()).toEqual(files.sort());
  for (const { id, label, key, order } of LATER_TOOLS) expect(tools.get(id)).toMatchObject({ id, label, key, order });
});
