import { type Line, PIECE_FAMILIES, type PieceFamily } from '../../report/piece.ts';

export const FAMILY_WORD: Readonly<Record<PieceFamily, string>> = {
  tube: 'Pipe',
  fitting: 'Fittings',
  valve: 'Valves',
  support: 'Clips',
  sleeve: 'Sleeves',
  appliance: 'Appliances',
  insulation: 'Insulation',
  sundry: 'Other',
};

/** Quantity that counts: the one typed by hand, else what the drawing gives. */
export const quantityOf = (line: Line): number => line.edited?.quantity ?? line.quantity;

export function sayQuantityOf(line: Line): string {
  const n = quantityOf(line);
  return line.unit === 'm' ? `${n.toFixed(1)} m` : String(n);
}

/** The whole of a line as it is said at a counter. */
export function sayLine(line: Line): string {
  const what = [line.size, line.name].filter((t) => t !== '').join(' ');
  return line.joining === '' ? what : `${what}, ${line.joining}`;
}

/** Lines by family, in the order a counter reads. */
export function byFamily(
  lines: readonly Line[],
): readonly { readonly family: PieceFamily; readonly lines: readonly Line[] }[] {
  return PIECE_FAMILIES.map((family) => ({ family, lines: lines.filter((l) => l.family === family) })).filter(
    (g) => g.lines.length > 0,
  );
}

/** Plain text for a message: a heading, then "2 x 22 elbow, end feed" a line. */
export function listAsText(title: string, lines: readonly Line[]): string {
  const parts = byFamily(lines).map(({ family, lines: of }) =>
    [
      FAMILY_WORD[family],
      ...of.map((l) => {
        const count =
          l.unit === 'm' ? `${sayQuantityOf(l)}${l.asked === '' ? '' : ` (${l.asked})`}` : `${sayQuantityOf(l)} x`;
        const notes = [l.edited?.note ?? '', l.unresolved ?? '', l.unverified ? 'unverified' : ''].filter(
          (t) => t !== '',
        );
        return `  ${count} ${sayLine(l)}${notes.length === 0 ? '' : ` (${notes.join('; ')})`}`;
      }),
    ].join('\n'),
  );
  return [title, ...parts].join('\n\n');
}
