import { type Figure, figure } from '../../../reference/figure.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { circuitsOfHeating, type HeatCircuit } from '../../heating-system/circuits.ts';
import { atPoint } from '../../places.ts';
import { midSentence, sayAll } from '../../say-names.ts';
import { primaries, radiators } from './circuit-houses.ts';

type Params = { readonly matters: Figure; readonly most: Figure };

/** Even with all that the boiler gives, its pipes lose little and run quietly: then nobody needs the heat of an end. */
function easy(c: HeatCircuit, { matters, most }: Params): boolean {
  const bound = c.head ?? (matters.is === 'known' ? matters.lo : 0);
  const noise = most.is === 'known' ? most.lo : 0;
  const fresh = c.sections.filter((s) => !s.kept && s.result !== null);
  return (
    c.ways.every((w) => w.pipes.hi !== null && w.pipes.hi <= bound) &&
    fresh.every((s) => s.result?.velocity.hi != null && s.result.velocity.hi <= noise)
  );
}

function judge(given: Given, params: Params): Fault[] {
  const untold = circuitsOfHeating(given)
    .filter((c) => c.isNew && c.loads.some((l) => l.kW === null) && !easy(c, params))
    .flatMap((c) => c.loads.filter((l) => l.kW === null));
  const [first] = untold;
  if (!first) return [];
  const names = [...new Set(untold.map((l) => midSentence(l.name)))];
  return [
    {
      outcome: 'cantTell',
      ids: [...new Set(untold.map((l) => l.point))],
      words: { of: sayAll(names) },
      missing: [`heat of the ${sayAll(names)}`],
      at: atPoint(given.plan, first.point),
      more: untold.length - 1,
    },
  ];
}

const SENTENCES = {
  title: "Can't tell how much water the new heating pipes carry",
  why: 'Not known: {missing}. With all that the boiler gives, some of the pipe would be small for it.',
  todo: 'Set its heat on it: of all radiators behind it together, or of the coil.',
};

export default defineRule<Params>({
  id: 'heating/load-unknown',
  topic: 'heating',
  since: '2',
  basis: 'practice',
  lifeSafety: false,
  cites: [
    { source: 'trade-practice', clause: 'judgement of a drawing', table: 'heating-judgement' },
    { source: 'copper-heating-150', clause: 'text beside table 1', table: 'heating-velocity' },
  ],
  needs: ['heat of every end of the flow'],
  params: () => ({
    matters: figure('heating-judgement', 'matters', 'kPa'),
    most: figure('heating-velocity', 'noise', 'most'),
  }),
  judge,
  say: {
    fault: SENTENCES,
    cantTell: SENTENCES,
    pass: 'The heat of every end is told, or the pipe is large enough for all that the boiler gives.',
  },
  examples: [
    { name: 'heat told', given: () => primaries({}), expect: 'pass' },
    {
      name: 'heat not told, and 22 is large enough for all of the boiler',
      given: () => primaries({ heatingKw: null, boiler: { outputKw: 18 } }),
      expect: 'pass',
    },
    {
      name: 'heat not told on 15',
      given: () => primaries({ heatingKw: null, words: { size: '15x0.7' } }),
      expect: 'cantTell',
    },
    {
      name: 'neither heat nor output told',
      given: () => primaries({ heatingKw: null, boiler: { outputKw: null } }),
      expect: 'cantTell',
    },
    {
      name: 'two of three radiators told',
      given: () =>
        radiators([
          { at: 2000, kW: 1 },
          { at: 4000, kW: null },
          { at: 6000, kW: 2 },
        ]),
      expect: 'cantTell',
    },
  ],
});
