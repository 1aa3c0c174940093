import { itemKinds } from '../../../catalogue/items.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { discharges } from '../../drainage/discharges.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayRun } from '../../say-names.ts';
import { usual } from './houses.ts';

/** In line and harmless: it never shuts the way. */
const OPEN = new Set(['union']);

function judge(given: Given): Fault[] {
  const { valvePipes, tundishPipes, reliefs } = discharges(given);
  const seen = new Set<string>();
  return [...reliefs, ...valvePipes, ...tundishPipes].flatMap((drain) =>
    drain.steps.flatMap((step) =>
      [step.from, step.to].flatMap((vertex): Fault[] => {
        const v = given.network.vertices.get(vertex);
        const id = v?.items.find((i) => !OPEN.has(given.plan.items[i]?.kind ?? '') && !seen.has(i));
        const item = id === undefined ? undefined : given.plan.items[id];
        if (!item || id === undefined) return [];
        seen.add(id);
        return [
          {
            outcome: 'stop',
            ids: [step.edge.run],
            legs: [step.edge.id],
            words: {
              run: sayRun(given.plan, step.edge.run),
              item: midSentence(itemKinds.get(item.kind)?.label ?? 'fitting that shuts'),
            },
            at: atVertex(given.network, vertex),
          },
        ];
      }),
    ),
  );
}

function withItem(kind: string) {
  const plan = usual();
  const node = Object.keys(plan.nodes)[1] ?? '';
  plan.items.i = { id: 'i', node, kind, name: '', along: null, fields: {}, option: 'A', sureness: 'seen' };
  return plan;
}

export default defineRule({
  id: 'relief/valve',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'bs-6798', clause: 'discharge from the safety valve' }],
  needs: ['what stands in the pipe'],
  params: () => ({}),
  judge: (given) => judge(given).map((f) => ({ ...f, unverified: true })),
  say: {
    fault: {
      title: '{run} has a {item} in it',
      why: 'Nothing may ever shut or hinder the way from a safety valve to its end: the vessel bursts when it is needed.',
      todo: 'Take it out.',
    },
    cantTell: {
      title: "Can't tell what stands in {run}",
      why: 'Part of it is not drawn.',
      todo: 'Look along it.',
    },
    pass: 'Nothing in it can shut.',
  },
  examples: [
    { name: 'open all the way', given: () => usual(), expect: 'pass' },
    { name: 'a union in it', given: () => withItem('union'), expect: 'pass' },
    { name: 'a lever valve in it', given: () => withItem('isolation-valve'), expect: 'stop' },
  ],
});
