import { direction, turned } from '../../geometry/vec.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { Fragment, Item, Spread, Vec, Wish } from '../display-list.ts';
import type { WallProbe } from '../pipes/banks.ts';
import { makeFragment } from './fragment.ts';

type Turn = (p: Vec) => Vec;

const turnBy = (way: Xy): Turn => {
  return ([x, y]) => {
    const p = turned({ x, y }, way);
    return [p.x, p.y];
  };
};

const spreadBy = (spread: Spread, turn: Turn): Spread => spread.map((s) => ({ ...s, n: turn(s.n) }));

function itemBy(item: Item, turn: Turn, deg: number): Item {
  switch (item.t) {
    case 'area':
      return { ...item, rings: item.rings.map((ring) => ring.map(turn)) };
    case 'line': {
      const { spread, gaps, offsetsMm } = item;
      return {
        ...item,
        pts: item.pts.map(turn),
        ...(spread ? { spread: spread.map((s) => spreadBy(s, turn)) } : {}),
        ...(offsetsMm ? { offsetsMm: offsetsMm.map(turn) } : {}),
        ...(gaps
          ? { gaps: gaps.map((g) => ({ at: turn(g.at), ...(g.spread ? { spread: spreadBy(g.spread, turn) } : {}) })) }
          : {}),
      };
    }
    case 'corner':
      return { ...item, at: turn(item.at), a: turn(item.a), b: turn(item.b), ...spreadOf(item.spread, turn) };
    case 'mark':
      return {
        ...item,
        at: turn(item.at),
        turnDeg: item.turnDeg + deg,
        ...(item.offsetMm ? { offsetMm: turn(item.offsetMm) } : {}),
        ...spreadOf(item.spread, turn),
      };
    // Words stay upright, and as far beside their place as they stood.
    case 'text':
      return { ...item, at: turn(item.at), ...spreadOf(item.spread, turn) };
  }
}

const spreadOf = (spread: Spread | undefined, turn: Turn) => (spread ? { spread: spreadBy(spread, turn) } : {});

function wishBy(wish: Wish, turn: Turn, deg: number): Wish {
  switch (wish.w) {
    case 'tag': {
      const { spread } = wish;
      const moved = spread && ([spreadBy(spread[0], turn), spreadBy(spread[1], turn)] as const);
      return { ...wish, from: turn(wish.from), to: turn(wish.to), ...(moved ? { spread: moved } : {}) };
    }
    case 'flag': {
      const along = wish.along && ([turn(wish.along[0]), turn(wish.along[1])] as const);
      return { ...wish, at: turn(wish.at), ...(along ? { along } : {}), ...spreadOf(wish.spread, turn) };
    }
    case 'letter': {
      const lies = Math.abs(Math.sin((deg * Math.PI) / 180)) > Math.SQRT1_2;
      return { ...wish, at: turn(wish.at), half: lies ? [wish.half[1], wish.half[0]] : wish.half };
    }
    case 'name':
      return { ...wish, at: turn(wish.at), ring: wish.ring.map(turn) };
    case 'dimension': {
      const { measures } = wish;
      const ways = measures && 'way' in measures ? { measures: { ...measures, way: turn(measures.way) } } : {};
      return { ...wish, a: turn(wish.a), b: turn(wish.b), side: turn(wish.side), ...ways };
    }
  }
}

/** The last turn that was asked for of each fragment. */
const kept = new WeakMap<Fragment, { readonly deg: number; readonly fragment: Fragment }>();

/** A fragment of the house as it lies on a plane turned by so much. Words stay upright. The same again for the same. */
export function turnedFragment(fragment: Fragment, deg: number): Fragment {
  if (deg === 0) return fragment;
  const was = kept.get(fragment);
  if (was?.deg === deg) return was.fragment;
  const turn = turnBy(direction(deg));
  const { id, map, layer } = fragment;
  const items = fragment.items.map((item) => itemBy(item, turn, deg));
  const wishes = fragment.wishes.map((wish) => wishBy(wish, turn, deg));
  const made = makeFragment(id, map, layer, items, wishes);
  kept.set(fragment, { deg, fragment: made });
  return made;
}

/** Asks of the house what is asked of a plane that it lies turned on. */
export function turnedProbe(probe: WallProbe, deg: number): WallProbe {
  if (deg === 0) return probe;
  const back = turnBy(direction(-deg));
  return (at, way) => probe(back(at), back(way));
}
