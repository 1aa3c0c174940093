import * as v from 'valibot';
import { connectionPlace } from '../../geometry/hosting.ts';
import { nodePlace } from '../../geometry/places.ts';
import type { Plan } from '../../plan/plan.ts';
import { finite, type HeightRef, id, type Xyz } from '../../plan/records/parts.ts';
import { run, tube } from '../../plan/records/pipework.ts';
import { addPath } from '../commands/add-path.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { heightOf, nodeFor, type PlaceArg, placeArg } from '../commands/place-arg.ts';
import { serviceWord } from '../commands/service-word.ts';
import { sayWay, WALKS, wayToTail } from '../commands/way-to-tail.ts';

interface Start {
  readonly at: Xyz;
  readonly storey: string;
  readonly height: HeightRef;
}

function startAt(plan: Plan, node: string): Start {
  const record = plan.nodes[node] ?? refuse('The end of that run is no longer there.');
  const place = nodePlace(plan, record) ?? refuse('That end has no height yet.');
  return { at: place.at, storey: place.storey, height: heightOf(record) };
}

/**
 * Lays what is left of a run to a tail that is drawn: ahead, to the side and up or down as the walker faces, one leg
 * each. `first` is the way somebody has set out; it is refused where the tail does not lie that way.
 */
export default defineCommand({
  id: 'run.reach',
  label: (args, before) => `take ${serviceWord(args.service)} to ${before.points[args.point]?.name ?? 'a tail'}`,
  args: v.object({
    service: run.entries.service,
    joining: run.entries.joining,
    turns: run.entries.turns,
    tube,
    /** The run that goes on; null: a new one. */
    run: v.nullable(id<'run'>()),
    from: placeArg,
    facing: v.object({ x: finite, y: finite }),
    first: v.nullable(v.picklist(WALKS)),
    point: id<'point'>(),
    connection: id<'connection'>(),
  }),
  run(draft, args, ctx) {
    const { service, joining, turns, point, connection, first } = args;
    const target = draft.points[point] ?? refuse('That point is no longer there.');
    const tail = connectionPlace(draft, point, connection) ?? refuse(`${target.name} has no height yet.`);
    const made: string[] = [];
    const own = args.run === null ? null : (draft.runs[args.run] ?? refuse('That run is no longer there.'));
    const record = own ?? { id: ctx.ids.next('r'), service, name: '', joining, turns, option: ctx.option };
    if (own === null) {
      draft.runs[record.id] = { ...record };
      made.push(record.id);
    }
    const node = nodeFor(draft, args.from, service, ctx);
    const start = startAt(draft, node);
    const way = wayToTail(start.at, args.facing, tail, first);
    if (way.length === 0) refuse(`The run is at ${target.name} already.`);
    if (way[0]?.walk === 'back')
      refuse(`${target.name} lies straight back, ${sayWay(way)}: shorten the last leg first.`);
    if (first !== null && way[0]?.walk !== first)
      refuse(`${target.name} is not ${first} from here: it is ${sayWay(way)}.`);
    const tailHeight: HeightRef = { from: 'connection', of: point, mm: 0, connection };
    let { height } = start;
    const path = way.slice(0, -1).map((s): PlaceArg => {
      if (s.upright) height = tailHeight;
      return { at: 'free', storey: start.storey, x: s.at.x, y: s.at.y, height };
    });
    const end: PlaceArg = { at: 'connection', point, connection };
    return [...made, node, ...addPath(draft, record, node, [...path, end], args, ctx)];
  },
  example(plan, rng) {
    const tails = Object.values(plan.points).flatMap((p) =>
      p.connections.map((c) => ({ service: c.service, point: p.id, connection: c.id })),
    );
    const tail = rng.pick(tails);
    const storey = rng.pick(Object.keys(plan.storeys));
    if (!tail || storey === undefined) return null;
    const height = { from: 'floor', of: storey, mm: rng.below(2000) };
    const from = { at: 'free', storey, x: rng.below(4000), y: rng.below(4000), height };
    const way = { run: null, from, facing: { x: 1, y: 0 }, first: rng.pick([null, null, 'ahead', 'up']) ?? null };
    return { ...tail, ...way, joining: null, turns: 'elbow', tube: { kind: 'copper', size: '22x0.9' } };
  },
});
