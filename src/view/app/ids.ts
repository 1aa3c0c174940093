import { type IdMaker, randomIds } from '../../plan/ids.ts';

/** Ids from the browser's own source of chance. */
export const deviceIds: IdMaker = randomIds((bytes) => {
  crypto.getRandomValues(bytes as Uint8Array<ArrayBuffer>);
  return bytes;
});
