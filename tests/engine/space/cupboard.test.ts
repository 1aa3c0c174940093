import { describe, expect, it } from 'vitest';
import { cupboard, inRoom } from '../../../src/engine/rules/space/houses.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import type { Opening } from '../../../src/plan/records/building.ts';
import { demoPlan } from '../demo-file.ts';
import { findingsOf, outcomesOf } from './find.ts';

const vent = (id: string, wall: string): Opening => ({
  id,
  wall,
  kind: 'vent',
  name: '',
  from: 'a',
  alongMm: 100,
  widthMm: 200,
  sillMm: 100,
  headMm: 200,
  opens: false,
  hinge: null,
  swings: null,
  option: null,
  sureness: 'seen',
});

function withVents(walls: readonly string[]): Plan {
  const plan = cupboard(true, { cupboardVents: 'wanted' });
  walls.forEach((wall, i) => {
    plan.openings[`v${i}`] = vent(`v${i}`, wall);
  });
  return plan;
}

describe('vents of a cupboard whose boiler wants them', () => {
  it.each([
    [[], ['check']],
    [['n'], ['check']],
    [['n', 'e'], []],
  ])('in walls %j', (walls, outcomes) => {
    expect(outcomesOf('space/cupboard', withVents(walls))).toEqual(outcomes);
  });

  it('tells how many were found', () => {
    expect(findingsOf('space/cupboard', withVents(['n']))[0]?.found).toMatchObject({ value: 1, unit: 'vents' });
  });
});

describe('linen', () => {
  it('is told of where the room is told to air it', () => {
    expect(outcomesOf('space/cupboard', inRoom({}, 1500, 'Cupboard', { use: 'airing' }))).toEqual(['note']);
    expect(outcomesOf('space/cupboard', demoPlan('two-storey'))).toEqual(['note']);
  });

  it('is not taken for granted from a name', () => {
    expect(outcomesOf('space/cupboard', inRoom({}, 1500, 'Airing cupboard', { use: 'cupboard' }))).toEqual([]);
  });
});
