import * as v from 'valibot';
import { type Thing, thing } from '../../plan/records/statements.ts';
import type { StorePort } from './store-port.ts';

const SHELF = 'my-things';
const isThing = (value: unknown): value is Thing => v.is(thing, value);

/** The user's own boilers, cylinders, allowances and rates, by name. What cannot be read is passed over, not removed. */
export async function myThings(port: StorePort): Promise<readonly Thing[]> {
  return (await shelved(port))
    .filter(isThing)
    .sort((a, b) => a.name.localeCompare(b.name, 'en') || (a.id < b.id ? -1 : 1));
}

async function shelved(port: StorePort): Promise<readonly unknown[]> {
  const kept = await port.shelf(SHELF);
  return Array.isArray(kept) ? kept : [];
}

const isOther = (id: string) => (value: unknown) => (value as Partial<Thing> | null)?.id !== id;

/** Keeps a thing; one of the same id gives way. Plans that carry it already keep theirs: a sheet does not change by itself. */
export async function keepThing(port: StorePort, kept: Thing): Promise<void> {
  await port.putShelf(SHELF, [...(await shelved(port)).filter(isOther(kept.id)), kept]);
}

export async function dropThing(port: StorePort, id: string): Promise<void> {
  await port.putShelf(SHELF, (await shelved(port)).filter(isOther(id)));
}
