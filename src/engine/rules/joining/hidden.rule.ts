import { JOINING_WORDS } from '../../../catalogue/joining-words.ts';
import { voidsAt } from '../../../geometry/void-stretches.ts';
import { fittingAt } from '../../../network/fitting-at.ts';
import type { Void } from '../../../plan/records/building.ts';
import { word } from '../../../reference/figure.ts';
import { standingBuilding } from '../../clearance/crossings.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { sayRun } from '../../say-names.ts';

const TABLE = 'joining-allowed';
/** Places of a pipe at which nothing is joined. */
const NO_JOINT = new Set(['plain', 'bend', 'none', 'open', 'unresolved']);

interface Hidden {
  readonly vertex: string;
  readonly leg: string;
  readonly space: Void;
}

/** Joints of a run's new gas pipe that lie in a void, slab or box. */
function hiddenJoints(given: Given, run: string): Hidden[] {
  const { network, plan } = given;
  const standing = standingBuilding(network);
  const seen = new Set<string>();
  return (network.edgesOfRun.get(run) ?? []).flatMap((id) => {
    const edge = network.edges.get(id);
    if (edge?.kind !== 'leg' || edge.state !== 'new') return [];
    return [edge.a, edge.b].flatMap((vertex): Hidden[] => {
      const at = network.vertices.get(vertex)?.place?.at;
      if (!at || seen.has(vertex) || NO_JOINT.has(fittingAt(network, vertex).is)) return [];
      seen.add(vertex);
      const space = plan.voids[voidsAt(plan, at, standing)[0] ?? ''];
      return space ? [{ vertex, leg: id, space }] : [];
    });
  });
}

/** Soldered joints may lie anywhere: nothing has to be looked for. */
const mayBeHidden = (joining: string): boolean =>
  ['gas buried', 'gas hidden'].every((where) => {
    const found = word(TABLE, where, joining);
    return found.is === 'known' && found.word === 'yes';
  });

function judge(given: Given): Fault[] {
  return [...given.network.edgesOfRun.keys()].flatMap((id): Fault[] => {
    const run = given.plan.runs[id];
    if (run?.service !== 'gas' || run.joining === null || mayBeHidden(run.joining)) return [];
    // The same joint in the open is the business of the rule for the service.
    const open = word(TABLE, 'gas', run.joining);
    if (open.is !== 'known' || open.word !== 'yes') return [];
    const hidden = hiddenJoints(given, id);
    const buried = hidden.filter((h) => h.space.kind === 'slab');
    const worst = buried[0] ?? hidden[0];
    if (!worst) return [];
    const found = word(TABLE, buried.length > 0 ? 'gas buried' : 'gas hidden', run.joining);
    if (found.is === 'known' && found.word === 'yes') return [];
    const name = worst.space.name === '' ? `${worst.space.kind} void` : worst.space.name.toLowerCase();
    const shared = {
      ids: [id, worst.space.id],
      legs: hidden.map((h) => h.leg),
      words: { run: sayRun(given.plan, id), joining: JOINING_WORDS[run.joining], space: name },
      at: atVertex(given.network, worst.vertex),
      more: hidden.length - 1,
      cites: [{ ...found.cite }],
    };
    if (found.is !== 'known') {
      return [
        { outcome: 'cantTell', ...shared, missing: [`whether ${JOINING_WORDS[run.joining]} joints may be hidden`] },
      ];
    }
    return [{ outcome: 'stop', ...shared, unverified: found.sureness === 'memory' }];
  });
}

const house = (joining: 'compression' | 'endFeed' | 'press', kind: 'floor' | 'slab' = 'floor', z = 2300) => {
  const e = example();
  e.plan.voids.v = {
    id: 'v',
    storey: 'ground',
    name: '',
    kind,
    outline: [
      { x: 0, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: 2000 },
      { x: 0, y: 2000 },
    ],
    holes: [],
    bottom: { from: 'datum', of: null, mm: 2250 },
    top: { from: 'datum', of: null, mm: 2400 },
    joists: null,
    bearings: [],
    ventilated: true,
    mayBeCut: null,
    option: null,
    sureness: 'seen',
  };
  return e.run(
    'g',
    'gas',
    [
      [500, 500, z],
      [2500, 500, z],
      [2500, 1500, z],
    ],
    { joining },
  ).plan;
};

export default defineRule({
  id: 'joining/hidden',
  topic: 'joints',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'bs6891-2015', clause: 'jointing', table: TABLE }],
  needs: ['how the run is joined', 'where the voids are'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{run}: {joining} joints in the {space}',
      why: 'A joint that can work loose must stay where a hand and a detector can reach it.',
      todo: 'Solder the joints that will be hidden, pull bends instead, or bring the joints out of it.',
    },
    cantTell: {
      title: "{run}: can't tell whether {joining} joints may be in the {space}",
      why: 'No table has been read that says so: {missing}.',
      todo: "Look it up in the fitting's own instructions.",
    },
    pass: 'No joint that has to be reached is hidden.',
  },
  examples: [
    { name: 'a compression elbow under the floor', given: () => house('compression'), expect: 'stop' },
    { name: 'a compression elbow in a slab', given: () => house('compression', 'slab'), expect: 'stop' },
    { name: 'a soldered elbow under the floor', given: () => house('endFeed'), expect: 'pass' },
    { name: 'a compression elbow in the open', given: () => house('compression', 'floor', 1000), expect: 'pass' },
    { name: 'a pressed elbow under the floor', given: () => house('press'), expect: 'cantTell' },
  ],
});
