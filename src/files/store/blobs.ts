import type { Plan } from '../../plan/plan.ts';
import { fromBase64, toBase64 } from '../format/base64.ts';
import type { StorePort } from './store-port.ts';

/** "sha256-" and the digest in hex: one picture has one name in every job and every file. */
export async function hashOf(bytes: Uint8Array): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', bytes as Uint8Array<ArrayBuffer>);
  return `sha256-${Array.from(new Uint8Array(digest), (b) => b.toString(16).padStart(2, '0')).join('')}`;
}

/** Keeps a picture and gives its name. A picture that is there already is not kept twice. */
export async function keepBlob(port: StorePort, bytes: Uint8Array, mediaType: string): Promise<string> {
  const hash = await hashOf(bytes);
  if ((await port.blob(hash)) === undefined) await port.putBlob({ hash, mediaType, bytes });
  return hash;
}

type Pictured = Pick<Plan, 'blobRefs'>;

const hashesIn = (plan: Pictured): string[] => [...new Set(Object.values(plan.blobRefs).map((ref) => ref.hash))];

/** The pictures of a plan for its file, and the names of those that are not on this device. */
export async function blobsForFile(
  port: StorePort,
  plan: Plan,
): Promise<{ readonly blobs: Record<string, string>; readonly missing: readonly string[] }> {
  const blobs: Record<string, string> = {};
  const missing: string[] = [];
  for (const hash of hashesIn(plan).sort()) {
    const kept = await port.blob(hash);
    if (kept) blobs[hash] = toBase64(kept.bytes);
    else missing.push(hash);
  }
  return { blobs, missing };
}

/** Keeps the pictures of an opened file. Those whose bytes do not fit their name are left out and named. */
export async function blobsFromFile(
  port: StorePort,
  plan: Plan,
  blobs: Readonly<Record<string, string>>,
): Promise<{ readonly spoiled: readonly string[] }> {
  const spoiled: string[] = [];
  const types = new Map(Object.values(plan.blobRefs).map((ref) => [ref.hash as string, ref.mediaType]));
  for (const [hash, text] of Object.entries(blobs)) {
    const bytes = fromBase64(text);
    if (bytes === null || (await hashOf(bytes)) !== hash) spoiled.push(hash);
    else await keepBlob(port, bytes, types.get(hash) ?? 'application/octet-stream');
  }
  return { spoiled };
}

/** Removes pictures that none of these plans uses. Ask with every plan on the device, and with those that are open. */
export async function dropUnusedBlobs(port: StorePort, plans: readonly Plan[]): Promise<number> {
  const used = new Set(plans.flatMap(hashesIn));
  const unused = (await port.blobHashes()).filter((hash) => !used.has(hash));
  if (unused.length > 0) await port.removeBlobs(unused);
  return unused.length;
}

export interface PictureUse {
  /** Different pictures of the plan, and how many bytes of them are on this device. */
  readonly pictures: number;
  readonly bytes: number;
  /** Names of those that are not on this device. */
  readonly missing: readonly string[];
}

/** How much room the pictures of a plan take here. */
export async function pictureUse(port: StorePort, plan: Pictured): Promise<PictureUse> {
  const hashes = hashesIn(plan).sort();
  const kept = await Promise.all(hashes.map(async (hash) => ({ hash, bytes: (await port.blob(hash))?.bytes.length })));
  return {
    pictures: hashes.length,
    bytes: kept.reduce((sum, k) => sum + (k.bytes ?? 0), 0),
    missing: kept.filter((k) => k.bytes === undefined).map((k) => k.hash),
  };
}
