/** Flavoured ids: a plain string may become any of them, but a leg's id is never taken for a run's. */
declare const idOf: unique symbol;
export type Id<K extends string> = string & { readonly [idOf]?: K };

export type StoreyId = Id<'storey'>;
export type WallId = Id<'wall'>;
export type OpeningId = Id<'opening'>;
export type RoomId = Id<'room'>;
export type RoofId = Id<'roof'>;
export type GroundId = Id<'ground'>;
export type VoidId = Id<'void'>;
export type PointId = Id<'point'>;
export type ConnectionId = Id<'connection'>;
export type RunId = Id<'run'>;
export type LegId = Id<'leg'>;
export type NodeId = Id<'node'>;
export type StretchId = Id<'stretch'>;
export type ItemId = Id<'item'>;
export type GroupId = Id<'group'>;
export type OptionId = Id<'option'>;
export type AcknowledgementId = Id<'acknowledgement'>;
export type OverrideId = Id<'override'>;
export type ListEditId = Id<'listEdit'>;
export type ThingId = Id<'thing'>;
export type BlobRefId = Id<'blobRef'>;
export type BlobHash = Id<'blobHash'>;

/** Makes ids that have not been used. Injected, so that tests and replays get the same ids every time. */
export interface IdMaker {
  next(prefix: string): string;
}

/** p1, p2, … skipping every id in `taken`. For tests, the terminal and demo plans. */
export function countingIds(taken: ReadonlySet<string> = new Set(), start = 1): IdMaker {
  let n = start;
  return {
    next(prefix) {
      let id = `${prefix}${n++}`;
      while (taken.has(id)) id = `${prefix}${n++}`;
      return id;
    },
  };
}

const ALPHABET = '23456789abcdefghjkmnpqrstuvwxyz';

/** Ten letters from a random source that fills bytes: 31^10 values, so two tablets do not meet by chance. */
export function randomIds(fill: (bytes: Uint8Array) => Uint8Array): IdMaker {
  return {
    next(prefix) {
      const bytes = fill(new Uint8Array(10));
      return `${prefix}-${Array.from(bytes, (b) => ALPHABET[b % ALPHABET.length]).join('')}`;
    },
  };
}
