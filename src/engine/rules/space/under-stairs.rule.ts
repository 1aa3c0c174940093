import { pointBox, toLocal } from '../../../geometry/point-box.ts';
import type { Plan } from '../../../plan/plan.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { sayPoint } from '../../say-names.ts';
import { newBoilers, type Sited, standing } from '../../space/sited.ts';
import { add, inRoom } from './houses.ts';

type Params = { readonly storeys: Figure };

/** Stairs whose flight goes over the middle of a case. */
function stairsOver(given: Given, { point, middle }: Sited): Point | undefined {
  return standing(given, 'stairs').find((stairs) => {
    const body = stairs.storey === point.storey ? pointBox(given.plan, stairs) : undefined;
    if (!body) return false;
    const at = toLocal(body.frame, { ...middle, z: 0 });
    return Math.abs(at.x) <= body.local.maxX && at.y >= 0 && at.y <= body.local.maxY;
  });
}

function judge(given: Given, { storeys }: Params): Fault[] {
  const count = Object.keys(given.plan.storeys).length;
  if (storeys.is !== 'known' || count <= storeys.lo) return [];
  return newBoilers(given).flatMap((boiler): Fault[] => {
    const stairs = stairsOver(given, boiler);
    if (!stairs || stairs.fields.lining === true) return [];
    const shared = {
      ids: [boiler.point.id, stairs.id],
      at: atPlace(boiler.point.storey, boiler.body.frame.origin),
      words: { name: sayPoint(given.plan, boiler.point.id) },
      found: exact(count, 'storeys', 0),
      wanted: storeys,
    };
    if (stairs.fields.lining === false) return [{ outcome: 'check', ...shared }];
    return [{ outcome: 'cantTell', ...shared, missing: ['whether the cupboard is lined and its door resists fire'] }];
  });
}

/** Under the stairs of a house of so many storeys. */
function house(storeys: number, lining: boolean | null): Plan {
  const plan = add(inRoom({}), 'stairs', 'stairs', [1500, -500, 0], { lining }, null);
  const ground = plan.storeys.ground;
  for (let n = 1; ground && n < storeys; n++) {
    const id = `up${n}`;
    plan.storeys[id] = { ...structuredClone(ground), id, name: id, floorMm: ground.floorMm + 2650 * n };
  }
  return plan;
}

export default defineRule<Params>({
  id: 'space/under-stairs',
  topic: 'space',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'bs-6798', clause: 'boilers under stairs', table: 'appliance-place' }],
  needs: ['storeys', 'the lining under the stairs'],
  params: () => ({ storeys: figure('appliance-place', 'under stairs', 'storeys') }),
  judge,
  say: {
    fault: {
      title: '{name} stands under the stairs of a tall house, and nothing there holds back fire',
      why: 'The stairs are the way out. In a house of more than two storeys a boiler under them wants half an hour of fire resistance round it.',
      todo: 'Line the cupboard and hang a fire door, or choose another place; its sheet must allow it too.',
    },
    cantTell: {
      title: "{name} stands under the stairs of a tall house: can't tell whether it may",
      why: 'The stairs are the way out. Not known: {missing}.',
      todo: 'Look, and tell it on the stairs.',
    },
    pass: 'It stands under no stairs, or the house is low enough.',
  },
  examples: [
    { name: 'under the stairs of a house of two storeys', given: () => house(2, null), expect: 'pass' },
    { name: 'of three storeys, lined', given: () => house(3, true), expect: 'pass' },
    {
      name: 'of three storeys, bare',
      given: () => house(3, false),
      expect: 'check',
      found: { lo: 3, hi: 3, tolerance: 0 },
      from: 'three storeys drawn',
    },
    { name: 'of three storeys, not told', given: () => house(3, null), expect: 'cantTell' },
  ],
});
