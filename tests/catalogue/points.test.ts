import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import type { PointKind, Size, SymbolPart } from '../../src/catalogue/define-point.ts';
import { assumedHeight, makePoint } from '../../src/catalogue/make-point.ts';
import { partOf, pointKinds } from '../../src/catalogue/point-kinds.ts';
import { registry } from '../../src/catalogue/registry.ts';
import { services } from '../../src/catalogue/services.ts';
import { point as pointSchema } from '../../src/plan/records/pipework.ts';

const kinds = [...pointKinds.values()];
const place = { on: 'storey', x: 1000, y: 2000, angleDeg: 0 } as const;
const make = (kind: string, more = {}) => makePoint(kind, { id: 'p1', storey: 's1', place, option: null, ...more });

/** Corners a part reaches, so that they can be held against the box. */
function reach(part: SymbolPart): [number, number][] {
  if (part.draw === 'rect') {
    return [
      [part.x, part.y],
      [part.x + part.w, part.y + part.h],
    ];
  }
  if (part.draw === 'line') return [[...part.from], [...part.to]];
  if (part.draw === 'letter') return [[part.x, part.y]];
  return [
    [part.x - part.r, part.y - part.r],
    [part.x + part.r, part.y + part.r],
  ];
}

function outside(parts: readonly SymbolPart[], size: Size, up: number): SymbolPart[] {
  const slack = 1e-6;
  return parts.filter((p) =>
    reach(p).some(([x, y]) => Math.abs(x) > size.widthMm / 2 + slack || y < -slack || y > up + slack),
  );
}

const sizesOf = (kind: PointKind): Size[] => [
  kind.size,
  { widthMm: kind.size.widthMm * 1.7, depthMm: kind.size.depthMm * 0.8, heightMm: kind.size.heightMm * 1.2 },
];

describe('point kinds', () => {
  it('has every kind a boiler move needs', () => {
    for (const id of [
      'gas-meter',
      'boiler',
      'hob',
      'cooker',
      'gas-fire',
      'stop-tap',
      'sink-taps',
      'bath-taps',
      'shower-valve',
      'basin-taps',
      'radiator',
      'cylinder',
      'sink-waste',
      'gully',
      'soil-stack',
      'rainwater-pipe',
      'outside-end',
      'consumer-unit',
      'socket',
      'switch',
      'electricity-meter',
      'cable-route',
      'bonding-clamp',
      'flue-terminal',
      'old-tails',
      'join-point',
      'neighbour-window',
    ]) {
      expect(pointKinds.has(id), id).toBe(true);
    }
  });

  it.each(kinds.map((k) => [k.id, k] as const))('%s makes a point that the file format takes', (id, kind) => {
    const point = make(id);
    expect(v.safeParse(pointSchema, point).issues).toBeUndefined();
    expect(point.kindVersion).toBe(kind.version);
    for (const size of sizesOf(kind)) expect(v.is(pointSchema, make(id, { size }))).toBe(true);
  });

  it.each(kinds.map((k) => [k.id, k] as const))('%s has connections of known services, each once', (_id, kind) => {
    for (const size of sizesOf(kind)) {
      const connections = kind.connections(size, kind.defaults);
      for (const c of connections) expect(services.has(c.service), c.service).toBe(true);
      expect(new Set(connections.map((c) => c.id)).size).toBe(connections.length);
      for (const c of connections) {
        expect(Math.abs(c.at.x)).toBeLessThanOrEqual(size.widthMm / 2);
        expect(c.at.y).toBeGreaterThanOrEqual(0);
        expect(c.at.y).toBeLessThanOrEqual(size.depthMm);
        expect(c.at.z).toBeGreaterThanOrEqual(0);
        expect(c.at.z).toBeLessThanOrEqual(size.heightMm);
      }
    }
  });

  it.each(kinds.map((k) => [k.id, k] as const))(
    '%s plays its part in services or connections that exist',
    (_id, kind) => {
      const own = new Set(kind.connections(kind.size, kind.defaults).map((c) => c.id));
      for (const key of Object.keys(kind.role)) expect(own.has(key) || services.has(key), key).toBe(true);
    },
  );

  it.each(kinds.map((k) => [k.id, k] as const))('%s keeps its symbols inside its box, at any size', (_id, kind) => {
    for (const size of sizesOf(kind)) {
      expect(kind.planSymbol(size).length).toBeGreaterThan(0);
      expect(kind.faceSymbol(size).length).toBeGreaterThan(0);
      expect(outside(kind.planSymbol(size), size, size.depthMm)).toEqual([]);
      expect(outside(kind.faceSymbol(size), size, size.heightMm)).toEqual([]);
    }
  });

  it.each(kinds.map((k) => [k.id, k] as const))(
    '%s asks for its fields once, and has defaults only for what it asks',
    (_id, kind) => {
      const keys = kind.fields.map((f) => f.key);
      expect(new Set(keys).size).toBe(keys.length);
      // A field without a default was not told; points made before it was asked for have none either.
      for (const key of Object.keys(kind.defaults)) expect(keys).toContain(key);
      for (const f of kind.fields) if (f.kind === 'choice') expect(f.choices?.length).toBeGreaterThan(1);
      for (const input of kind.gasInputs ?? []) expect(keys).toContain(input);
    },
  );

  it.each(kinds.map((k) => [k.id, k] as const))('%s is described in one sentence', (id, kind) => {
    const said = kind.describe(make(id));
    expect(said).toMatch(/^[A-Z].*\.$/);
    expect(said.slice(0, -1)).not.toMatch(/[.!?]\s/);
    expect(said).toContain(kind.label);
    expect(said).not.toMatch(/undefined|null|\[object|NaN/);
  });

  it('says what was told, with its unit, its range and its own words', () => {
    const fields = { inputKwHeating: { lo: 24, hi: 30 }, inputBasis: 'net', type: 'system' };
    const said = pointKinds.get('boiler')?.describe(make('boiler', { name: 'New boiler', fields }));
    expect(said).toContain('Boiler (New boiler): connections heating flow 22');
    expect(said).toContain('heat input, heating 24 to 30 kW');
    expect(said).toContain('input is net');
    expect(said).not.toContain('hot 15');
  });
});

describe('a boiler', () => {
  it('has its flue at the top, in the middle', () => {
    const boiler = make('boiler');
    const flue = boiler.connections.filter((c) => c.service === 'flue');
    expect(flue).toMatchObject([{ at: { x: 0, z: boiler.size.heightMm }, facing: 'up' }]);
  });

  it('has its seven tails from left to right, and no water tails when it heats none', () => {
    const below = (from: ReturnType<typeof make>) => from.connections.filter((c) => c.service !== 'flue');
    const across = below(make('boiler'));
    expect(across.map((c) => c.service)).toEqual([
      'heatingFlow',
      'hot',
      'gas',
      'cold',
      'heatingReturn',
      'condensate',
      'boilerRelief',
    ]);
    expect(across.map((c) => c.at.x)).toEqual(across.map((c) => c.at.x).sort((a, b) => a - b));
    expect(below(make('boiler', { fields: { type: 'system' } })).map((c) => c.service)).toEqual([
      'heatingFlow',
      'gas',
      'heatingReturn',
      'condensate',
      'boilerRelief',
    ]);
  });
});

describe('the part a connection plays', () => {
  it('goes by the kind and its services', () => {
    expect(partOf(make('gas-meter'), 'outlet')).toBe('source');
    expect(partOf(make('boiler'), 'gas')).toBe('end');
    expect(partOf(make('boiler'), 'heatingFlow')).toBe('source');
    expect(partOf(make('boiler'), 'nothing')).toBeUndefined();
  });

  it('goes by the connection where one service ends and starts again', () => {
    expect(partOf(make('tundish'), 'in')).toBe('end');
    expect(partOf(make('tundish'), 'out')).toBe('source');
  });

  it('goes by what was said of a join', () => {
    expect(partOf(make('join-point'), 'join')).toBeUndefined();
    expect(partOf(make('join-point', { fields: { part: 'source' } }), 'join')).toBe('source');
    expect(make('join-point', { fields: { service: 'hot', size: '15' } }).connections[0]).toMatchObject({
      service: 'hot',
      size: '15',
    });
  });

  it('is nothing for a kind this version does not know', () => {
    expect(partOf({ ...make('boiler'), kind: 'heat-engine' }, 'gas')).toBeUndefined();
  });
});

describe('making a point', () => {
  it('keeps a height that was told', () => {
    const height = { from: 'ceiling', of: 's1', mm: -300 } as const;
    expect(make('boiler', { place: { ...place, height } }).place.height).toEqual(height);
  });

  it('takes an assumed height from its storey’s floor otherwise', () => {
    for (const kind of kinds) {
      const h = assumedHeight(kind, 's1');
      expect(h.from).toBe('floor');
      expect(h.of).toBe('s1');
      if (h.assumed) {
        expect(h.assumed.lo).toBeLessThan(h.assumed.hi);
        expect(h.mm).toBeGreaterThanOrEqual(h.assumed.lo);
        expect(h.mm).toBeLessThanOrEqual(h.assumed.hi);
      }
    }
  });

  it('refuses a kind that is not there', () => {
    expect(() => make('heat-engine')).toThrow('heat-engine');
  });
});

describe('a registry', () => {
  it('sorts by id and refuses an id that is taken', () => {
    expect([...registry({ 'z.ts': { id: 'b' }, 'y.ts': { id: 'a' } }).keys()]).toEqual(['a', 'b']);
    expect(() => registry({ 'z.ts': { id: 'a' }, 'y.ts': { id: 'a' } })).toThrow('"a" is taken');
  });
});
