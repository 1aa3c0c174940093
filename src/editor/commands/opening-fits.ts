import { distance } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Opening } from '../../plan/records/building.ts';
import { refuse } from './define-command.ts';

/** Refuses an opening that leaves its wall, stands on its head, or overlaps another of the same wall. */
export function mustFit(plan: Plan, opening: Opening): void {
  const wall = plan.walls[opening.wall] ?? refuse('That wall is no longer there.');
  const full = distance(wall.a, wall.b);
  if (opening.widthMm <= 0) refuse('An opening needs a width.');
  if (opening.headMm <= opening.sillMm) refuse('The head of an opening lies above its sill.');
  if (opening.alongMm < 0 || opening.alongMm + opening.widthMm > full) {
    refuse(`The opening does not fit: the wall is ${Math.round(full)} long.`);
  }
  const near = (o: Opening): number => (o.from === 'a' ? o.alongMm : full - o.alongMm - o.widthMm);
  const mine = near(opening);
  const other = Object.values(plan.openings).find(
    (o) =>
      o.id !== opening.id &&
      o.wall === opening.wall &&
      (o.option === opening.option || o.option === null) &&
      near(o) < mine + opening.widthMm &&
      mine < near(o) + o.widthMm &&
      o.sillMm < opening.headMm &&
      opening.sillMm < o.headMm,
  );
  if (other) refuse(`There is ${other.name === '' ? `a ${other.kind}` : other.name} in that place.`);
}
