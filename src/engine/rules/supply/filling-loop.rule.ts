import type { Item } from '../../../plan/records/pipework.ts';
import { type Figure, figure } from '../../../reference/figure.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { at, setItem } from './houses.ts';

type Params = { readonly house: Figure; readonly other: Figure };

function runsAt(given: Given, item: Item): string[] {
  const vertex = given.network.vertices.get(given.network.vertexOf.get(item.node) ?? '');
  return [...new Set((vertex?.edges ?? []).flatMap((id) => given.network.edges.get(id)?.run ?? []))];
}

/** Is a double check valve drawn where the loop is, on the same pipes? */
function doubleBeside(given: Given, item: Item, runs: readonly string[]): boolean {
  return Object.values(given.plan.items).some(
    (i) =>
      i.kind === 'double-check' &&
      i.id !== item.id &&
      given.network.alive.has('items', i.id) &&
      runsAt(given, i).some((r) => runs.includes(r)),
  );
}

function judge(given: Given, { house, other }: Params): Fault[] {
  if (house.is !== 'known' || other.is !== 'known') return [];
  const loops = Object.values(given.plan.items).filter(
    (i) => i.kind === 'filling-loop' && given.network.alive.has('items', i.id),
  );
  return loops.flatMap((item): Fault[] => {
    const runs = runsAt(given, item);
    if (runs.length === 0) return [];
    const shared = {
      ids: runs,
      words: { house: house.lo.toFixed(0), other: other.lo.toFixed(0) },
      at: atVertex(given.network, given.network.vertexOf.get(item.node)),
    };
    if (item.fields.doubleCheck === false && !doubleBeside(given, item, runs)) return [{ ...shared, outcome: 'stop' }];
    return item.fields.leftOn === true ? [{ ...shared, outcome: 'note', say: 'leftOn' }] : [];
  });
}

function filled(fields: Item['fields'], beside = false) {
  const e = example().point('stop-tap', 's', [0, 0, 300]);
  e.run('m', 'cold', [at('s', 'outlet'), [0, -500, 600], [600, -500, 600], [1200, -500, 600]]);
  setItem(e.plan, 'f', e.nodesOf('m')[3], 'filling-loop', fields);
  if (beside) setItem(e.plan, 'd', e.nodesOf('m')[2], 'double-check');
  return e.plan;
}

export default defineRule<Params>({
  id: 'supply/filling-loop',
  topic: 'water',
  since: '1',
  basis: 'law',
  lifeSafety: false,
  cites: [
    { source: 'filling-loop-guidance', clause: 'house heating circuit with inhibitor', table: 'backflow' },
    { source: 'backflow-note-b22', clause: 'unless a lower risk is shown' },
  ],
  needs: ['what stands at the filling loop'],
  params: () => ({ house: figure('backflow', 'house'), other: figure('backflow', 'other') }),
  judge,
  say: {
    fault: {
      title: 'The filling loop has no double check valve',
      why: 'Water of a heating circuit with inhibitor counts as category {house} in a house, as {other} in another building: without a double check valve it can get back into the main.',
      todo: 'Set a double check valve on its cold side.',
    },
    leftOn: {
      title: 'The filling loop stays connected',
      why: 'Good practice is to take it off once filled: a valve that lets by would fill the system on unseen, and only the double check valve stands between inhibitor and main.',
      todo: 'Take it off, or one end of it; the end between hose and check valve will do.',
    },
    cantTell: {
      title: "Can't tell what stands at the filling loop",
      why: 'Not known: {missing}.',
      todo: 'Look on site.',
    },
    pass: 'A double check valve stands at it.',
  },
  examples: [
    { name: 'as it is bought', given: () => filled({ leftOn: false, doubleCheck: null }), expect: 'pass' },
    { name: 'no double check', given: () => filled({ doubleCheck: false }), expect: 'stop' },
    { name: 'one drawn beside it', given: () => filled({ doubleCheck: false }, true), expect: 'pass' },
    { name: 'left connected', given: () => filled({ leftOn: true }), expect: 'note' },
  ],
});
