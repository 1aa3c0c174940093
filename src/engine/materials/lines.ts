import type { Case, Plan } from '../../plan/plan.ts';
import type { ListEdit } from '../../plan/records/statements.ts';
import { figure } from '../../reference/figure.ts';
import { type Line, lineKey, PIECE_FAMILIES, type Piece } from '../../report/piece.ts';

/** Metres of a tube kind in one stock length; null where no table says. */
function stockMetres(kind: string): number | null {
  const row = kind.replace(/^tube-/, '');
  const found = figure('stock-lengths', row, 'straight');
  return found.is === 'known' ? (found.value ?? found.lo) : null;
}

function askedFor(piece: Piece, quantity: number, unit: 'm' | 'each'): string {
  if (unit === 'each') return '';
  const stock = stockMetres(piece.kind);
  if (stock === null) return '';
  const lengths = Math.ceil(quantity / stock - 1e-9);
  return `${lengths} ${lengths === 1 ? 'length' : 'lengths'} of ${stock} m`;
}

/** Whole tenths of a metre, upward: a list is never short by rounding. */
const metres = (mm: number): number => Math.max(0, Math.ceil(mm / 100 - 1e-6)) / 10;

function editOf(edits: readonly ListEdit[], key: string, quantity: number): Line['edited'] {
  const edit = edits.find((e) => lineKey(e.option, e.piece, e.size, e.joining) === key);
  if (!edit) return null;
  return {
    quantity: edit.quantity,
    madeOn: edit.madeOn,
    note: edit.note,
    moved: Math.abs(edit.madeOn - quantity) > 1e-6,
  };
}

/** A size as numbers, largest first, so that 28 stands before 22 and 22 x 15 after 22. */
const sizeOrder = (size: string): number[] =>
  size
    .split(/[^0-9.]+/)
    .filter(Boolean)
    .map(Number);

function byCounter(a: Line, b: Line): number {
  const family = PIECE_FAMILIES.indexOf(a.family) - PIECE_FAMILIES.indexOf(b.family);
  if (family !== 0) return family;
  if (a.joining !== b.joining) return a.joining < b.joining ? -1 : 1;
  if (a.name !== b.name) return a.name < b.name ? -1 : 1;
  const [x, y] = [sizeOrder(a.size), sizeOrder(b.size)];
  for (let i = 0; i < Math.max(x.length, y.length); i++) {
    const d = (y[i] ?? 0) - (x[i] ?? 0);
    if (d !== 0) return d;
  }
  return a.key < b.key ? -1 : 1;
}

/** An edit whose line the drawing no longer has stays, with nothing drawn beside it, until the user takes it back. */
function orphans(edits: readonly ListEdit[], option: string | null, seen: ReadonlySet<string>): Line[] {
  return edits
    .filter((e) => e.option === option && !seen.has(lineKey(e.option, e.piece, e.size, e.joining)))
    .map((e) => ({
      key: lineKey(e.option, e.piece, e.size, e.joining),
      family: 'sundry',
      piece: e.piece,
      name: e.piece.replace(/-/g, ' '),
      size: e.size,
      joining: e.joining,
      quantity: 0,
      unit: 'each',
      asked: '',
      edited: { quantity: e.quantity, madeOn: e.madeOn, note: e.note, moved: true },
      runs: [],
      at: [],
      note: 'the drawing no longer has this',
      unverified: false,
      unresolved: null,
    }));
}

/** Pieces added up as a counter reads them, with the user's own edits beside the quantities the drawing gives. */
export function linesOf(plan: Plan, chosen: Case, pieces: readonly Piece[]): Line[] {
  const option = chosen.when === 'after' ? chosen.option : null;
  const edits = Object.values(plan.listEdits);
  const groups = new Map<string, Piece[]>();
  for (const p of pieces) {
    const key = `${lineKey(option, p.kind, p.size, p.joining)}${p.unresolved === null ? '' : `|${p.unresolved}`}`;
    const group = groups.get(key);
    if (group) group.push(p);
    else groups.set(key, [p]);
  }
  const lines = [...groups].flatMap(([key, group]): Line[] => {
    const [first] = group;
    if (!first) return [];
    const amount = group.reduce((sum, p) => sum + p.amount, 0);
    const unit = first.unit === 'mm' ? 'm' : 'each';
    const quantity = unit === 'm' ? metres(amount) : amount;
    return [
      {
        key,
        family: first.family,
        piece: first.kind,
        name: first.name,
        size: first.size,
        joining: first.joining,
        quantity,
        unit,
        asked: askedFor(first, quantity, unit),
        edited: editOf(edits, key, quantity),
        runs: [...new Set(group.flatMap((p) => p.run ?? []))].sort(),
        at: group.map((p) => p.at),
        note: [...new Set(group.map((p) => p.note).filter((n) => n !== ''))].join('; '),
        unverified: group.some((p) => p.unverified),
        unresolved: first.unresolved,
      },
    ];
  });
  return [...lines, ...orphans(edits, option, new Set(lines.map((l) => l.key)))].sort(byCounter);
}
