import { useEffect, useState } from 'react';
import { storage } from '../app/storage.ts';

/** Address of a picture's bytes for as long as the page is open; null where they are not on this device. */
const urls = new Map<string, Promise<string | null>>();

async function make(hash: string): Promise<string | null> {
  const kept = await (await storage()).blob(hash);
  if (!kept) return null;
  return URL.createObjectURL(new Blob([kept.bytes as Uint8Array<ArrayBuffer>], { type: kept.mediaType }));
}

function urlOf(hash: string): Promise<string | null> {
  const known = urls.get(hash);
  if (known) return known;
  const made = make(hash).catch(() => null);
  urls.set(hash, made);
  // What is missing now may come with a file later: it is asked for again.
  void made.then((url) => url === null && urls.delete(hash));
  return made;
}

/** Undefined while it is looked for, null where the bytes are not on this device. */
export function usePhotoUrl(hash: string): string | null | undefined {
  const [url, setUrl] = useState<string | null | undefined>(undefined);
  useEffect(() => {
    let gone = false;
    setUrl(undefined);
    void urlOf(hash).then((found) => {
      if (!gone) setUrl(found);
    });
    return () => {
      gone = true;
    };
  }, [hash]);
  return url;
}
