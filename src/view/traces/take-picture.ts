/** Longest side a picture is kept at, px: fine enough to trace a door by, small enough for an old tablet. */
const MOST_PX = 2400;
const QUALITY = 0.85;
const KEPT_AS = 'image/jpeg';

export interface TakenPicture {
  readonly bytes: Uint8Array;
  readonly mediaType: string;
  readonly name: string;
  readonly pixels: { readonly width: number; readonly height: number };
}

/** Lets the user pick a picture of the device. Null where none was picked. */
export function askForPicture(): Promise<File | null> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = 'image/*';
    input.addEventListener('change', () => resolve(input.files?.[0] ?? null));
    input.addEventListener('cancel', () => resolve(null));
    input.click();
  });
}

/**
 * A picture as it is kept: upright, no larger than it has to be, and without what a camera writes beside it (where and when).
 * Rejects with a sentence where the file is no picture this browser can read.
 */
export async function takePicture(file: Blob & { readonly name?: string }): Promise<TakenPicture> {
  const name = (file.name ?? '').replace(/\.[^.]*$/, '');
  const whole = await createImageBitmap(file).catch(() => {
    throw new Error(
      `${name === '' ? 'That file' : name} is no picture this browser can read. A scan as JPEG or PNG can be.`,
    );
  });
  const shrink = Math.min(1, MOST_PX / Math.max(whole.width, whole.height));
  const [width, height] = [Math.round(whole.width * shrink), Math.round(whole.height * shrink)];
  const canvas = new OffscreenCanvas(width, height);
  const paint = canvas.getContext('2d');
  if (!paint) throw new Error('This browser has no room left to read a picture.');
  paint.fillStyle = '#fff';
  paint.fillRect(0, 0, width, height);
  paint.drawImage(whole, 0, 0, width, height);
  whole.close();
  const kept = await canvas.convertToBlob({ type: KEPT_AS, quality: QUALITY });
  return { bytes: new Uint8Array(await kept.arrayBuffer()), mediaType: KEPT_AS, name, pixels: { width, height } };
}
