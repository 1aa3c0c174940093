import * as v from 'valibot';
import { makePoint } from '../../catalogue/make-point.ts';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { resolveHeight } from '../../geometry/heights.ts';
import { finite, id } from '../../plan/records/parts.ts';
import { field, point } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { legsAt } from '../commands/legs-at.ts';
import { heightOf, raised } from '../commands/place-arg.ts';

/**
 * Hangs a new point on the open end of a run, so that its connection lies where the pipe ends: the point takes its place
 * and height from the pipe. `angleDeg` turns its right-hand axis from the sheet's x.
 */
export default defineCommand({
  id: 'run.end',
  label: (args) => `end at ${(pointKinds.get(args.kind)?.label ?? args.kind).toLowerCase()}`,
  args: v.object({
    node: id<'node'>(),
    kind: point.entries.kind,
    angleDeg: v.optional(finite, 0),
    fields: v.optional(v.record(v.string(), field), {}),
  }),
  run(draft, args, ctx) {
    const node = draft.nodes[args.node] ?? refuse('That end is no longer there.');
    if (node.place.on !== 'storey') return refuse('That end is on a connection already.');
    const [leg, another] = legsAt(draft, node.id);
    const service = draft.runs[leg?.run ?? '']?.service;
    if (service === undefined || another) return refuse('Only the open end of a run can end at a point.');
    const kind = pointKinds.get(args.kind) ?? refuse(`There is no kind of point called ${args.kind}.`);
    const made = ctx.ids.next('p');
    const { storey, x, y } = node.place;
    const place = { on: 'storey', x, y, angleDeg: args.angleDeg, height: heightOf(node) } as const;
    const hung = makePoint(kind.id, {
      id: made,
      storey,
      place,
      option: ctx.option,
      fields: args.fields,
      sureness: 'seen',
    });
    const tail =
      hung.connections.find((c) => c.service === service) ?? refuse(`${kind.label} has no connection for ${service}.`);
    const a = (args.angleDeg * Math.PI) / 180;
    const [right, out] = [
      { x: Math.cos(a), y: Math.sin(a) },
      { x: Math.sin(a), y: -Math.cos(a) },
    ];
    hung.place = {
      ...place,
      x: x - right.x * tail.at.x - out.x * tail.at.y,
      y: y - right.y * tail.at.x - out.y * tail.at.y,
      height: raised(place.height, -tail.at.z),
    };
    if (!resolveHeight(draft, hung.place.height)) refuse('That end has no height yet.');
    draft.points[made] = hung;
    // Rounded apart, the point's place and its tail's may fall a tenth to either side of where the pipe ended.
    if (Math.hypot(tail.at.x, tail.at.y) < COINCIDENT_MM) hung.place = { ...hung.place, x, y };
    node.place = { on: 'connection', point: made, connection: tail.id };
    return [made, tail.id];
  },
  example(plan, rng) {
    const node = rng.pick(Object.values(plan.nodes));
    return node ? { node: node.id, kind: rng.pick(['boiler', 'hob', 'radiator']), angleDeg: rng.below(4) * 90 } : null;
  },
});
