import { createStore } from 'zustand/vanilla';
import type { BlobRef } from '../../plan/records/statements.ts';
import { storage } from '../app/storage.ts';
import { asTaken, type Laid, squaredUp } from './rectify.ts';

interface LaidState {
  /** By what the picture is and how it is squared; null where its bytes are not on this device. */
  readonly laid: ReadonlyMap<string, Laid | null>;
}

/** Pictures made ready, kept for as long as the page is open. Never in the document or its history. */
export const laidPictures = createStore<LaidState>(() => ({ laid: new Map() }));

const asked = new Set<string>();

/** The same name for the same bytes, squared the same way at the same scale. */
export const nameOfLaid = ({ hash, place }: BlobRef): string =>
  JSON.stringify([hash, place?.square ?? place?.mmPerPixel ?? null]);

const put = (name: string, laid: Laid | null): void =>
  laidPictures.setState((s) => ({ laid: new Map([...s.laid, [name, laid]]) }));

async function makeReady(record: BlobRef): Promise<Laid | null> {
  const { place } = record;
  const kept = await (await storage()).blob(record.hash);
  if (!kept || !place) return null;
  const bitmap = await createImageBitmap(new Blob([kept.bytes as Uint8Array<ArrayBuffer>], { type: kept.mediaType }));
  return place.square ? squaredUp(bitmap, place) : asTaken(bitmap, place);
}

/** Asks for a picture; the store tells when it is there. What could not be read is told as missing. */
export function wantLaid(record: BlobRef): void {
  const name = nameOfLaid(record);
  if (asked.has(name)) return;
  asked.add(name);
  makeReady(record).then(
    (laid) => put(name, laid),
    () => put(name, null),
  );
}

/** After a file has brought the bytes that were missing, they are asked for again. */
export function forgetMissing(): void {
  const { laid } = laidPictures.getState();
  for (const [name, found] of laid) if (found === null) asked.delete(name);
  laidPictures.setState({ laid: new Map([...laid].filter(([, found]) => found !== null)) });
}
