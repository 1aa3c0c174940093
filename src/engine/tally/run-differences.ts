import { services } from '../../catalogue/services.ts';
import { bendCount } from '../../network/bends.ts';
import type { Edge } from '../../network/network.ts';
import { orderedLegs } from '../../network/runs.ts';
import { exact, type Quantity, sayFigures } from '../../report/quantity.ts';
import type { Difference } from '../../report/tally.ts';
import type { Given } from '../given.ts';
import { midSentence, sayPoint, sayService, saySize, sayTubeKind, sentence } from '../say-names.ts';
import type { Pairs } from './pairs.ts';

const edgesOf = (given: Given, run: string): Edge[] =>
  (given.network.edgesOfRun.get(run) ?? []).flatMap((id) => given.network.edges.get(id) ?? []);

/** "Gas", "Heating", "Hot and cold water": what the service of a run is part of. */
export function systemOf(service: string): string {
  const system = services.get(service)?.system ?? service;
  return system === 'hot' || system === 'cold' ? 'Hot and cold water' : sentence(system);
}

/** Its own name, else its service and what it goes to: "Gas to the boiler". */
export function nameOfRun(given: Given, run: string): string {
  const record = given.plan.runs[run];
  if (record && record.name !== '') return sentence(record.name);
  const told = orderedLegs(given.network, run);
  const end = told.end === null ? undefined : given.network.vertices.get(told.end)?.point;
  const service = sayService(record?.service ?? '');
  return end == null ? service : `${service} to the ${midSentence(sayPoint(given.plan, end))}`;
}

const sum = (edges: readonly Edge[]): { lo: number; hi: number | null } => ({
  lo: edges.reduce((total, e) => total + e.lengthMm.lo, 0) / 1000,
  hi: edges.some((e) => e.lengthMm.hi === null)
    ? null
    : edges.reduce((total, e) => total + (e.lengthMm.hi ?? 0), 0) / 1000,
});

function metresSaid(edges: readonly Edge[]): string {
  const { lo, hi } = sum(edges);
  return `${sayFigures({ ...exact(lo, 'm', 1), hi })} m`;
}

/** Shorter than this, a length is printed the same, m. */
const SAME_M = 0.05;

/** What new pipe a piece shares with both cases has the same doubt in both: only what differs is told. */
function lengthSaid(from: readonly Edge[], to: readonly Edge[]): string {
  const [kept, now] = [new Set(to.map((e) => e.id)), new Set(from.map((e) => e.id))];
  const [a, b] = [sum(from.filter((e) => !kept.has(e.id))), sum(to.filter((e) => !now.has(e.id)))];
  if (a.hi === null || b.hi === null) return '';
  const [lo, hi] = [b.lo - a.hi, b.hi - a.lo];
  if (Math.max(Math.abs(lo), Math.abs(hi)) < SAME_M) return '';
  const say = (x: number, y: number): string => {
    const q: Quantity = { ...exact(x, 'm', 1), hi: y };
    return `${sayFigures(q)} m`;
  };
  if (lo >= 0) return `${say(lo, hi)} longer`;
  return hi <= 0 ? `${say(-hi, -lo)} shorter` : `from ${(-lo).toFixed(1)} m shorter to ${hi.toFixed(1)} m longer`;
}

const listed = (words: readonly string[]): string => {
  const all = [...new Set(words)];
  return all.length < 2 ? (all[0] ?? '') : `${all.slice(0, -1).join(', ')} and ${all[all.length - 1]}`;
};
const sizesOf = (edges: readonly Edge[]): string =>
  listed([...edges].sort((a, b) => b.lengthMm.lo - a.lengthMm.lo).map((e) => saySize(e.tube)));
const kindsOf = (edges: readonly Edge[]): string => listed(edges.map((e) => sayTubeKind(e.tube)).sort());
const lagOf = (edges: readonly Edge[]): string =>
  listed(edges.map((e) => (e.insulation ? `${Math.round(e.insulation.thicknessMm)} of lagging` : 'no lagging')).sort());

/** Every piece by its two ends, whichever way it was drawn; without heights where only the way in plan is asked. */
function wayOf(given: Given, edges: readonly Edge[], heights: boolean): string {
  const at = (vertex: string): string => {
    const p = given.network.vertices.get(vertex)?.place?.at;
    return p ? [p.x, p.y, ...(heights ? [p.z] : [])].map((n) => Math.round(n)).join(' ') : 'nowhere';
  };
  return edges
    .map((e) => [at(e.a), at(e.b)].sort().join(' to '))
    .sort()
    .join('; ');
}

function bendsSaid(from: Given, to: Given, run: { from: string; to: string }): string {
  const bends = (given: Given, id: string): number => {
    const b = bendCount(given.network, id);
    return b.total90 + b.total45;
  };
  const more = bends(to, run.to) - bends(from, run.from);
  if (more === 0) return '';
  return `${Math.abs(more)} ${Math.abs(more) === 1 ? 'bend' : 'bends'} ${more > 0 ? 'more' : 'fewer'}`;
}

/** A run of which a part is taken out or added: what stays of it is as it was. Null where it is made otherwise. */
function partSaid(from: readonly Edge[], to: readonly Edge[]): string | null {
  const [old, now] = [new Set(from.map((e) => e.id)), new Set(to.map((e) => e.id))];
  const [gone, fresh] = [from.filter((e) => !now.has(e.id)), to.filter((e) => !old.has(e.id))];
  const say = (edges: readonly Edge[]): string => `${metresSaid(edges)} of ${sizesOf(edges)}`;
  if (gone.length > 0 && fresh.length > 0) return null;
  if (gone.length > 0) return `${say(gone)} taken out`;
  return fresh.length > 0 ? `${say(fresh)} added` : '';
}

function changesOf(from: Given, to: Given, pair: { from: string; to: string }): string[] {
  const [a, b] = [edgesOf(from, pair.from), edgesOf(to, pair.to)];
  const instead = (was: string, is: string): string => (was === is ? '' : `${is} instead of ${was}`);
  const parted = pair.from === pair.to ? partSaid(a, b) : null;
  if (parted !== null) return parted === '' ? [] : [parted];
  const length = lengthSaid(a, b);
  const bends = bendsSaid(from, to, pair);
  const plan = wayOf(from, a, false) !== wayOf(to, b, false);
  const height = !plan && wayOf(from, a, true) !== wayOf(to, b, true);
  const said = [
    instead(sizesOf(a), sizesOf(b)),
    instead(kindsOf(a), kindsOf(b)),
    length,
    bends,
    plan && bends === '' ? 'goes another way' : height ? 'goes at another height' : '',
    instead(lagOf(a), lagOf(b)),
  ];
  return said.filter((s) => s !== '');
}

function whole(given: Given, run: string): string {
  const edges = edgesOf(given, run);
  return `${metresSaid(edges)} of ${sizesOf(edges)}`;
}

/** Runs that are new, gone, or made or led otherwise. */
export function runDifferences(from: Given, to: Given, { pairs, gone, fresh }: Pairs): Difference[] {
  const system = (run: string): string => systemOf(to.plan.runs[run]?.service ?? '');
  return [
    ...pairs.flatMap((pair): Difference[] => {
      const said = changesOf(from, to, pair);
      if (said.length === 0) return [];
      const shared = { before: [pair.from], after: [pair.to], system: system(pair.to) };
      return [{ ...shared, kind: 'changed', name: nameOfRun(to, pair.to), say: said.join(', ') }];
    }),
    ...fresh.map(
      (run): Difference => ({
        system: system(run),
        kind: 'new',
        name: nameOfRun(to, run),
        say: whole(to, run),
        before: [],
        after: [run],
      }),
    ),
    ...gone.map(
      (run): Difference => ({
        system: system(run),
        kind: 'gone',
        name: nameOfRun(from, run),
        say: whole(from, run),
        before: [run],
        after: [],
      }),
    ),
  ];
}
