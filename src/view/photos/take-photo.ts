import type { Editor } from '../../editor/editor-api.ts';
import { keepBlob } from '../../files/store/blobs.ts';
import { sayStoreTrouble } from '../../files/store/store-trouble.ts';
import { say } from '../app/desk.ts';
import { storage } from '../app/storage.ts';
import { takePicture } from '../traces/take-picture.ts';

export type From = 'camera' | 'device';

/** Asks for a photo: the camera at the back of the device, or a picture that is there. Null where none was given. */
function askForPhoto(from: From): Promise<File | null> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = 'image/*';
    if (from === 'camera') input.setAttribute('capture', 'environment');
    input.addEventListener('change', () => resolve(input.files?.[0] ?? null));
    input.addEventListener('cancel', () => resolve(null));
    input.click();
  });
}

interface Kept {
  readonly hash: string;
  readonly mediaType: string;
  readonly name: string;
  readonly pixels: { readonly width: number; readonly height: number };
}

/** Takes a photo, makes it small enough to carry, and keeps its bytes. What stood in the way is said. */
async function keepPhoto(from: From): Promise<Kept | null> {
  const file = await askForPhoto(from);
  if (!file) return null;
  let taken: Awaited<ReturnType<typeof takePicture>>;
  try {
    taken = await takePicture(file);
  } catch (error) {
    say(error instanceof Error ? error.message : String(error));
    return null;
  }
  const { bytes, mediaType, name, pixels } = taken;
  try {
    return { hash: await keepBlob(await storage(), bytes, mediaType), mediaType, name, pixels };
  } catch (error) {
    say(sayStoreTrouble(error));
    return null;
  }
}

/** A camera names its pictures by a count, which tells nobody anything. */
const isName = (name: string): boolean =>
  /[a-z]{4}/i.test(name) && !/^(img|image|dsc|dcim|pxl|photo)[-_ \d]*/i.test(name);

/** A new photo of a thing, or of nothing in particular yet. Gives its id. */
export async function addPhoto(editor: Editor, from: From, on: string | null): Promise<string | null> {
  const kept = await keepPhoto(from);
  if (!kept) return null;
  const { hash, mediaType, name, pixels } = kept;
  const told = { hash, mediaType, pixels, kind: 'photo', name: isName(name) ? name : '', on };
  const outcome = editor.run('blob.set', told);
  return outcome.ok ? (outcome.made[0] ?? null) : null;
}

/** Another photo in the place of one: its name and its pin stay. */
export async function replacePhoto(editor: Editor, blobRef: string, from: From): Promise<void> {
  const kept = await keepPhoto(from);
  if (!kept) return;
  const { hash, mediaType, pixels } = kept;
  editor.run('blob.change', { blobRef, change: { hash, mediaType, pixels } });
}
