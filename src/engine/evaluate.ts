import type { Case, Plan } from '../plan/plan.ts';
import { source } from '../reference/tables.ts';
import { byWorst, type Finding, type Outcome } from '../report/finding.ts';
import type { FlueFace } from '../report/flue-face.ts';
import type { CitedSource, Report, RunFacts } from '../report/report.ts';
import { roundSection, type Section } from '../report/section.ts';
import type { Tally } from '../report/tally.ts';
import type { Cite } from '../report/working.ts';
import { applyRule } from './apply-rule.ts';
import type { Rule } from './define-rule.ts';
import type { SectionKind } from './define-section.ts';
import type { Sum } from './define-sum.ts';
import { reachOf } from './drainage/reach.ts';
import { flueFacesOf } from './flue/flue-faces.ts';
import { type Given, give } from './given.ts';
import { legFacts } from './leg-facts.ts';
import { linesOf } from './materials/lines.ts';
import { allPieces } from './materials/pieces.ts';
import { ruleFacts } from './rule-facts.ts';
import { runFacts } from './run-facts.ts';
import { tallyOf } from './tally/tally-of.ts';

function byId<T extends { readonly id: string }>(files: Record<string, T>): ReadonlyMap<string, T> {
  const found = new Map<string, T>();
  for (const [path, entry] of Object.entries(files).sort(([, a], [, b]) => (a.id < b.id ? -1 : 1))) {
    if (found.has(entry.id)) throw new Error(`${path}: the id "${entry.id}" is taken`);
    found.set(entry.id, entry);
  }
  return found;
}

/** Every rule, sum and section, one file each, sorted by id. */
export const rules: ReadonlyMap<string, Rule> = byId(
  import.meta.glob<Rule>('./rules/*/*.rule.ts', { eager: true, import: 'default' }),
);
export const sums: ReadonlyMap<string, Sum> = byId(
  import.meta.glob<Sum>('./sums/*.sum.ts', { eager: true, import: 'default' }),
);
const sections: readonly SectionKind[] = [
  ...byId(import.meta.glob<SectionKind>('./sections/*.section.ts', { eager: true, import: 'default' })).values(),
].sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1));

export type { Example, Rule, Sentences } from './define-rule.ts';
export { checkInputs, type Sum, workSum } from './define-sum.ts';
export { example } from './example.ts';
export { give } from './given.ts';
export { ruleFacts } from './rule-facts.ts';
export { differences } from './tally/differences.ts';

function citesIn(
  findings: readonly Finding[],
  written: readonly Section[],
  runs: readonly RunFacts[],
  faces: readonly FlueFace[],
): Cite[] {
  const ofRuns = runs.flatMap((r) => r.workings.flatMap((w) => w.steps.flatMap((s) => s.cites)));
  const ofFindings = findings.flatMap((f) => [...f.cites, ...(f.working?.steps.flatMap((s) => s.cites) ?? [])]);
  const ofRows = written.flatMap((s) => s.rows.flatMap((r) => (r.kind === 'sum' || r.kind === 'note' ? r.cites : [])));
  const ofFaces = faces.flatMap((face) => face.distances.flatMap((d) => d.cites));
  return [...ofFindings, ...ofRows, ...ofRuns, ...ofFaces];
}

/** The text of what some cites name, sorted by id. */
export function sourcesOf(cites: readonly Cite[]): CitedSource[] {
  return [...new Set(cites.map((c) => c.source))].sort().map((id) => {
    const s = source(id);
    return { id, title: s.title, sureness: s.read };
  });
}

const count = (findings: readonly Finding[], outcome: Outcome): number =>
  findings.filter((f) => f.outcome === outcome).length;

/** One finding a key: the worst of those that share it, counting the rest as more places of the same. */
function onePerKey(findings: readonly Finding[]): Finding[] {
  const kept = new Map<string, Finding>();
  for (const f of [...findings].sort(byWorst)) {
    const first = kept.get(f.key);
    kept.set(f.key, first ? { ...first, more: first.more + 1 + f.more } : f);
  }
  return [...kept.values()].sort(byWorst);
}

/**
 * Everything the engine says of a plan in one case. Pure: the same plan gives the same bytes. Never throws on a plan
 * that passed the schema; what is missing or illegal becomes a finding or a "can't tell".
 */
export const evaluate = (plan: Plan, chosen: Case, revision = 0): Report => reportOf(give(plan, chosen), revision);

/** The figures of one case for a comparison with others; its report is worked out for them. */
export function tally(plan: Plan, chosen: Case): Tally {
  const given = give(plan, chosen);
  return tallyOf(given, reportOf(given, 0));
}

function reportOf(given: Given, revision: number): Report {
  const { plan, case: chosen } = given;
  const findings = onePerKey([...rules.values()].flatMap((rule) => applyRule(rule, given)));
  const speaking = new Set(findings.map((f) => f.rule));
  const spoken = [...rules.values()].filter((rule) => speaking.has(rule.id));
  const written = sections.flatMap((kind): Section[] => {
    const section = kind.write(given);
    return section ? [roundSection({ id: kind.id, order: kind.order, ...section })] : [];
  });
  const pieces = allPieces(given);
  const runs = runFacts(given);
  const flueFaces = flueFacesOf(given);
  return {
    format: 'kickset-report',
    version: 1,
    plan: plan.id,
    revision,
    case: chosen,
    findings,
    rules: spoken.map((rule) => ruleFacts(rule, given)),
    sections: written,
    pieces,
    lines: linesOf(plan, chosen, pieces),
    legs: legFacts(given),
    runs,
    reach: reachOf(given),
    flueFaces,
    sources: sourcesOf(citesIn(findings, written, runs, flueFaces)),
    counts: {
      stop: count(findings, 'stop'),
      check: count(findings, 'check'),
      note: count(findings, 'note'),
      cantTell: count(findings, 'cantTell'),
    },
  };
}
