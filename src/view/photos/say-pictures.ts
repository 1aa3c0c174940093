import type { PictureUse } from '../../files/store/blobs.ts';

const KB = 1000;
const MB = 1_000_000;

/** "340 kB", "1.2 MB": the way a device tells it. */
export const sayBytes = (n: number): string =>
  n < MB ? `${Math.max(1, Math.round(n / KB))} kB` : `${(n / MB).toFixed(1)} MB`;

const plural = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** "3 pictures, 1.2 MB on this device; 1 is not here." Empty where there are none. */
export function sayUse({ pictures, bytes, missing }: PictureUse): string {
  if (pictures === 0) return '';
  const here = pictures - missing.length;
  const kept = here === 0 ? 'none of them on this device' : `${sayBytes(bytes)} on this device`;
  const gone =
    missing.length === 0 || here === 0 ? '' : `; ${missing.length} ${missing.length === 1 ? 'is' : 'are'} not here`;
  return `${plural(pictures, 'picture')}, ${kept}${gone}.`;
}

/** What a file lacks, or brought spoiled; empty where it is whole. */
export function sayLost(lost: number, how: 'missing' | 'spoiled'): string {
  if (lost === 0) return '';
  return how === 'missing'
    ? `${plural(lost, 'picture')} of this job ${lost === 1 ? 'is' : 'are'} not on this device, so the file has none of ${lost === 1 ? 'it' : 'them'}. Everything else is in it.`
    : `${plural(lost, 'picture')} in the file ${lost === 1 ? 'is' : 'are'} spoiled and ${lost === 1 ? 'was' : 'were'} left out. The drawing is whole.`;
}
