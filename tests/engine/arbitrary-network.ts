import * as fc from 'fast-check';
import { itemKinds } from '../../src/catalogue/items.ts';
import { services } from '../../src/catalogue/services.ts';
import { ExamplePlan } from '../../src/engine/example.ts';
import type { Case, Plan } from '../../src/plan/plan.ts';
import type { HeightRef } from '../../src/plan/records/parts.ts';
import type { Fate } from '../../src/plan/records/statements.ts';

/** Draws one after another from what fast-check gives, so that a failing plan shrinks towards the first of each list. */
class Tape {
  private turn = 0;
  private readonly drawn: readonly number[];
  constructor(drawn: readonly number[]) {
    this.drawn = drawn;
  }
  up(to: number): number {
    return (this.drawn[this.turn++ % this.drawn.length] ?? 0) % Math.max(to, 1);
  }
  of<T>(list: readonly T[]): T {
    return list[this.up(list.length)] as T;
  }
  times<T>(most: number, make: (i: number) => T): T[] {
    return Array.from({ length: this.up(most + 1) }, (_, i) => make(i));
  }
}

const AT = [0, 600, 600.1, 1200, 3000, -40];
const KINDS = ['gas-meter', 'boiler', 'hob', 'gas-meter', 'stop-tap', 'radiator', 'consumer-unit', 'old-tails'];
const SIZES = ['22x0.9', '28x0.9', '15x0.7', null, '20', '21.5', 'of another age'];
const TUBES = ['copper', 'steel', 'plastic', 'plastic-overflow', 'unknown', 'of another age'];
const JOININGS = ['endFeed', 'compression', 'pushFit', null, 'threaded'] as const;

function building(e: ExamplePlan, tape: Tape): void {
  const place = (): [number, number] => [tape.of(AT), tape.of(AT)];
  for (const id of ['w0', 'w1']) e.wall(id, place(), place(), { option: tape.of([null, 'A']) });
  tape.times(2, (i) => e.opening(`o${i}`, tape.of(['w0', 'w1']), tape.of(AT), tape.of([0, 700, 5000])));
  const heights: (HeightRef | null)[] = [
    null,
    { from: 'datum', of: null, mm: 200 },
    { from: 'voidTop', of: 'v0', mm: 0 },
  ];
  const corner = () => ({ x: tape.of(AT), y: tape.of(AT) });
  e.plan.voids.v0 = {
    id: 'v0',
    storey: 'ground',
    name: '',
    kind: tape.of(['floor', 'ceiling', 'boxing', 'slab', 'duct']),
    outline: [corner(), corner(), corner(), corner()],
    holes: [],
    bottom: tape.of(heights),
    top: tape.of(heights),
    joists: null,
    bearings: [],
    ventilated: tape.of([null, true, false]),
    mayBeCut: null,
    option: null,
    sureness: 'seen',
  };
}

function heightOf(tape: Tape, points: readonly string[]): HeightRef {
  const mm = tape.of([300, 301, 2300, 0]);
  return tape.of<HeightRef>([
    { from: 'datum', of: null, mm },
    { from: 'floor', of: 'ground', mm, assumed: { lo: mm - 50, hi: mm + 200 } },
    { from: 'ceiling', of: 'ground', mm: -mm },
    { from: 'voidBottom', of: 'v0', mm },
    { from: 'connection', of: tape.of(points), connection: tape.of(['gas', 'outlet', 'none']), mm },
  ]);
}

function pipes(e: ExamplePlan, tape: Tape, points: readonly string[]): void {
  const { plan } = e;
  const option = () => tape.of(['A', null]);
  const ids: string[] = [];
  const count = 3 + tape.up(5);
  for (let i = 0; i < count; i++) {
    const place = {
      on: 'storey' as const,
      storey: 'ground',
      x: tape.of(AT),
      y: tape.of(AT),
      height: heightOf(tape, points),
    };
    plan.nodes[`n${i}`] = { id: `n${i}`, place, turn: tape.of([null, 'elbow', 'bend']), option: option() };
    ids.push(`n${i}`);
  }
  for (const point of points) {
    for (const { id } of plan.points[point]?.connections ?? []) {
      const node = `${point}/${id}`;
      plan.nodes[node] = { id: node, place: { on: 'connection', point, connection: id }, turn: null, option: option() };
      ids.push(node);
    }
  }
  const runs = ['r0', 'r1', 'r2'];
  for (const id of runs) {
    const service = tape.of(['gas', 'gas', ...services.keys(), 'of another age']);
    const made = { joining: tape.of(JOININGS), turns: tape.of(['elbow', 'bend'] as const), option: option() };
    plan.runs[id] = { id, service, name: tape.of(['', 'The Long One']), ...made };
  }
  const tube = () => ({ kind: tape.of(TUBES), size: tape.of(SIZES) });
  tape.times(14, (i) => {
    const insulation = tape.of([null, { kind: 'foam', thicknessMm: 13 }]);
    const ends = { run: tape.of(runs), a: tape.of(ids), b: tape.of(ids) };
    plan.legs[`l${i}`] = { id: `l${i}`, ...ends, tube: tube(), insulation, option: option(), sureness: 'seen' };
  });
  tape.times(3, (i) => {
    const ends = { run: tape.of(runs), a: tape.of(ids), b: tape.of(ids) };
    const bounds = { lengthMm: { lo: 0, hi: tape.of([0, 4000]) }, bends: { lo: 0, hi: tape.of([0, 5]) } };
    plan.stretches[`s${i}`] = { id: `s${i}`, ...ends, ...bounds, tube: tube(), option: option() };
  });
  tape.times(3, (i) => {
    const what = { node: tape.of(ids), kind: tape.of([...itemKinds.keys(), 'of another age']), along: null };
    plan.items[`i${i}`] = { id: `i${i}`, ...what, name: '', fields: {}, option: option(), sureness: 'seen' };
  });
}

function build(tape: Tape): { plan: Plan; chosen: Case } {
  const e = new ExamplePlan();
  const { plan } = e;
  building(e, tape);
  const points = ['p0', 'p1', 'p2', 'p3'].slice(0, 1 + tape.up(4));
  for (const id of points) {
    const kw = tape.of([null, 30, { lo: 20, hi: 40 }]);
    e.point(tape.of(KINDS), id, [tape.of(AT), tape.of(AT), 500], {
      inputKwHotWater: kw,
      ratedM3PerH: tape.of([null, 6]),
    });
  }
  pipes(e, tape, points);
  plan.basis.gas = tape.of(['natural', 'propane']);
  plan.basis.editions = tape.of<Plan['basis']['editions']>([
    {},
    { 'gas-clearance': 'lost', 'gas-pressure-limit': 'lost' },
  ]);
  const fated = [...points, ...Object.keys(plan.legs), ...Object.keys(plan.runs), ...Object.keys(plan.stretches)];
  const fates: Record<string, Fate> = {};
  tape.times(5, () => {
    fates[tape.of(fated)] = tape.of(['strip', 'cap', 'keep']);
  });
  plan.options.A = { id: 'A', name: 'A', note: '', fates };
  const chosen = tape.of<Case>([
    { option: 'A', when: 'after' },
    { option: 'A', when: 'before' },
    { option: null, when: 'before' },
  ]);
  return { plan, chosen };
}

/** Small jobs as nobody would draw them: rings, two meters, legs of no length, heights and sizes that nobody told. */
export const arbitraryNetwork = fc
  .array(fc.nat(5039), { minLength: 60, maxLength: 300 })
  .map((drawn) => build(new Tape(drawn)));
