import type { Point } from '../../../plan/records/pipework.ts';
import { type Figure, figure } from '../../../reference/figure.ts';
import { againstMost, exact, type Quantity, sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { flueLength } from '../../flue/flue-length.ts';
import { flueRoutes, numberOf, sheetOf, undrawn } from '../../flue/flue-routes.ts';
import { terminalsOf } from '../../flue/terminals.ts';
import type { Given } from '../../given.ts';
import { atEdge, atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { house } from './houses.ts';
import { rising } from './routes.ts';

type Params = { readonly short: Figure };
type Known = Pick<Fault, 'ids' | 'legs' | 'at' | 'working'> & {
  readonly straight: Quantity;
  readonly together: Quantity | null;
  readonly appliance: Point | null;
  readonly missing: readonly string[];
};

/** New flues with their lengths: as drawn, else as told on the terminal, whose bends nobody counted. */
function flues(given: Given): Known[] {
  const drawn = flueRoutes(given).flatMap((r): Known[] => {
    if (!r.isNew) return [];
    const working = flueLength(r, sheetOf(r.appliance));
    const legs = r.way.steps.map((s) => s.edge.id);
    const at = atEdge(given.network, legs[0]);
    const shared = { ids: r.way.runs, legs, at, working, appliance: r.appliance, missing: working.missing };
    return [{ ...shared, straight: r.straightM, together: working.result }];
  });
  const told = terminalsOf(given).flatMap((t): Known[] => {
    const metres = numberOf(t.point.fields.lengthM);
    if (!t.isNew || metres === null || !undrawn(given, t.point.id)) return [];
    const straight = exact(metres, 'm', 2);
    const at = atPlace(t.point.storey, t.at);
    const shared = { ids: [t.point.id], legs: [], at, working: null, appliance: t.appliance };
    return [{ ...shared, straight, together: straight, missing: [] }];
  });
  return [...drawn, ...told];
}

function judge(given: Given, { short }: Params): Fault[] {
  return flues(given).flatMap((f): Fault[] => {
    if (short.is !== 'known' || (f.straight.hi ?? Number.POSITIVE_INFINITY) * 1000 <= short.lo) return [];
    const most = sheetOf(f.appliance).maxM;
    const name = f.appliance ? midSentence(sayPoint(given.plan, f.appliance.id)) : 'boiler';
    const shared = { ids: f.ids, legs: f.legs ?? [], at: f.at ?? null, working: f.working ?? null };
    const words = { appliance: name, found: sayFigures(f.together ?? f.straight), most: most?.toFixed(1) ?? '' };
    if (most !== null) {
      const wanted = exact(most, 'm', 2, 'page');
      const found = f.together ?? { ...f.straight, hi: null };
      const verdict = againstMost(found, most);
      if (verdict === 'pass') return [];
      if (verdict !== 'cantTell') {
        return [{ outcome: verdict, ...shared, words, found, wanted, say: verdict === 'check' ? 'unsure' : 'fault' }];
      }
    }
    const missing = most === null ? ['how long its flue may be', ...f.missing] : f.missing;
    return [{ outcome: 'cantTell', ...shared, words, missing: missing.length > 0 ? missing : ['its whole length'] }];
  });
}

const SHEET = { flueMaxM: 6, flueBend90M: 1, flueBend45M: 0.5 };
const told = (lengthM: number | null, flueMaxM: number | null) =>
  house()
    .point('boiler', 'b', [3000, 300, 1300], { flueMaxM })
    .point('flue-terminal', 't', [3000, 0, 2200], { lengthM }).plan;

export default defineRule<Params>({
  id: 'flue/length',
  topic: 'flue',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'trade-practice', clause: 'the sheet of the appliance gives the longest flue' }],
  needs: ['the longest flue and what its bends count as, from the sheet of the appliance'],
  params: () => ({ short: figure('flue-judgement', 'short flue', 'mm') }),
  judge,
  say: {
    fault: {
      title: 'The flue of the {appliance} is too long',
      why: 'It counts as {found} m with its bends, and its sheet allows {most}: the fan cannot push it through.',
      todo: 'Take a shorter way, fewer bends, or the larger size with its own figures.',
    },
    unsure: {
      title: 'The flue of the {appliance} may be too long',
      why: 'It counts as {found} m with its bends, and its sheet allows {most}: a height on it is assumed.',
      todo: 'Measure the heights of its ends.',
    },
    cantTell: {
      title: "Can't tell whether the flue of the {appliance} is too long",
      why: 'Not known: {missing}.',
      todo: 'Take the figures from its sheet.',
    },
    pass: 'Every flue is no longer than the sheet of its appliance allows.',
  },
  examples: [
    {
      name: 'over 4 m and two bends, of 6',
      given: () => rising(220, { boiler: SHEET }).plan,
      expect: 'pass',
    },
    {
      name: 'over 4 m and one bend, of 5',
      given: () => rising(220, { boiler: { ...SHEET, flueMaxM: 5 } }).plan,
      expect: 'stop',
      found: { lo: 5.19, hi: 5.19, tolerance: 0.02 },
      from: '180 up, 4.006 across and 1.0 for the bend, on paper',
    },
    {
      name: 'its end height assumed',
      given: () => {
        const { plan } = rising(220, { boiler: { ...SHEET, flueMaxM: 5.2 } });
        const place = plan.points.b?.place;
        if (place) place.height = { from: 'datum', of: null, mm: 1300, assumed: { lo: 1200, hi: 1300 } };
        return plan;
      },
      expect: 'check',
    },
    { name: 'no sheet', given: () => rising(220).plan, expect: 'cantTell' },
    { name: 'no figure for its bend', given: () => rising(220, { boiler: { flueMaxM: 6 } }).plan, expect: 'cantTell' },
    { name: 'told on the terminal, too long', given: () => told(7, 6), expect: 'stop' },
    { name: 'told on the terminal, short', given: () => told(0.6, null), expect: 'pass' },
  ],
});
