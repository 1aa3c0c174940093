import { type Figure, figure } from '../../../reference/figure.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { overlap } from '../../flue/gaps.ts';
import { bodyOf, terminalsOf } from '../../flue/terminals.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { fronted } from './houses.ts';

type Params = { readonly sides: Figure };

function judge(given: Given, { sides }: Params): Fault[] {
  const ports = Object.values(given.plan.points).filter(
    (p) => p.kind === 'eaves' && p.fields.what === 'carPort' && given.network.alive.has('points', p.id),
  );
  if (ports.length === 0 || sides.is !== 'known') return [];
  return terminalsOf(given).flatMap((t) =>
    ports.flatMap((port): Fault[] => {
      const body = t.isNew && !t.upright ? bodyOf(given, t, port) : undefined;
      if (!body || body.box.minZ < t.body.minZ) return [];
      if (!overlap(t.body.minX, t.body.maxX, body.box.minX, body.box.maxX)) return [];
      const { openSides } = port.fields;
      if (typeof openSides === 'number' && openSides >= sides.lo) return [];
      const known = typeof openSides === 'number';
      return [
        {
          outcome: known ? 'stop' : 'cantTell',
          ids: [t.point.id, port.id],
          words: {
            terminal: midSentence(sayPoint(given.plan, t.point.id)),
            open: known ? String(openSides) : '',
            sides: String(sides.lo),
          },
          at: atPlace(t.point.storey, t.at),
          missing: known ? [] : ['how many sides of it are open'],
        },
      ];
    }),
  );
}

const port = (openSides: number | null) =>
  fronted().point('eaves', 'port', [3000, 0, 2600], { what: 'carPort', openSides }).plan;

export default defineRule<Params>({
  id: 'flue/car-port',
  topic: 'flue',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'register-magazine-2023', clause: 'car ports', table: 'flue-car-port' }],
  needs: ['how many sides of a car port are open'],
  params: () => ({ sides: figure('flue-car-port', 'open sides', 'sides') }),
  judge,
  say: {
    fault: {
      title: 'The {terminal} ends in a car port that is closed in',
      why: 'Open sides: {open}, and {sides} are wanted, so that the air below its roof is changed.',
      todo: 'Open another side, or take the flue out from under the roof.',
    },
    cantTell: {
      title: "Can't tell whether the car port over the {terminal} is open enough",
      why: 'Not known: {missing}.',
      todo: 'Say it on the car port.',
    },
    pass: 'No terminal ends in a car port that is closed in.',
  },
  examples: [
    { name: 'one open side', given: () => port(1), expect: 'stop' },
    { name: 'two open sides', given: () => port(2), expect: 'pass' },
    { name: 'nobody counted', given: () => port(null), expect: 'cantTell' },
  ],
});
