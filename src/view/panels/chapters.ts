import type { EditorState } from '../../editor/editor-api.ts';
import type { Report } from '../../report/report.ts';
import type { State } from '../../report/section.ts';
import { sayThing } from '../a11y/say-thing.ts';
import { sectionsOf } from './about-chosen.ts';
import { nameOf } from './name-of.ts';

/** One chapter of the panel: a closed row with its answer, or open. What stands in it is chosen by its id. */
export interface Chapter {
  readonly id: string;
  readonly title: string;
  readonly answer: string;
  /** How much it wants to be seen while there is not room for all: the higher the sooner. */
  readonly rank: number;
}

/** What stands in the foot of the panel before the rest is asked for. */
const RANKS = {
  findings: 70,
  stop: 60,
  list: 57,
  chosen: 55,
  check: 50,
  first: 48,
  cantTell: 30,
  job: 20,
  none: 10,
} as const;

/** The report's chapters as a boiler move is thought through: what burns, what it feeds, what leaves it, what is left to do. */
const IN_TURN: readonly string[] = [
  'section:gas-drop',
  'section:gas-volume',
  'section:heating',
  'section:heating-water',
  'section:cold-supply',
  'section:mains',
  'section:hot-wait',
  'section:preheat',
  'section:flue',
  'section:condensate',
  'section:discharge',
  'section:reach',
  'section:working-room',
  'section:safety',
  'section:floors',
  'section:boxing',
  'section:insulation',
  'section:tests',
  'section:electrician',
  'section:runs',
];

/** One that nobody put in its turn stands after those that were, by its own order. */
function turnOf(id: string): number {
  const at = IN_TURN.indexOf(`section:${id}`);
  return at < 0 ? IN_TURN.length : at;
}

/** The first answer of the report is looked at with every stroke, good or bad. */
const rankOf = (state: State, at: number): number =>
  Math.max(
    at === 0 ? RANKS.first : RANKS.none,
    state === 'stop' || state === 'check' || state === 'cantTell' ? RANKS[state] : RANKS.none,
  );

/** Ids of the chapters that are shown first, where there is room for so many: those that want it most, in their own order. */
export function shownFirst(chapters: readonly Chapter[], most: number): ReadonlySet<string> {
  if (chapters.length <= most) return new Set(chapters.map((c) => c.id));
  const ranked = chapters
    .map((c, at) => ({ id: c.id, rank: c.rank, at }))
    .sort((a, b) => b.rank - a.rank || a.at - b.at);
  return new Set(ranked.slice(0, most - 1).map((c) => c.id));
}

const plural = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** "1 stop, 2 check": the worst first, at most two of them, since the row is short. */
export function sayCounts(counts: Report['counts']): string {
  const parts = [
    counts.stop > 0 ? `${counts.stop} stop` : '',
    counts.check > 0 ? `${counts.check} check` : '',
    counts.cantTell > 0 ? `${counts.cantTell} can't tell` : '',
    counts.note > 0 ? plural(counts.note, 'note') : '',
  ].filter((p) => p !== '');
  return parts.length === 0 ? 'none' : parts.slice(0, 2).join(', ');
}

/** "copper 28, 22, 15": the tube on the list, most first. */
export function sayList(report: Report): string {
  const tubes = report.lines.filter((l) => l.family === 'tube');
  if (tubes.length === 0) return report.lines.length === 0 ? 'nothing yet' : plural(report.lines.length, 'line');
  return [...new Set(tubes.map((l) => l.size))].slice(0, 4).join(', ');
}

/** Every chapter there is now, in the order of the rows: what is chosen, the findings and the list, the report's own, then the standing ones. */
export function chaptersOf(state: Pick<EditorState, 'plan' | 'selection'>, report: Report | null): Chapter[] {
  const { plan, selection } = state;
  const found: Chapter[] = [];
  const [first] = selection;
  if (first) {
    const title = selection.length === 1 ? nameOf(plan, first) : plural(selection.length, 'thing');
    const answer = selection.length === 1 ? sayThing(plan, first) : '';
    found.push({ id: 'inspect', title, answer, rank: RANKS.stop });
  }
  found.push({
    id: 'findings',
    title: 'Findings',
    answer: report ? sayCounts(report.counts) : '',
    rank: RANKS.findings,
  });
  found.push({ id: 'list', title: 'List', answer: report ? sayList(report) : '', rank: RANKS.list });
  const sections = [...(report?.sections ?? [])].sort(
    (a, b) => turnOf(a.id) - turnOf(b.id) || a.order - b.order || (a.id < b.id ? -1 : 1),
  );
  const about = sectionsOf(plan, selection);
  for (const [at, s] of sections.entries()) {
    const own = rankOf(s.state, at);
    const rank = about.has(s.id) ? Math.max(RANKS.chosen, own) : own;
    found.push({ id: `section:${s.id}`, title: s.title, answer: s.answer, rank });
  }
  const runs = Object.keys(plan.runs).length;
  found.push({ id: 'runs', title: 'Runs', answer: runs === 0 ? 'none yet' : plural(runs, 'run'), rank: RANKS.none });
  const things = Object.keys(plan.points).length + Object.keys(plan.rooms).length + Object.keys(plan.walls).length;
  found.push({
    id: 'things',
    title: 'Things',
    answer: things === 0 ? 'none yet' : plural(things, 'thing'),
    rank: RANKS.none,
  });
  const traces = Object.values(plan.blobRefs).filter((b) => b.kind === 'trace').length;
  found.push({
    id: 'traces',
    title: 'Pictures under',
    answer: traces === 0 ? 'none' : plural(traces, 'picture'),
    rank: RANKS.none,
  });
  const options = Object.values(plan.options).map((o) => o.name);
  found.push({
    id: 'options',
    title: 'Options',
    answer: options.length === 0 ? 'none yet' : options.sort().join(', '),
    rank: options.length > 1 ? RANKS.job : RANKS.none,
  });
  found.push({
    id: 'job',
    title: 'Job and basis',
    answer: plan.basis.gas === 'propane' ? 'propane' : 'natural gas',
    rank: RANKS.job,
  });
  return found;
}

/** The chapter that stands open: the one asked for while it exists, else what is chosen, else the first answer. */
export function openChapterOf(chapters: readonly Chapter[], asked: string | null): Chapter | undefined {
  const of = (id: string): Chapter | undefined => chapters.find((c) => c.id === id);
  return (
    (asked === null ? undefined : of(asked)) ??
    of('inspect') ??
    chapters.find((c) => c.id.startsWith('section:')) ??
    of('things')
  );
}
