import { type Line, PIECE_FAMILIES, type PieceFamily } from '../../report/piece.ts';

export const FAMILY_NAMES: Readonly<Record<PieceFamily, string>> = {
  tube: 'Pipe',
  fitting: 'Fittings',
  valve: 'Valves',
  support: 'Clips',
  sleeve: 'Sleeves',
  appliance: 'Appliances',
  insulation: 'Lagging',
  sundry: 'Other',
};

const JOININGS: Readonly<Record<string, string>> = {
  endFeed: 'end feed',
  solderRing: 'solder ring',
  compression: 'compression',
  press: 'press',
  pushFit: 'push-fit',
  threaded: 'threaded',
  solvent: 'solvent weld',
  electrofusion: 'electrofusion',
};
/** A joining as the trade calls it; one this version does not know stays as it is. */
export const sayJoining = (joining: string): string => JOININGS[joining] ?? joining;

/** What is to be bought: the figure set by hand where there is one, else what the drawing gives. */
export const wanted = (line: Line): number => line.edited?.quantity ?? line.quantity;

/** A quantity as it is written on a list: tenths of a metre, whole things. */
export const sayAmount = (amount: number): string => String(Math.round(amount * 10) / 10);

/** Lines by family in the order a counter reads them: pipe first. Order within a family is kept. */
export function byFamily(lines: readonly Line[]): readonly (readonly [PieceFamily, readonly Line[]])[] {
  return PIECE_FAMILIES.flatMap((family) => {
    const of = lines.filter((line) => line.family === family);
    return of.length === 0 ? [] : [[family, of] as const];
  });
}

/** Why a line changed by hand should be looked at again; empty where there is no reason. */
export function sayMoved(line: Line): string {
  if (line.edited?.moved !== true) return '';
  return `drawing moved: ${sayAmount(line.edited.madeOn)} when it was changed, ${sayAmount(line.quantity)} now`;
}
