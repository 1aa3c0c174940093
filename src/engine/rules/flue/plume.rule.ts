import { type Figure, figure } from '../../../reference/figure.ts';
import { sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { terminalDistances } from '../../flue/terminal-distances.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { fronted } from './houses.ts';

type Params = { readonly opening: Figure; readonly neighbour: Figure };

/** The worst of one terminal: nearest, since the plume is one. A kit takes it elsewhere. */
function judge(given: Given): Fault[] {
  return terminalDistances(given).flatMap(({ terminal: t, distances }): Fault[] => {
    if (!t.isNew || t.point.fields.plumeKit === true) return [];
    const near = distances.filter((d) => d.table === 'flue-plume' && d.state === 'note');
    const [worst] = near;
    if (!worst) return [];
    return [
      {
        outcome: 'note',
        ids: [t.point.id, ...worst.ids],
        words: {
          terminal: midSentence(sayPoint(given.plan, t.point.id)),
          what: worst.what,
          found: sayFigures(worst.found),
        },
        found: worst.found,
        wanted: worst.wanted,
        wantedIs: 'atLeast',
        at: atPlace(t.point.storey, t.at),
        more: new Set(near.flatMap((d) => d.ids)).size - 1,
        cites: worst.cites,
      },
    ];
  });
}

const opposite = (y: number, fields = {}) => {
  const { plan } = fronted(fields).point('neighbour-window', 'nw', [3000, y, 1800], { opens: true });
  const place = plan.points.nw?.place;
  if (place?.on === 'storey') place.angleDeg = 180;
  return plan;
};

export default defineRule<Params>({
  id: 'flue/plume',
  topic: 'flue',
  since: '1',
  basis: 'recommendation',
  lifeSafety: false,
  cites: [{ source: 'flue-siting-guides', clause: 'plume of condensing boilers', table: 'flue-plume' }],
  needs: ['what the terminal faces'],
  params: () => ({
    opening: figure('flue-plume', 'plume-opening', 'mm'),
    neighbour: figure('flue-plume', 'plume-neighbour', 'mm'),
  }),
  judge,
  say: {
    fault: {
      title: 'The plume of the {terminal} blows at {what}',
      why: '{found} mm away: a cloud at a window or over a boundary is a nuisance, and neighbours complain.',
      todo: 'Talk to them before, turn the terminal or move it, or fit a plume kit.',
    },
    cantTell: { title: "Can't tell where the plume blows", why: 'Nothing is drawn.', todo: 'Draw what is opposite.' },
    pass: 'Nothing that a plume would trouble is drawn before the terminal.',
  },
  examples: [
    {
      name: "a neighbour's window 2200 opposite",
      given: () => opposite(-2350),
      expect: 'note',
      found: { lo: 2200, hi: 2200, tolerance: 0.1 },
      from: 'its near side 2300 from the wall, less the 100 of the terminal',
    },
    { name: 'the same with a plume kit', given: () => opposite(-2300, { plumeKit: true }), expect: 'pass' },
    { name: 'far off', given: () => opposite(-4000), expect: 'pass' },
  ],
});
