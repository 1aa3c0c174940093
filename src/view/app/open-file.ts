import { type Blobs, readPlan } from '../../files/format/read-plan.ts';
import { blobsFromFile } from '../../files/store/blobs.ts';
import { openJob } from '../../files/store/open-job.ts';
import { sayStoreTrouble } from '../../files/store/store-trouble.ts';
import type { Plan } from '../../plan/plan.ts';
import { sayLost } from '../photos/say-pictures.ts';
import { forgetMissing } from '../traces/laid-pictures.ts';
import { openNew, openStored, openToLook, say } from './desk.ts';
import { deviceIds } from './ids.ts';
import { storage } from './storage.ts';

/** The same plan as is kept, byte for byte of its records? */
const same = (a: Plan, b: Plan): boolean => JSON.stringify(a) === JSON.stringify(b);

/**
 * Opens a plan of a file as a job. Where this device has a job of that id that reads otherwise, the file's is put beside
 * it under an id of its own: an old file never takes the place of newer work.
 */
async function openBeside(plan: Plan): Promise<void> {
  const port = await storage();
  const there = (await port.jobs()).some((j) => j.id === plan.id);
  if (!there) return openNew(plan);
  const { read } = await openJob(port, plan.id);
  if (read.kind === 'ok' && same(read.plan, plan)) {
    await openStored(plan.id);
    return;
  }
  await openNew({ ...plan, id: deviceIds.next('plan'), name: `${plan.name}, from file`.replace(/^, /, '') });
}

/** Keeps the pictures that came with a file, before anybody looks for them. Gives what was spoiled in a sentence. */
async function keepPictures(plan: Plan, blobs: Blobs): Promise<string> {
  if (Object.keys(blobs).length === 0) return '';
  try {
    const { spoiled } = await blobsFromFile(await storage(), plan, blobs);
    forgetMissing();
    return sayLost(spoiled.length, 'spoiled');
  } catch (error) {
    return `The pictures of the file could not be kept. ${sayStoreTrouble(error)}`;
  }
}

/** Opens what a file holds, or says in a sentence why not. */
export async function openText(text: string): Promise<void> {
  const read = readPlan(text);
  const brought = read.kind === 'broken' ? read.salvage : read.kind === 'notPlan' ? null : read.plan;
  const lost = brought && read.kind !== 'notPlan' ? await keepPictures(brought, read.blobs) : '';
  if (read.kind === 'ok') await openBeside(read.plan);
  else if (read.kind === 'newer' && read.plan) await openToLook(read.plan, read.sentence);
  else if (read.kind === 'broken' && read.salvage) {
    await openBeside({ ...read.salvage, id: deviceIds.next('plan') });
  }
  const sentence = read.kind === 'ok' && !read.fromNewer ? '' : read.sentence;
  const told = [sentence, lost].filter((s) => s !== '').join(' ');
  if (told !== '') say(told);
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

/** The invented houses that come with the tool. */
export const DEMO_HOUSES = [
  { id: 'flat', name: 'Flat', about: 'combi to the kitchen wall' },
  { id: 'semi', name: 'Semi', about: 'boiler beside the cylinder' },
  { id: 'extension', name: 'Extension', about: 'no drain for condensate' },
] as const;
export type DemoHouse = (typeof DEMO_HOUSES)[number]['id'];

const TEXTS: Readonly<Record<DemoHouse, () => Promise<{ default: string }>>> = {
  flat: () => import('../../../demo-plans/flat.plan.json?raw'),
  semi: () => import('../../../demo-plans/semi.plan.json?raw'),
  extension: () => import('../../../demo-plans/extension.plan.json?raw'),
};

export async function openDemo(house: DemoHouse): Promise<void> {
  await openText((await TEXTS[house]()).default);
}
