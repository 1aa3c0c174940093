import type { Opening, Void, Wall } from '../../plan/records/building.ts';
import type { Difference } from '../../report/tally.ts';
import { sayVoid } from '../building/void-parts.ts';
import type { Given } from '../given.ts';
import { midSentence, sayOpening, sayWall, sentence } from '../say-names.ts';
import { matched, type Pairs } from './pairs.ts';

const SYSTEM = 'Building';

function only(map: 'walls' | 'openings' | 'voids', a: Given, b: Given): string[] {
  return Object.keys(a.plan[map]).filter((id) => a.network.alive.has(map, id) && !b.network.alive.has(map, id));
}

const round = (mm: number): number => Math.round(mm);
const corners = (of: readonly { x: number; y: number }[]): string =>
  of.map((p) => `${round(p.x)} ${round(p.y)}`).join(', ');

/** The same wall drawn twice: nothing but its id and its option differs. */
const wallKey = ({ id: _, option: __, ...wall }: Wall): string => JSON.stringify(wall);
const voidKey = (v: Void): string => `${v.storey} ${corners(v.outline)}`;

function wallPairs(from: Given, to: Given): Pairs {
  const key = (given: Given, id: string): string => {
    const wall = given.plan.walls[id];
    return wall ? wallKey(wall) : id;
  };
  return matched(only('walls', from, to), only('walls', to, from), (f, t) => (key(from, f) === key(to, t) ? 0 : -1));
}

function wallDifferences(from: Given, to: Given, { gone, fresh }: Pairs): Difference[] {
  const row = (given: Given, id: string, kind: 'new' | 'gone'): Difference => {
    const wall = given.plan.walls[id];
    const long = wall ? `${(Math.hypot(wall.b.x - wall.a.x, wall.b.y - wall.a.y) / 1000).toFixed(1)} m long` : '';
    const [before, after] = kind === 'new' ? [[], [id]] : [[id], []];
    return { system: SYSTEM, kind, name: sentence(sayWall(given.plan, id)), say: long, before, after };
  };
  return [...fresh.map((id) => row(to, id, 'new')), ...gone.map((id) => row(from, id, 'gone'))];
}

function openingSaid(a: Opening, b: Opening): string[] {
  const other = (what: string, was: number, is: number): string =>
    round(was) === round(is) ? '' : `${round(is)} ${what} instead of ${round(was)}`;
  return [
    other('wide', a.widthMm, b.widthMm),
    other('to the sill', a.sillMm, b.sillMm),
    other('to the head', a.headMm, b.headMm),
    a.from === b.from && round(a.alongMm) === round(b.alongMm) ? '' : 'elsewhere in its wall',
  ].filter((s) => s !== '');
}

/** Openings are one and the same where they are of one kind and in one wall. */
function openingDifferences(from: Given, to: Given, walls: Pairs): Difference[] {
  const wallOf = new Map(walls.pairs.map((p) => [p.to, p.from]));
  const { pairs, gone, fresh } = matched(only('openings', from, to), only('openings', to, from), (f, t) => {
    const [a, b] = [from.plan.openings[f], to.plan.openings[t]];
    return a && b && a.kind === b.kind && a.wall === (wallOf.get(b.wall) ?? b.wall)
      ? -Math.abs(a.alongMm - b.alongMm) / 1e7 + 1
      : -1;
  });
  const name = (given: Given, id: string): string => sentence(sayOpening(given.plan, id));
  const row = (given: Given, id: string, kind: 'new' | 'gone'): Difference => {
    const wide = `${round(given.plan.openings[id]?.widthMm ?? 0)} wide`;
    const [before, after] = kind === 'new' ? [[], [id]] : [[id], []];
    return { system: SYSTEM, kind, name: name(given, id), say: wide, before, after };
  };
  return [
    ...pairs.flatMap((p): Difference[] => {
      const [a, b] = [from.plan.openings[p.from], to.plan.openings[p.to]];
      const said = a && b ? openingSaid(a, b) : [];
      const shared = { system: SYSTEM, name: name(to, p.to), before: [p.from], after: [p.to] };
      return said.length === 0 ? [] : [{ ...shared, kind: 'changed', say: said.join(', ') }];
    }),
    ...fresh.map((id) => row(to, id, 'new')),
    ...gone.map((id) => row(from, id, 'gone')),
  ];
}

/** Voids and boxes are one and the same where they are of one kind and one name. */
function voidDifferences(from: Given, to: Given): Difference[] {
  const { pairs, gone, fresh } = matched(only('voids', from, to), only('voids', to, from), (f, t) => {
    const [a, b] = [from.plan.voids[f], to.plan.voids[t]];
    if (!a || !b || a.kind !== b.kind) return -1;
    return voidKey(a) === voidKey(b) ? 2 : a.name !== '' && a.name === b.name ? 1 : -1;
  });
  const row = (given: Given, id: string, kind: 'new' | 'gone' | 'changed', say: string, was: string[]): Difference => {
    const space = given.plan.voids[id];
    const after = kind === 'gone' ? [] : [id];
    return { system: SYSTEM, kind, name: sentence(space ? sayVoid(space) : id), say, before: was, after };
  };
  return [
    ...pairs.flatMap((p) => {
      const [a, b] = [from.plan.voids[p.from], to.plan.voids[p.to]];
      if (!a || !b) return [];
      const shape = voidKey(a) === voidKey(b) ? '' : 'another outline';
      const height = JSON.stringify([a.bottom, a.top]) === JSON.stringify([b.bottom, b.top]) ? '' : 'other heights';
      const said = [shape, height].filter((s) => s !== '').join(', ');
      return said === '' ? [] : [row(to, p.to, 'changed', said, [p.from])];
    }),
    ...fresh.map((id) =>
      row(to, id, 'new', midSentence(to.plan.storeys[to.plan.voids[id]?.storey ?? '']?.name ?? ''), []),
    ),
    ...gone.map((id) => row(from, id, 'gone', '', [id])),
  ];
}

export function buildingDifferences(from: Given, to: Given): Difference[] {
  const walls = wallPairs(from, to);
  return [...wallDifferences(from, to, walls), ...openingDifferences(from, to, walls), ...voidDifferences(from, to)];
}
