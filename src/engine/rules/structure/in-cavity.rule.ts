import { figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { buildOf, byRunAndWall, findInWall, type InWall } from '../../building/in-wall.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayRun, sayWall } from '../../say-names.ts';

const LAW = [{ source: 'gas-safety-regulations-1998-d', clause: 'regulation 19: pipework in walls and cavities' }];

/** Told of cavity walls only: deeper than the leaf is the cavity, or the other leaf through it. */
const leafOf = (w: InWall): number | null => w.wall.leafMm ?? null;

function judge(given: Given): Fault[] {
  const cavity = findInWall(given).filter((w) => buildOf(w.wall) === 'cavity');
  return byRunAndWall(cavity).flatMap((group): Fault[] => {
    const first = group[0];
    if (!first) return [];
    const leaf = leafOf(first);
    const inside = leaf === null ? group : group.filter((w) => w.depthMm > leaf);
    const worst = inside[0];
    if (!worst) return [];
    const gas = worst.crossing.pipe.edge.service === 'gas';
    const shared = {
      ids: [worst.run, worst.wall.id],
      legs: inside.map((w) => w.crossing.pipe.edge.id),
      words: { run: sayRun(given.plan, worst.run), wall: midSentence(sayWall(given.plan, worst.wall.id)) },
      at: atPlace(worst.crossing.pipe.storey, worst.crossing.at),
      more: inside.length - 1,
      found: exact(worst.lengthMm, 'mm', 0),
      ...(gas ? { cites: LAW } : {}),
    };
    if (leaf === null) return [{ outcome: 'cantTell', ...shared, missing: ['the thickness of its leaf'] }];
    return [{ outcome: 'stop', ...shared, say: gas ? 'gas' : 'fault' }];
  });
}

const house = (service: string, y: number, leafMm?: number) =>
  example()
    .wall('w', [0, 0], [4000, 0], {
      thicknessMm: 300,
      construction: 'cavity',
      ...(leafMm === undefined ? {} : { leafMm, hollow: false }),
    })
    .run('r', service, [
      [1000, y, 300],
      [1000, y, 2000],
    ]).plan;

export default defineRule({
  id: 'structure/in-cavity',
  topic: 'structure',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [
    { source: 'plumbing-textbook-2019', clause: 'page 325 (page view 337): no water fitting in a wall cavity' },
    { source: 'house-building-standards', clause: '8.1.11: pipes in fabric' },
  ],
  needs: ['thickness of the leaf of a cavity wall'],
  params: () => ({ runOn: figure('wall-judgement', 'run on', 'mm') }),
  judge,
  say: {
    fault: {
      title: '{run} runs along in the cavity of the {wall}',
      why: 'Pipe in a cavity cannot be got at, freezes, and carries damp across to the inner leaf.',
      todo: 'Bring it inside the inner leaf; a cavity may only be crossed, in a sleeve.',
    },
    gas: {
      title: '{run} runs along in the cavity of the {wall}',
      why: 'Gas that leaks into a cavity spreads through the whole wall. A gas pipe may only cross it, the shortest way, in a sleeve.',
      todo: 'Bring it out of the cavity.',
    },
    cantTell: {
      title: "{run}: can't tell whether it lies in the cavity of the {wall}",
      why: 'Not told: {missing}.',
      todo: 'Measure at a door or window, and set it on the wall.',
    },
    pass: 'No pipe runs along in a cavity.',
  },
  examples: [
    {
      name: 'a cold pipe up in the cavity',
      given: () => house('cold', 0, 100),
      expect: 'stop',
      found: { lo: 1700, hi: 1700, tolerance: 0.1 },
      from: 'the leg as drawn',
    },
    { name: 'a gas pipe up in the cavity', given: () => house('gas', 0, 100), expect: 'stop' },
    { name: 'let into the inner leaf', given: () => house('cold', 120, 100), expect: 'pass' },
    { name: 'a wall whose leaf nobody measured', given: () => house('cold', 120), expect: 'cantTell' },
  ],
});
