import { itemKinds } from '../../catalogue/items.ts';
import { type Allowance, allowanceClasses } from '../../network/allowances.ts';
import type { Network } from '../../network/network.ts';
import type { Section, Trace } from '../../network/trace.ts';
import type { Item } from '../../plan/records/pipework.ts';
import { figure } from '../../reference/figure.ts';
import { tube } from '../../reference/tubes.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import { quantityOf } from '../gas/said.ts';
import { total } from '../heating/spread.ts';
import { fittingMetres } from '../hydraulics/fitting-loss.ts';

export interface InLine {
  /** Metres of pipe that all of them lose as much as. */
  readonly metres: Quantity;
  readonly kvs: readonly Quantity[];
  /** "3 elbow, 1 tee-branch": what was counted. */
  readonly say: string;
  readonly assumed: readonly string[];
  /** Head of the pumps that stand in it, kPa; 0 without one, or where it is not told. */
  readonly pumpKPa: number;
}

const SOLDERED = new Set(['endFeed', 'solderRing']);
/** One, and many, of what a section goes through. */
const WORDS: Readonly<Record<string, readonly [string, string]>> = {
  elbow90: ['elbow', 'elbows'],
  elbow45: ['elbow of 45', 'elbows of 45'],
  bend90: ['bend', 'bends'],
  bend45: ['bend of 45', 'bends of 45'],
  'tee-run': ['straight on at a tee', 'straight on at tees'],
  'tee-branch': ['turn at a tee', 'turns at tees'],
};
const sayCount = (word: string, n: number): string =>
  `${n} ${WORDS[word]?.[n === 1 ? 0 : 1] ?? (n === 1 ? word : `${word}s`)}`;

function elbowKey(network: Network, a: Allowance, leg: string): string {
  if (a.class !== 'elbow90') return a.class;
  const joining = network.plan.runs[network.edges.get(leg)?.run ?? '']?.joining ?? null;
  if (joining === null) return a.class;
  return SOLDERED.has(joining) ? 'elbow90-capillary' : joining === 'compression' ? 'elbow90-compression' : a.class;
}

/** Items by the leg they are charged to: the one they are told to stand along, else the first of their place. */
function itemsByLeg(network: Network, trace: Trace): ReadonlyMap<string, readonly Item[]> {
  const found = new Map<string, Item[]>();
  const seen = new Set<string>();
  for (const section of trace.sections) {
    for (const leg of section.legs) {
      const edge = network.edges.get(leg);
      for (const v of edge ? [edge.a, edge.b] : []) {
        if (seen.has(v)) continue;
        seen.add(v);
        const vertex = network.vertices.get(v);
        for (const id of vertex?.items ?? []) {
          const item = network.plan.items[id];
          if (!item) continue;
          const on = item.along !== null && trace.sectionOf.has(item.along) ? item.along : leg;
          found.set(on, [...(found.get(on) ?? []), item]);
        }
      }
    }
  }
  return found;
}

function kvOf(item: Item): { readonly kv: Quantity; readonly assumed: boolean } | null {
  const told = item.fields.kv;
  if (typeof told === 'number' && told > 0) return { kv: exact(told, 'm3/h', 1, 'page'), assumed: false };
  const usual = figure('heating-parts', item.kind, 'kv');
  return usual.is === 'known' ? { kv: quantityOf(usual), assumed: true } : null;
}

/** What the fittings and the parts in line of each section add; `boreMm` is for a section tried in another size. */
export function heatingFittings(network: Network, trace: Trace): (section: Section, boreMm: number) => InLine {
  const charged = allowanceClasses(network, trace);
  const items = itemsByLeg(network, trace);
  return (section, boreMm) => {
    const metres: Quantity[] = [];
    const kvs: Quantity[] = [];
    const assumed: string[] = [];
    const counts = new Map<string, number>();
    let pumpKPa = 0;
    const add = (q: Quantity | null, word: string): void => {
      if (q === null) return;
      metres.push(q);
      counts.set(word, (counts.get(word) ?? 0) + 1);
    };
    const own = tube(section.tube.kind, section.tube.size)?.boreMm ?? null;
    for (const leg of section.legs) {
      for (const a of charged.get(leg) ?? []) {
        const bore = tube(a.tube.kind, a.tube.size)?.boreMm ?? null;
        const at = bore === null || bore === own ? boreMm : bore;
        add(fittingMetres('heating', elbowKey(network, a, leg), at), a.class);
      }
      const bends = network.edges.get(leg)?.bends;
      if (bends && bends.hi > 0) {
        const [least, most] = [fittingMetres('heating', 'bend90', boreMm), fittingMetres('heating', 'elbow90', boreMm)];
        if (least && most)
          metres.push({
            ...most,
            lo: least.lo * bends.lo,
            hi: most.hi === null ? null : most.hi * bends.hi,
            value: null,
          });
      }
      for (const item of items.get(leg) ?? []) {
        if (item.kind === 'pump' && typeof item.fields.headKPa === 'number') pumpKPa += item.fields.headKPa;
        const factor = kvOf(item);
        const kind = itemKinds.get(item.kind);
        const word = kind?.label.toLowerCase() ?? item.kind;
        if (factor) {
          kvs.push(factor.kv);
          if (factor.assumed)
            assumed.push(`${word}: usual flow factor ${factor.kv.lo} to ${factor.kv.hi}, its sheet not told`);
        } else if (kind?.equivalentLength != null) {
          add(fittingMetres('heating', kind.equivalentLength, boreMm), word);
        }
      }
    }
    const say = [...counts].map(([word, n]) => sayCount(word, n)).join(', ');
    return { metres: total(metres, 'm', 2), kvs, say, assumed, pumpKPa };
  };
}
