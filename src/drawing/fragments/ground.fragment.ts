import type { Plan } from '../../plan/plan.ts';
import type { Ground } from '../../plan/records/building.ts';
import type { Fragment, Item, LineStyle, Vec, Wish } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { shortLevel } from '../text/say-level.ts';
import { makeFragment } from './fragment.ts';

const LINE: LineStyle = { ink: 'hatch', pen: PEN.doorLeaf, dash: [5, 1.2, 0.9, 1.2], fit: false };

/** Ground along the outside from above: a line through the places that were levelled, each with its level mark. */
export function groundFragment(plan: Plan, ground: Ground, storey: string): Fragment {
  const pts = ground.line.map((p): Vec => [p.x, p.y]);
  const marks = pts.map((at): Item => ({ t: 'mark', mark: 'level', at, turnDeg: 0, ink: 'symbol' }));
  const what = ground.kind === '' ? 'ground' : ground.kind;
  const wishes = ground.line.map(
    (p, i): Wish => ({
      w: 'flag',
      at: [p.x, p.y],
      what: shortLevel(plan, p.z, storey),
      how: i === 0 ? what : null,
      rank: 7,
      clearMm: 1.6,
    }),
  );
  const line: Item[] = pts.length > 1 ? [{ t: 'line', pts, style: LINE }] : [];
  return makeFragment(ground.id, 'grounds', 'ground', [...line, ...marks], wishes);
}
