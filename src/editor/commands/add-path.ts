import { nodePlace } from '../../geometry/places.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Leg, Run, Tube } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { CommandContext } from './define-command.ts';
import { refuse } from './define-command.ts';
import { legsAt } from './legs-at.ts';
import { nodeFor, type PlaceArg } from './place-arg.ts';

export interface NewPipe {
  readonly tube: Tube;
  readonly insulation?: Leg['insulation'] | undefined;
  readonly sureness?: Leg['sureness'] | undefined;
}

function mayJoin(draft: Plan, a: string, b: string): void {
  if (a === b) refuse('The next place is the same as the last one.');
  const [na, nb] = [draft.nodes[a], draft.nodes[b]];
  const pa = na && nodePlace(draft, na);
  const pb = nb && nodePlace(draft, nb);
  if (pa && pb && distance3(pa.at, pb.at) < COINCIDENT_MM) refuse('The next place is the same as the last one.');
  if (legsAt(draft, a).some((l) => l.a === b || l.b === b)) refuse('A pipe already joins these two places.');
}

/** Carries a run on through the places, one leg to each. Gives the ids made: leg, node, leg, node… */
export function addPath(
  draft: Plan,
  run: Run,
  from: string,
  path: readonly PlaceArg[],
  pipe: NewPipe,
  ctx: CommandContext,
): string[] {
  const made: string[] = [];
  let last = from;
  for (const place of path) {
    const node = nodeFor(draft, place, run.service, ctx);
    mayJoin(draft, last, node);
    const leg = ctx.ids.next('l');
    draft.legs[leg] = {
      id: leg,
      run: run.id,
      a: last,
      b: node,
      tube: { ...pipe.tube },
      insulation: pipe.insulation ? { ...pipe.insulation } : null,
      option: ctx.option,
      sureness: pipe.sureness ?? 'seen',
    };
    made.push(leg, node);
    last = node;
  }
  return made;
}
