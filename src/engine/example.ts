import { makePoint } from '../catalogue/make-point.ts';
import { emptyPlan } from '../plan/empty-plan.ts';
import { countingIds } from '../plan/ids.ts';
import type { Plan } from '../plan/plan.ts';
import type { Opening, Room, Wall } from '../plan/records/building.ts';
import type { HeightRef } from '../plan/records/parts.ts';
import type { Joining, Point, Run, Tube } from '../plan/records/pipework.ts';

type Corner = readonly [x: number, y: number, z: number];
/** A corner, the id of a node that is there already, or a connection of a point. */
export type Stop = Corner | string | { readonly point: string; readonly connection: string };

export interface RunWords {
  readonly size?: string | null;
  readonly kind?: string;
  readonly joining?: Joining;
  readonly turns?: Run['turns'];
  readonly option?: string | null;
  readonly assumed?: boolean;
  readonly insulationMm?: number;
}

const datum = (z: number): HeightRef => ({ from: 'datum', of: null, mm: z });

/**
 * Small plans in a few lines, for the examples that stand inside rules and for tests. Everything is new in option A
 * unless told otherwise; heights are given from the datum.
 */
export class ExamplePlan {
  readonly plan: Plan;
  private readonly ids = countingIds(new Set(), 1);

  constructor(name = 'example') {
    this.plan = emptyPlan({ id: 'plan', name, storey: 'ground', option: 'A', ceilingMm: 2400, buildUpMm: 250 });
  }

  point(kind: string, id: string, at: Corner, fields: Point['fields'] = {}, option: string | null = 'A'): this {
    const made = makePoint(kind, {
      id,
      storey: 'ground',
      place: { on: 'storey', x: at[0], y: at[1], angleDeg: 0, height: datum(at[2]) },
      option,
    });
    this.plan.points[id] = { ...made, fields: { ...made.fields, ...fields } };
    return this;
  }

  wall(id: string, a: readonly [number, number], b: readonly [number, number], change: Partial<Wall> = {}): this {
    this.plan.walls[id] = {
      id,
      storey: 'ground',
      a: { x: a[0], y: a[1] },
      b: { x: b[0], y: b[1] },
      thicknessMm: 100,
      construction: 'block',
      heightMm: null,
      option: null,
      sureness: 'seen',
      ...change,
    };
    return this;
  }

  /** The closed space around a seed, with nothing told of it but what is given. */
  room(id: string, name: string, seed: readonly [number, number], change: Partial<Room> = {}): this {
    this.plan.rooms[id] = {
      id,
      storey: 'ground',
      seed: { x: seed[0], y: seed[1] },
      name,
      use: name.toLowerCase(),
      heated: null,
      floorMm: null,
      ceilingMm: null,
      finishes: '',
      escapeRoute: null,
      ...change,
    };
    return this;
  }

  opening(id: string, wall: string, alongMm: number, widthMm: number, change: Partial<Opening> = {}): this {
    this.plan.openings[id] = {
      id,
      wall,
      kind: 'door',
      name: '',
      from: 'a',
      alongMm,
      widthMm,
      sillMm: 0,
      headMm: 2000,
      opens: true,
      hinge: null,
      swings: null,
      option: null,
      sureness: 'seen',
      ...change,
    };
    return this;
  }

  private node(stop: Stop, option: string | null): string {
    if (typeof stop === 'string') return stop;
    const id = this.ids.next('n');
    const place = Array.isArray(stop)
      ? {
          on: 'storey' as const,
          storey: 'ground',
          x: stop[0] as number,
          y: stop[1] as number,
          height: datum(stop[2] as number),
        }
      : { on: 'connection' as const, ...(stop as { point: string; connection: string }) };
    this.plan.nodes[id] = { id, place, turn: null, option };
    return id;
  }

  /** A run through the stops, in order; its nodes are `id.0`, `id.1`… in `nodesOf`. */
  run(id: string, service: string, stops: readonly Stop[], words: RunWords = {}): this {
    const option = words.option === undefined ? 'A' : words.option;
    const tube: Tube = { kind: words.kind ?? 'copper', size: words.size === undefined ? '22x0.9' : words.size };
    this.plan.runs[id] = {
      id,
      service,
      name: '',
      joining: words.joining ?? 'endFeed',
      turns: words.turns ?? 'elbow',
      option,
    };
    const nodes = stops.map((s) => this.node(s, option));
    nodes.slice(1).forEach((b, i) => {
      const leg = `${id}.${i + 1}`;
      this.plan.legs[leg] = {
        id: leg,
        run: id,
        a: nodes[i] ?? b,
        b,
        tube,
        insulation: words.insulationMm === undefined ? null : { kind: 'foam', thicknessMm: words.insulationMm },
        option,
        sureness: words.assumed ? 'assumed' : 'seen',
      };
    });
    return this;
  }

  /** Ids of the nodes of a run in the order they were given. */
  nodesOf(run: string): string[] {
    const legs = Object.values(this.plan.legs).filter((l) => l.run === run);
    return legs.length === 0 ? [] : [legs[0]?.a ?? '', ...legs.map((l) => l.b)];
  }
}

export const example = (name?: string): ExamplePlan => new ExamplePlan(name);
