import { readPlan } from '../../files/format/read-plan.ts';
import { desk, openPlan } from './jobs.ts';

/** Opens what a file holds, or says in a sentence why not. */
export async function openText(text: string): Promise<void> {
  const read = readPlan(text);
  if (read.kind === 'ok') await openPlan(read.plan);
  else if (read.kind === 'newer' && read.plan) await openPlan(read.plan, read.sentence);
  else if (read.kind === 'broken' && read.salvage) await openPlan(read.salvage, null);
  if (read.kind !== 'ok') desk.setState({ trouble: read.sentence });
}

function askForFile(): Promise<File | null> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = '.json,application/json';
    input.addEventListener('change', () => resolve(input.files?.[0] ?? null));
    input.addEventListener('cancel', () => resolve(null));
    input.click();
  });
}

export async function openFileFromDevice(): Promise<void> {
  const file = await askForFile();
  if (file) await openText(await file.text());
}

/** The invented flat that comes with the tool. */
export async function openDemo(): Promise<void> {
  const { default: text } = await import('../../../demo-plans/flat.plan.json?raw');
  await openText(text);
}
