import { tube } from '../../reference/tubes.ts';
import { roundQuantity, sayFigures } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { sizeUpChanges } from '../gas/best-change.ts';
import type { GasAppliance } from '../gas-system/solve-gas.ts';
import type { Given } from '../given.ts';
import { midSentence } from '../say-names.ts';
import {
  barOf,
  choiceRow,
  partsOf,
  routeChoices,
  sayRoom,
  saySizes,
  sayVerdict,
  sectionChoices,
  stateOf,
} from './gas-rows.ts';

const RANK: Readonly<Record<GasAppliance['verdict'], number>> = { stop: 0, check: 1, cantTell: 2, pass: 3 };

/** The appliance that decides: worst verdict, then greatest drop, then the first by id. */
const byNeed = (a: GasAppliance, b: GasAppliance): number =>
  RANK[a.verdict] - RANK[b.verdict] || (b.drop.drop.hi ?? 0) - (a.drop.drop.hi ?? 0) || (a.point < b.point ? -1 : 1);

function answerRow(given: Given, a: GasAppliance): Row {
  const anyNew = partsOf(given, a).some((p) => !p.ask.kept);
  const meter = midSentence(given.gas.meter?.name ?? 'meter');
  return {
    kind: 'answer',
    label: a.name,
    of: `${meter} to ${midSentence(a.name)}, everything burning`,
    figure: roundQuantity(a.drop.drop),
    bar: barOf(a.drop.drop, a.limit, a.verdict),
    say: sayVerdict(a, anyNew),
    room: sayRoom(given, a),
    ids: [a.point],
  };
}

function helpMost(given: Given, a: GasAppliance): Row[] {
  const parts = partsOf(given, a);
  if (a.limit === null || a.verdict === 'pass') return [];
  const best = sizeUpChanges(
    parts.map((p) => p.ask),
    a.limit.lo,
    false,
  )[0];
  const part = best && parts[best.index];
  if (!best || !part) return [];
  const asked = parts.map((p, i) => (i === best.index ? { ...p.ask, size: best.to } : p.ask));
  const to = tube(part.ask.tubeKind, best.to)?.label ?? best.to;
  return [
    { kind: 'heading', label: 'The one change that helps most', say: '', ids: [] },
    choiceRow(given, a, parts, asked, `${part.ask.label.split(',')[0]} in ${to}`, false),
  ];
}

function sums(given: Given, a: GasAppliance): Row[] {
  return partsOf(given, a).map(({ ask, result, section }) => {
    const length = result.working.steps.find((s) => s.label === 'Effective length');
    const flow = ask.flow.hi === null ? 'a flow that is not known' : `${sayFigures(ask.flow)} m3/h`;
    const whole = `${sayFigures(result.effectiveLength)} m`;
    const added = length?.how === undefined || length.how === whole ? '' : `${length.how} = `;
    return {
      kind: 'sum',
      label: ask.label,
      how: `${added}${whole} at ${flow}`,
      result: roundQuantity(result.drop),
      cites: result.working.steps.flatMap((s) => s.cites),
      ids: section.runs,
    };
  });
}

function eachSection(given: Given, a: GasAppliance): Row[] {
  const parts = partsOf(given, a);
  if (parts.filter((p) => !p.ask.kept).length < 2) return [];
  return parts.flatMap((p, i): Row[] => {
    const rows = sectionChoices(given, a, i);
    return rows.length === 0
      ? []
      : [{ kind: 'heading', label: p.ask.label, say: 'the rest as drawn', ids: p.section.runs }, ...rows];
  });
}

function assumptions(given: Given, all: readonly GasAppliance[]): Row[] {
  const words = new Set(all.flatMap((a) => [...a.load.assumed, ...a.drop.working.assumed]));
  for (const { section, ask } of given.gas.sections.values()) {
    const { lo, hi } = ask.lengthM;
    if (section.kind === 'stretch')
      words.add(`${ask.label}: ${lo.toFixed(1)} to ${hi?.toFixed(1) ?? 'any'} m that nobody can see`);
    else if (hi === null || hi - lo > 0.001)
      words.add(`${ask.label}: heights assumed, so ${lo.toFixed(1)} to ${hi?.toFixed(1) ?? 'any'} m long`);
  }
  return [...words].map((say) => ({ kind: 'assumed', say, ids: [] }));
}

function notes(given: Given, a: GasAppliance): Row[] {
  const parts = partsOf(given, a);
  const named = (label: string, say: string): string => (parts.length > 1 ? `${label}: ${midSentence(say)}` : say);
  const words = new Set(parts.flatMap((p) => p.result.notes.map((say) => named(p.ask.label, say))));
  const rows: Row[] = [...words].map((say) => ({ kind: 'note', say, unverified: false, cites: [] }));
  if (a.limitNote)
    rows.unshift({
      kind: 'note',
      say: `Limit from the appliance's own sheet: ${a.limitNote}.`,
      unverified: false,
      cites: [],
    });
  rows.push({
    kind: 'note',
    say: "Gas work is for registered engineers only. Figures are compared with the limit, not signed off; local rules and the appliance's own instructions go first.",
    unverified: false,
    cites: given.gas.cites,
  });
  return rows;
}

export default defineSection({
  id: 'gas-drop',
  order: 10,
  write(given) {
    const all = [...given.gas.appliances].filter((a) => a.path.length > 0).sort(byNeed);
    const worst = all[0];
    if (!worst) return null;
    const state: State = stateOf(worst.verdict);
    const parts = partsOf(given, worst);
    return {
      title: 'Gas drop',
      answer:
        worst.drop.drop.hi === null
          ? `at least ${worst.drop.drop.lo.toFixed(2)}`
          : `${sayFigures(worst.drop.drop)} mbar`,
      state,
      rows: [
        ...all.map((a) => answerRow(given, a)),
        { kind: 'heading', label: 'Same route, other sizes', say: saySizes(parts.map((p) => p.ask)), ids: [] },
        ...routeChoices(given, worst),
        ...helpMost(given, worst),
        { kind: 'heading', label: 'Working', say: '', ids: [] },
        ...sums(given, worst),
        ...notes(given, worst),
        ...assumptions(given, all),
        ...eachSection(given, worst),
      ],
    };
  },
});
