import { describe, expect, test } from 'vitest';
import { genericThings } from '../../src/catalogue/generic-things.ts';
import { pointKinds } from '../../src/catalogue/point-kinds.ts';
import { partsOf, sheetChanges, thingFrom } from '../../src/catalogue/thing-parts.ts';
import { applianceLoad } from '../../src/engine/gas-system/appliance-load.ts';
import type { Thing } from '../../src/plan/records/statements.ts';
import { tables } from '../../src/reference/tables.ts';
import { editorOf } from './hand.ts';

const place = { on: 'storey', x: 1000, y: 1000, angleDeg: 0 } as const;
const generic = (id: string): Thing => {
  const found = genericThings().find((t) => t.id === `generic-${id}`);
  if (!found) throw new Error(id);
  return found;
};

/** A boiler of somebody's own: no hot side at its usual place, gas furthest left. */
function mine(): Thing {
  const { id: _, ...rest } = generic('combi30');
  const connections = (rest.connections ?? []).map((c) =>
    c.id === 'gas' ? { ...c, size: '15', at: { ...c.at, x: -180 } } : c,
  );
  return {
    ...rest,
    id: 'mine',
    name: 'Loft boiler',
    fields: {
      type: 'combi',
      inputKwHeating: 25.8,
      inputKwHotWater: 31.2,
      inputBasis: 'gross',
      leastInletMbar: 19,
      liftKg: 33,
    },
    size: { widthMm: 390, depthMm: 270, heightMm: 600 },
    connections,
  };
}

const placed = (thing: Thing) => {
  const editor = editorOf();
  editor.setCase({ option: 'A', when: 'after' });
  const outcome = editor.run('point.add', { kind: thing.kind, storey: 'ground', place, carried: thing });
  if (!outcome.ok) throw new Error(outcome.why);
  const id = outcome.made[0] ?? '';
  const point = () => {
    const found = editor.store.getState().plan.points[id];
    if (!found) throw new Error(id);
    return found;
  };
  return { editor, id, point };
};

describe('things of a class', () => {
  test('every row of the table is one, of a kind that is there', () => {
    const rows = tables().find((t) => t.id === 'generic-things')?.rows ?? [];
    expect(rows.length).toBeGreaterThan(10);
    expect(genericThings().map((t) => t.id)).toEqual(rows.map((r) => `generic-${r.key}`));
    for (const t of genericThings()) {
      expect(pointKinds.has(t.kind), t.kind).toBe(true);
      expect(t.name).toMatch(/, assumed$/);
      const asked = pointKinds.get(t.kind)?.fields.map((f) => f.key);
      for (const key of Object.keys(partsOf(t).fields)) expect(asked, t.id).toContain(key);
    }
  });

  test.each(
    genericThings()
      .filter((t) => pointKinds.get(t.kind)?.role.gas === 'end')
      .map((t) => [t.id, t] as const),
  )('%s brings a load the gas side can reckon with, as a range or a class', (_id, thing) => {
    const { point } = placed(thing);
    const { working } = applianceLoad(point(), 'boiler', 'natural');
    expect(working.missing).toEqual([]);
    expect(working.result?.lo).toBeGreaterThan(0);
    expect(['practice', 'derived', 'quotation']).toContain(working.result?.sureness);
    expect(point().sureness).toBe('assumed');
  });
});

describe('a thing of one’s own', () => {
  test('places a point with its size, tails and figures, and the plan carries it', () => {
    const { editor, point } = placed(mine());
    expect(point()).toMatchObject({ name: 'Loft boiler', thing: 'mine', sureness: 'seen', size: { widthMm: 390 } });
    expect(point().connections.find((c) => c.id === 'gas')).toMatchObject({ size: '15', at: { x: -180 } });
    expect(point().fields.leastInletMbar).toBe(19);
    expect(editor.store.getState().plan.things.mine).toEqual(mine());
    expect(sheetChanges(point(), mine())).toEqual([]);
    expect(editor.undo().ok).toBe(true);
    expect(editor.store.getState().plan.things).toEqual({});
  });

  test('changed later, says what would change and changes nothing by itself', () => {
    const { editor, id, point } = placed(mine());
    const later = { ...mine(), fields: { ...mine().fields, inputKwHotWater: 33, liftKg: null } };
    editor.run('thing.set', { thing: 'mine', ...later, id: undefined });
    expect(point().fields.inputKwHotWater).toBe(31.2);
    const changes = sheetChanges(point(), later);
    expect(changes).toEqual([
      { label: 'Heat input, hot water', now: '31.2 kW', sheet: '33 kW' },
      { label: 'Weight to lift', now: '33 kg', sheet: 'not told' },
    ]);
    expect(editor.run('point.sheet', { point: id, thing: later }).ok).toBe(true);
    expect(sheetChanges(point(), later)).toEqual([]);
    expect(editor.undo().ok).toBe(true);
    expect(point().fields.inputKwHotWater).toBe(31.2);
  });

  test('that lacks a tail a pipe meets is refused in words', () => {
    const { editor, id } = placed(mine());
    const path = [
      { at: 'connection', point: id, connection: 'hot' },
      { at: 'free', storey: 'ground', x: 4000, y: 1000, height: { from: 'floor', of: 'ground', mm: 100 } },
    ];
    const tube = { kind: 'copper', size: '15x0.7' };
    expect(editor.run('run.start', { service: 'hot', joining: null, turns: 'elbow', tube, path }).ok).toBe(true);
    const without = { ...mine(), connections: (mine().connections ?? []).filter((c) => c.id !== 'hot') };
    const outcome = editor.run('point.sheet', { point: id, thing: without });
    expect(outcome).toMatchObject({ ok: false });
    expect(outcome.ok ? '' : outcome.why).toBe(
      'A pipe meets the hot tail, which Loft boiler does not have. Part it first.',
    );
  });

  test('of another kind is refused', () => {
    const { editor, id } = placed(mine());
    const outcome = editor.run('point.sheet', { point: id, thing: generic('hob60') });
    expect(outcome.ok ? '' : outcome.why).toBe('The sheet is of a hob, and this is a boiler.');
  });

  test('is kept from a point, and reads back the same', () => {
    const { editor, id, point } = placed(generic('combi24'));
    editor.run('point.set', { point: id, change: {}, fields: { inputKwHeating: 25, rangeRatedKw: 12 } });
    const outcome = editor.run('thing.keep', { point: id, name: ' Back boiler ' });
    const made = outcome.ok ? (outcome.made[0] ?? '') : '';
    const thing = editor.store.getState().plan.things[made];
    expect(thing).toMatchObject({ name: 'Back boiler', fields: { inputKwHeating: 25, sheetRead: false } });
    expect(point().thing).toBe(made);
    // How far somebody turned this one down is no part of its sheet.
    expect(thing && 'rangeRatedKw' in thing.fields).toBe(false);
    expect(thing && sheetChanges(point(), thing)).toEqual([]);
    expect(thingFrom(point(), made, 'Back boiler')).toEqual(thing);
    editor.run('thing.delete', { thing: made });
    expect(point().thing).toBeNull();
  });
});
