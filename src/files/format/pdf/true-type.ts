/** What of a TrueType file a PDF needs: which glyph a letter is, how wide it is, how high the letters stand. */
export interface TrueType {
  readonly bytes: Uint8Array;
  readonly unitsPerEm: number;
  readonly box: readonly [number, number, number, number];
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  /** By glyph, in units of the font. */
  readonly widths: readonly number[];
  /** Glyph of a code point; 0 where the font has none. */
  glyphOf(code: number): number;
}

interface Table {
  readonly at: number;
  readonly long: number;
}

function tablesOf(view: DataView): Map<string, Table> {
  const tables = new Map<string, Table>();
  for (let i = 0; i < view.getUint16(4); i++) {
    const at = 12 + i * 16;
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((k) => view.getUint8(at + k)));
    tables.set(tag, { at: view.getUint32(at + 8), long: view.getUint32(at + 12) });
  }
  return tables;
}

/** Code points of a segment map of the basic plane (format 4), which every such font has. */
function segments(view: DataView, at: number): Map<number, number> {
  const count = view.getUint16(at + 6) / 2;
  const ends = at + 14;
  const starts = ends + count * 2 + 2;
  const deltas = starts + count * 2;
  const offsets = deltas + count * 2;
  const found = new Map<number, number>();
  for (let i = 0; i < count; i++) {
    const [first, last] = [view.getUint16(starts + i * 2), view.getUint16(ends + i * 2)];
    const delta = view.getUint16(deltas + i * 2);
    const offset = view.getUint16(offsets + i * 2);
    for (let code = first; code <= last && code < 0xffff; code++) {
      const raw = offset === 0 ? code : view.getUint16(offsets + i * 2 + offset + (code - first) * 2);
      const glyph = offset !== 0 && raw === 0 ? 0 : (raw + delta) & 0xffff;
      if (glyph !== 0) found.set(code, glyph);
    }
  }
  return found;
}

function lettersOf(view: DataView, cmap: Table): Map<number, number> {
  for (let i = 0; i < view.getUint16(cmap.at + 2); i++) {
    const at = cmap.at + view.getUint32(cmap.at + 4 + i * 8 + 4);
    if (view.getUint16(at) === 4) return segments(view, at);
  }
  throw new Error('the font has no map of its letters');
}

/** Reads a TrueType file. Throws where it is none, or lacks a table. */
export function readTrueType(bytes: Uint8Array): TrueType {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.byteLength < 12 || view.getUint32(0) !== 0x00010000) throw new Error('this is no TrueType file');
  const tables = tablesOf(view);
  const table = (tag: string): Table => {
    const found = tables.get(tag);
    if (!found) throw new Error(`the font has no table ${tag}`);
    return found;
  };
  const [head, hhea, hmtx, os2] = [table('head').at, table('hhea').at, table('hmtx').at, table('OS/2').at];
  const glyphs = view.getUint16(table('maxp').at + 4);
  const measured = view.getUint16(hhea + 34);
  const letters = lettersOf(view, table('cmap'));
  const box = [36, 38, 40, 42].map((at) => view.getInt16(head + at));
  return {
    bytes,
    unitsPerEm: view.getUint16(head + 18),
    box: [box[0] ?? 0, box[1] ?? 0, box[2] ?? 0, box[3] ?? 0],
    ascent: view.getInt16(hhea + 4),
    descent: view.getInt16(hhea + 6),
    capHeight: view.getInt16(os2 + 88),
    widths: Array.from({ length: glyphs }, (_, i) => view.getUint16(hmtx + Math.min(i, measured - 1) * 4)),
    glyphOf: (code) => letters.get(code) ?? 0,
  };
}
