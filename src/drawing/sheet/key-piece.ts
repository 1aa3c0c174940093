import { servicesInOrder } from '../../catalogue/services.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Fragment, Item, LineItem, LineStyle } from '../display-list.ts';
import { sheetFrame } from '../paint/frame.ts';
import type { Prim } from '../paint/prim.ts';
import { primsOf } from '../paint/prims-of.ts';
import { legStyle, type PipeState } from '../pipes/leg-style.ts';
import { LINE, type Piece, PRINT, paragraph, SHEET_TEXT, words } from './ink.ts';

const ROW_MM = 3.9;
const LINE_MM = 18;
const TAG_MM = 2.4;
const MARK_MM = 1.8;
const NAME_MM = 9;

const draw = (item: Item, x: number, y: number): Prim[] => primsOf(item, sheetFrame(1, [0, 0], [x, y]), PRINT);

const line = (style: LineStyle, long: number): LineItem => ({
  t: 'line',
  pts: [
    [0, 0],
    [long, 0],
  ],
  style,
});

interface Used {
  readonly services: ReadonlySet<string>;
  readonly there: boolean;
  readonly assumed: boolean;
  readonly strip: boolean;
  readonly marks: ReadonlySet<string>;
}

/** What of the key the fragments of a sheet need. */
function used(fragments: readonly Fragment[]): Used {
  const services = new Set<string>();
  const marks = new Set<string>();
  let [there, assumed, strip] = [false, false, false];
  for (const { items, wishes } of fragments) {
    for (const wish of wishes) if (wish.w === 'tag') services.add(wish.letters);
    for (const item of items) {
      if (item.t === 'mark') marks.add(item.mark);
      if (item.t !== 'line' || !item.style.ink.startsWith('service:')) continue;
      const fresh = legStyle(item.style.ink.slice(8), 'new', false).pen;
      if (item.style.core !== undefined) assumed = true;
      if (item.style.strike !== undefined) strip = true;
      else if (item.style.core === undefined && item.style.pen < fresh) there = true;
    }
  }
  return { services, there, assumed, strip, marks };
}

/** Letters drawn in the points of a sheet, each with the names of what it stands for. */
function lettersOf(plan: Plan, fragments: readonly Fragment[]): [string, string][] {
  const found = new Map<string, Set<string>>();
  for (const { id, wishes } of fragments) {
    const point = plan.points[id];
    if (!point) continue;
    for (const wish of wishes) {
      if (wish.w !== 'letter' || wish.text.trim() === '') continue;
      const names = found.get(wish.text) ?? new Set<string>();
      found.set(wish.text, names.add(point.name === '' ? point.kind.replaceAll('-', ' ') : point.name));
    }
  }
  return [...found]
    .map(([letter, names]): [string, string] => [letter, [...names].sort().join(', ')])
    .sort(([a], [b]) => (a < b ? -1 : 1));
}

interface Row {
  readonly prims: (x: number, y: number) => Prim[];
  readonly tag: string;
  readonly name: string;
}

const MARKS = [
  { mark: 'rise', name: 'comes up' },
  { mark: 'drop', name: 'goes down' },
  { mark: 'tee', name: 'tee' },
] as const;

/** The marks side by side: each says what it is right beside it. */
function marksRow(marks: readonly (typeof MARKS)[number][], w: number): Row[] {
  const prims = (x: number, y: number): Prim[] =>
    marks.flatMap(({ mark, name }, i) => {
      const left = x + (i * w) / MARKS.length;
      return [
        ...draw({ t: 'mark', mark, at: [0, 0], turnDeg: 0, ink: 'ink1' }, left + MARK_MM, y),
        words(name, { x: left + 2.4 * MARK_MM, y }),
      ];
    });
  return marks.length === 0 ? [] : [{ prims, tag: '', name: '' }];
}

/** The lines, marks and letters of one sheet, and no others. */
export function keyPiece(
  plan: Plan,
  fragments: readonly Fragment[],
  x: number,
  top: number,
  w: number,
  most: number,
): Piece {
  const has = used(fragments);
  const sample = (state: PipeState, hollow: boolean, name: string): Row => ({
    prims: (px, py) => draw(line(legStyle('heatingFlow', state, hollow, true), LINE_MM), px, py),
    tag: '',
    name,
  });
  const rows: Row[] = [
    ...servicesInOrder()
      .filter((s) => has.services.has(s.tag))
      .map(
        (s): Row => ({
          prims: (px, py) => draw(line(legStyle(s.style, 'new', false), LINE_MM), px, py),
          tag: s.tag,
          name: s.label,
        }),
      ),
    ...(has.there ? [sample('there', false, 'there, stays')] : []),
    ...(has.assumed ? [sample('there', true, 'assumed, not seen')] : []),
    ...(has.strip ? [sample('strip', false, 'to be taken out')] : []),
    ...marksRow(
      MARKS.filter((m) => has.marks.has(m.mark)),
      w,
    ),
  ];
  const prims: Prim[] = [];
  const head = paragraph('Lines and letters', { x, y: top, w, size: SHEET_TEXT.heading, weight: 600 });
  prims.push(...head.prims);
  let y = top + head.h + 0.8;
  for (const [i, row] of rows.entries()) {
    const room = most - (y - top);
    if (room < ROW_MM || (room < 2 * ROW_MM && i < rows.length - 1)) {
      prims.push(words(`and ${rows.length - i} more`, { x, y: y + ROW_MM / 2 }));
      y += ROW_MM;
      break;
    }
    const middle = y + ROW_MM / 2;
    prims.push(...row.prims(x, middle));
    if (row.tag !== '') prims.push(words(row.tag, { x: x + LINE_MM + TAG_MM, y: middle, weight: 600 }));
    const left = LINE_MM + (row.tag === '' ? TAG_MM : TAG_MM + NAME_MM - 1);
    const name = paragraph(row.name, { x: x + left, y: middle - SHEET_TEXT.body * 0.7, w: w - left, most: 1 });
    prims.push(...name.prims);
    y += ROW_MM;
  }
  const letters = lettersOf(plan, fragments).map(([letter, name]) => `${letter} ${name}`);
  const lines = Math.floor((most - (y - top) - 1) / (SHEET_TEXT.body * LINE));
  if (letters.length > 0 && lines > 0) {
    const piece = paragraph(letters.join('; '), { x, y: y + 1, w, most: lines });
    prims.push(...piece.prims);
    y += piece.h + 1;
  }
  return { prims, h: y - top };
}
