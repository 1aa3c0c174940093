import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Plan } from '../../src/plan/plan.ts';
import { danglingReferences, references } from '../../src/plan/references.ts';
import { flatPlan } from '../demo/flat-plan.ts';
import { arbitraryPlan } from '../fixtures/arbitrary-plan.ts';

const fields = (plan: Plan) => [...new Set([...references(plan)].map((r) => `${r.map}.${r.field}`))];

describe('pointers', () => {
  test('of a sound plan all lead somewhere', () => {
    expect(danglingReferences(flatPlan())).toEqual([]);
    fc.assert(
      fc.property(arbitraryPlan, (plan) => {
        expect(danglingReferences(plan)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  test('each is found when what it names is taken away', () => {
    const tried = new Set<string>();
    for (const wanted of references(flatPlan())) {
      const kind = `${wanted.map}.${wanted.field} to ${wanted.toMap}`;
      if (tried.has(kind) || wanted.id === wanted.toId) continue;
      tried.add(kind);
      const plan = flatPlan();
      delete plan[wanted.toMap][wanted.toId];
      const lost = danglingReferences(plan).map((r) => `${r.map} ${r.id} ${r.field}`);
      // A height from a room's ceiling is looked for among the floors once the room is gone: lost all the same.
      expect(lost, kind).toContain(`${wanted.map} ${wanted.id} ${wanted.field}`);
    }
    expect(tried.size).toBeGreaterThan(15);
  });

  test('are told of every kind of record that has one', () => {
    const told = new Set<string>();
    for (const plan of fc.sample(arbitraryPlan, { numRuns: 60, seed: 3 })) for (const f of fields(plan)) told.add(f);
    expect([...told].sort()).toEqual(
      [
        'groups.members',
        'items.along',
        'items.node',
        'items.option',
        'legs.a',
        'legs.b',
        'legs.option',
        'legs.run',
        'listEdits.option',
        'nodes.option',
        'nodes.place.height',
        'nodes.place.point',
        'nodes.place.storey',
        'openings.option',
        'openings.wall',
        'points.option',
        'points.place.height',
        'points.place.wall',
        'points.storey',
        'points.thing',
        'roofs.eaves.height',
        'roofs.storey',
        'rooms.storey',
        'runs.option',
        'stretches.a',
        'stretches.b',
        'stretches.option',
        'stretches.run',
        'voids.bottom',
        'voids.joists.bottom',
        'voids.option',
        'voids.storey',
        'voids.top',
        'walls.option',
        'walls.storey',
      ].sort(),
    );
  });

  test('to a connection its point does not have', () => {
    const plan = flatPlan();
    plan.points['B-NB']!.connections = plan.points['B-NB']!.connections.filter((c) => c.id !== 'gas');
    expect(danglingReferences(plan).map((r) => [r.id, r.field, r.toId])).toEqual([
      ['B-NB.gas', 'place.connection', 'B-NB/gas'],
    ]);
  });

  test('to a name that every object has lead nowhere', () => {
    const plan = flatPlan();
    plan.legs['B-g1-1']!.run = 'toString';
    plan.points['B-NB']!.place.height = { from: 'floor', of: 'constructor', mm: 0 };
    expect(danglingReferences(plan).map((r) => r.toId)).toEqual(['constructor', 'toString']);
  });
});
