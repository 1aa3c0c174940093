import { between, type Quantity } from '../../report/quantity.ts';
import type { Report } from '../../report/report.ts';
import type { Row, Section, State } from '../../report/section.ts';
import type { TallyFigure } from '../../report/tally.ts';
import { condensateDrains } from '../drainage/condensate-drains.ts';
import { isNew } from '../drainage/drains.ts';
import type { Given } from '../given.ts';
import { midSentence, saySize } from '../say-names.ts';
import { conditionOf } from '../sections/condensate-rows.ts';
import { count, figureOf } from './figure-of.ts';

const GROUP = 'Answers';

type Answer = Extract<Row, { kind: 'answer' }>;
const answersOf = (section: Section | undefined): Answer[] =>
  (section?.rows ?? []).flatMap((r) => (r.kind === 'answer' ? [r] : []));
const sectionOf = (report: Report, id: string): Section | undefined => report.sections.find((s) => s.id === id);

function gasRow(id: string, label: string, order: number, a: Answer): TallyFigure {
  const unknown = a.bar.state === 'cantTell';
  return figureOf({
    id,
    group: GROUP,
    label,
    order,
    figure: a.figure,
    say: unknown ? a.say : `${midSentence(a.label)}: ${a.say}`,
    state: a.bar.state,
    chapter: 'section:gas-drop',
    ids: a.ids,
  });
}

/** The section has its worst appliance first. */
function gasRows(given: Given, report: Report): TallyFigure[] {
  const all = answersOf(sectionOf(report, 'gas-drop'));
  const boiler = all.find((a) => a.ids.some((id) => given.plan.points[id]?.kind === 'boiler'));
  const worst = all[0];
  return [
    ...(boiler ? [gasRow('gas/boiler', 'Gas drop at the boiler', 0, boiler)] : []),
    ...(worst ? [gasRow('gas/worst', 'Gas drop, worst appliance', 1, worst)] : []),
  ];
}

interface Wait {
  readonly label: string;
  readonly figure: Quantity | null;
  readonly say: string;
  readonly state: State;
  readonly ids: readonly string[];
}

function waitsOf(section: Section): Wait[] {
  return section.rows.flatMap((r): Wait[] => {
    if (r.kind === 'answer') return [{ ...r, state: r.bar.state }];
    // Tails tell litres, not seconds: what is behind them nobody saw.
    if (r.kind !== 'fact' || r.figure?.unit === 'litres' || r.ids.length === 0) return [];
    const say = r.say.split(';')[0] ?? '';
    return [{ ...r, say: r.figure ? say : "can't tell", state: r.figure ? 'none' : 'cantTell' }];
  });
}

/** The worst tap first, then every tap by its name. */
function waitRows(report: Report): TallyFigure[] {
  const section = sectionOf(report, 'hot-wait');
  const [worst, ...others] = section ? waitsOf(section) : [];
  if (!worst) return [];
  const row = (id: string, label: string, order: number, w: Wait, say: string): TallyFigure =>
    figureOf({
      id,
      group: GROUP,
      label,
      order,
      figure: w.figure,
      say,
      state: w.state,
      chapter: 'section:hot-wait',
      ids: w.ids,
    });
  return [
    row('wait', 'Longest wait for hot water', 10, worst, `${midSentence(worst.label)}: ${worst.say}`),
    ...[worst, ...others].map((w) => row(`wait/${w.label}`, `Wait, ${midSentence(w.label)}`, 11, w, w.say)),
  ];
}

/** The longest new condensate pipe: how far, by itself or pumped, and in what size. */
function condensateRows(given: Given): TallyFigure[] {
  if (given.case.when === 'before') return [];
  const drains = condensateDrains(given)
    .filter(isNew)
    .map((d) => ({
      drain: d,
      lo: d.steps.reduce((sum, s) => sum + s.edge.lengthMm.lo, 0),
      hi: d.steps.reduce<number | null>(
        (sum, s) => (sum === null || s.edge.lengthMm.hi === null ? null : sum + s.edge.lengthMm.hi),
        0,
      ),
    }))
    .sort((a, b) => b.lo - a.lo || (a.drain.key < b.drain.key ? -1 : 1));
  const first = drains[0];
  const shared = { id: 'condensate', group: GROUP, label: 'Condensate way', order: 20 };
  if (!first) return [figureOf({ ...shared, say: 'none drawn' })];
  const { drain, lo, hi } = first;
  const sizes = [...new Set(drain.steps.map((s) => saySize(s.edge.tube)))].join(', ');
  return [
    figureOf({
      ...shared,
      figure: between(lo / 1000, hi === null ? null : hi / 1000, 'm', 1),
      say: `${drain.pumped ? 'pumped' : 'by gravity'}, ${sizes}`,
      state: conditionOf(given, drain).state,
      chapter: 'section:condensate',
      ids: drain.runs,
    }),
  ];
}

const COUNTED = [
  ['stop', 'Stops'],
  ['check', 'Checks'],
  ['cantTell', "Can't tell"],
  ['note', 'Notes'],
] as const;

function findingRows(report: Report): TallyFigure[] {
  return COUNTED.map(([outcome, label], order) =>
    figureOf({
      id: `findings/${outcome}`,
      group: 'Findings',
      label,
      order,
      figure: count(report.counts[outcome]),
      less: outcome === 'note' ? null : true,
      chapter: 'findings',
    }),
  );
}

/** What the report answers: drop of gas, waits, the way of the condensate, and how many findings there are. */
export function answerFigures(given: Given, report: Report): TallyFigure[] {
  return [...gasRows(given, report), ...waitRows(report), ...condensateRows(given), ...findingRows(report)];
}
