import { type Figure, figure } from '../../../reference/figure.ts';
import { sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { byState, type Judged } from '../../flue/judge-distance.ts';
import { type TerminalDistances, terminalDistances } from '../../flue/terminal-distances.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { besideWindow, fronted, house } from './houses.ts';

type Params = { readonly opening: Figure; readonly frame: Figure };

/** Which of the sentences tells why a row is there. */
const WHY: Readonly<Record<string, string>> = {
  'below-opening': 'fault',
  'above-opening': 'fault',
  'beside-opening': 'fault',
  'car-port-opening': 'fault',
  'roof-opening': 'fault',
  frame: 'fault',
  'above-ground': 'below',
  'above-roof': 'below',
  'upright-terminal': 'terminals',
  'beside-terminal': 'terminals',
  'facing-terminal': 'terminals',
  'roof-terminal': 'terminals',
  'facing-surface': 'facing',
  'facing-boundary': 'facing',
  'beside-boundary': 'facing',
  'roof-wall': 'facing',
};

function sayOf(d: Judged): string {
  if (d.state === 'cantTell') return 'cantTell';
  return d.state === 'check' ? 'unsure' : (WHY[d.row] ?? 'edge');
}

/** The worst of each row, since what is done about it is done once. */
function worstOfRows(of: TerminalDistances): { worst: Judged; more: number }[] {
  const rows = new Map<string, Judged[]>();
  for (const d of of.distances) {
    if (d.table === 'flue-plume' || !['stop', 'check', 'cantTell'].includes(d.state)) continue;
    rows.set(d.row, [...(rows.get(d.row) ?? []), d]);
  }
  return [...rows.values()].flatMap((all) => {
    const [worst] = [...all].sort(byState);
    return worst ? [{ worst, more: all.length - 1 }] : [];
  });
}

function judge(given: Given): Fault[] {
  return terminalDistances(given).flatMap((of): Fault[] => {
    const { terminal: t } = of;
    const name = midSentence(sayPoint(given.plan, t.point.id));
    const at = atPlace(t.point.storey, t.at);
    const found = worstOfRows(of).map(({ worst: d, more }): Fault => {
      const outcome = d.state === 'stop' || d.state === 'check' ? d.state : 'cantTell';
      return {
        outcome,
        say: sayOf(d),
        ids: [t.point.id, ...d.ids],
        words: { terminal: name, label: d.label, found: sayFigures(d.found), what: d.what },
        found: d.found,
        wanted: outcome === 'cantTell' ? null : d.wanted,
        wantedIs: 'atLeast',
        limit: { id: `flue-${d.row}`, scope: t.appliance?.id ?? t.point.id },
        at,
        more,
        missing: outcome === 'cantTell' ? [d.missing ?? 'the figure of the table'] : [],
        cites: d.cites,
      };
    });
    if (!t.isNew || !t.upright || of.above) return found;
    const missing = ['the roof it goes through'];
    const words = { terminal: name, label: 'above the roof', what: 'the roof' };
    return [...found, { outcome: 'cantTell', ids: [t.point.id], words, at, missing }];
  });
}

function assumedHeight() {
  const plan = fronted({}, 2200).point('neighbour-window', 'nw', [3000, 0, 2700], { opens: true }).plan;
  const place = plan.points.t?.place;
  if (place) place.height = { from: 'datum', of: null, mm: 2200, assumed: { lo: 2000, hi: 2400 } };
  return plan;
}

const upright = (roof: boolean) => {
  const { plan } = house().point('flue-terminal', 't', [3000, 2000, 3300], { way: 'vertical' });
  const height = { from: 'datum' as const, of: null, mm: 3100 };
  const outline = [
    { x: 0, y: 0 },
    { x: 6000, y: 0 },
    { x: 6000, y: 4000 },
    { x: 0, y: 4000 },
  ];
  if (roof) {
    plan.roofs.r = {
      id: 'r',
      storey: 'ground',
      outline,
      eaves: { a: { x: 0, y: 0 }, b: { x: 6000, y: 0 }, height },
      pitchDeg: 0,
      rafters: null,
      sureness: 'seen',
    };
  }
  return plan;
};

export default defineRule<Params>({
  id: 'flue/distance',
  topic: 'flue',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [
    { source: 'approved-document-j-distances', clause: 'fanned draught', table: 'flue-distances' },
    { source: 'house-building-flues', clause: '6.8.12', table: 'flue-distances' },
  ],
  needs: ['which windows open', 'what is round the terminal'],
  params: () => ({
    opening: figure('flue-distances', 'beside-opening', 'mm'),
    frame: figure('flue-distances', 'frame', 'mm'),
  }),
  judge,
  say: {
    fault: {
      title: 'The {terminal} is too near {what}',
      why: '{found} mm {label}: what leaves the flue can come back in through it.',
      todo: 'Move the terminal, or look whether the sheet of the appliance is proven for less.',
    },
    edge: {
      title: 'The {terminal} is too near {what}',
      why: '{found} mm {label}: what leaves the flue is turned back there, and warms and wets what it meets.',
      todo: 'Move the terminal, or look whether the sheet of the appliance is proven for less.',
    },
    facing: {
      title: 'The {terminal} has too little room before {what}',
      why: '{found} mm {label}: what leaves the flue is thrown back and drawn in again.',
      todo: 'Move the terminal, or look whether the sheet of the appliance is proven for less.',
    },
    terminals: {
      title: 'The {terminal} is too near {what}',
      why: '{found} mm {label}: one draws in what the other lets out.',
      todo: 'Move one of them, or look whether both sheets are proven for less.',
    },
    below: {
      title: 'The {terminal} lies too low over {what}',
      why: '{found} mm {label}: snow, leaves and people get at it, and what leaves it is held down.',
      todo: 'Bring the terminal higher.',
    },
    unsure: {
      title: 'The {terminal} may be too near {what}',
      why: '{found} mm {label}: a height is assumed, or the distance is measured straight through a corner.',
      todo: 'Measure it there.',
    },
    cantTell: {
      title: "Can't tell whether the {terminal} may be so near {what}",
      why: 'Not known: {missing}.',
      todo: 'Look at it, and say so on the drawing.',
    },
    pass: 'Every distance that is drawn is the one that is wanted, or more.',
  },
  examples: [
    {
      name: 'a window that opens 200 beside it',
      given: () => besideWindow(200).plan,
      expect: 'stop',
      found: { lo: 200, hi: 200, tolerance: 0.1 },
      from: 'as drawn, edge to edge',
    },
    { name: 'a window that opens 300 beside it', given: () => besideWindow(300).plan, expect: 'pass' },
    { name: 'the same terminal was there before', given: () => besideWindow(200, true, null).plan, expect: 'pass' },
    { name: 'a fixed window 200 beside it', given: () => besideWindow(200, false).plan, expect: 'pass' },
    { name: 'a fixed window 100 beside it', given: () => besideWindow(100, false).plan, expect: 'stop' },
    {
      name: 'a window of which nobody said that it opens',
      given: () => besideWindow(200, null).plan,
      expect: 'cantTell',
    },
    {
      name: 'a gutter 50 over it',
      given: () => fronted().point('gutter', 'gu', [3000, 0, 2350]).plan,
      expect: 'stop',
      found: { lo: 50, hi: 50, tolerance: 0.1 },
      from: '2350 less 2300 as drawn',
    },
    {
      name: 'a wall 500 before it',
      given: () => fronted().wall('garden', [0, -650], [6000, -650]).plan,
      expect: 'stop',
      found: { lo: 500, hi: 500, tolerance: 0.1 },
      from: '600 from the wall to the near face, less the 100 of the terminal',
    },
    {
      name: 'another terminal 1000 over it',
      given: () => fronted().point('flue-terminal', 'u', [3000, 0, 3300], {}, null).plan,
      expect: 'stop',
      found: { lo: 1000, hi: 1000, tolerance: 0.1 },
      from: '3300 less 2300 as drawn',
    },
    { name: '200 above the ground', given: () => fronted({}, 200).plan, expect: 'stop' },
    { name: 'an assumed height decides', given: assumedHeight, expect: 'check' },
    { name: 'through a roof, 200 above it', given: () => upright(true), expect: 'stop' },
    { name: 'through a roof that is not drawn', given: () => upright(false), expect: 'cantTell' },
  ],
});
