import { describe, expect, it } from 'vitest';
import { allowanceClasses } from '../../src/network/allowances.ts';
import type { Fitting } from '../../src/network/fitting.ts';
import { fittingAt } from '../../src/network/fitting-at.ts';
import { buildNetwork } from '../../src/network/graph.ts';
import { traceSystem } from '../../src/network/trace-system.ts';
import type { Tube } from '../../src/plan/records/pipework.ts';
import { COPPER_15, COPPER_22, COPPER_28, gasMeter, gasTail, house, testKinds } from './house.ts';

const after = { option: 'o', when: 'after' } as const;
type Way = readonly [x: number, y: number, z: number, tube?: Tube | undefined];
const WASTE = { kind: 'waste', size: '32' };
const rad = (deg: number) => (deg * Math.PI) / 180;

/** What stands where pipes leave a corner in these ways. */
function corner(ways: readonly Way[], change: (h: ReturnType<typeof house>) => void = () => {}): Fitting {
  const h = house().run('r').node('c', [0, 0, 0]);
  ways.forEach(([x, y, z, tube], i) => {
    h.node(`n${i}`, [x * 1000, y * 1000, z * 1000]).leg(`l${i}`, 'r', 'c', `n${i}`, { tube: tube ?? COPPER_22 });
  });
  change(h);
  return fittingAt(buildNetwork(h.plan, after, testKinds), 'c');
}

describe('two pipes', () => {
  it('are one where they are alike and in line, whichever way they were drawn', () => {
    expect(
      corner([
        [1, 0, 0],
        [-1, 0, 0],
      ]).is,
    ).toBe('plain');
    expect(
      corner(
        [
          [1, 0, 0],
          [-1, 0, 0],
        ],
        (h) => Object.assign(h.plan.legs.l1!, { a: 'n1', b: 'c' }),
      ).is,
    ).toBe('plain');
  });

  it('turn at an elbow of 90 or 45', () => {
    expect(
      corner([
        [1, 0, 0],
        [0, 0, 1],
      ]),
    ).toMatchObject({ is: 'elbow', degrees: 90, tube: COPPER_22, change: null });
    expect(
      corner([
        [1, 0, 0],
        [-1, 1, 0],
      ]),
    ).toMatchObject({ is: 'elbow', degrees: 45 });
  });

  it('take the nearest of 0, 45 and 90 within what the material gives, and no more', () => {
    const turned = (deg: number, tube?: Tube) =>
      corner([
        [-1, 0, 0, tube],
        [Math.cos(rad(deg)), Math.sin(rad(deg)), 0, tube],
      ]);
    expect(turned(92.9)).toMatchObject({ is: 'elbow', degrees: 90 });
    expect(turned(93.1)).toMatchObject({ is: 'unresolved', reason: 'angle' });
    expect(turned(94.9, WASTE)).toMatchObject({ is: 'elbow', degrees: 90 });
    expect(turned(2.9).is).toBe('plain');
    expect(turned(30)).toMatchObject({ is: 'unresolved', reason: 'angle' });
    expect(turned(170)).toMatchObject({ is: 'unresolved', reason: 'angle' });
  });

  it('are bent where the run or the node says so, to any angle up to a right one', () => {
    const bent = (h: ReturnType<typeof house>) => Object.assign(h.plan.runs.r!, { turns: 'bend' });
    expect(
      corner(
        [
          [1, 0, 0],
          [0, 0, 1],
        ],
        bent,
      ),
    ).toMatchObject({ is: 'bend', degrees: 90 });
    expect(
      corner(
        [
          [-1, 0, 0],
          [Math.cos(rad(30)), Math.sin(rad(30)), 0],
        ],
        bent,
      ),
    ).toMatchObject({ is: 'bend', degrees: 45 });
    expect(
      corner(
        [
          [-1, 0, 0],
          [Math.cos(rad(60)), Math.sin(rad(60)), 0],
        ],
        bent,
      ),
    ).toMatchObject({ is: 'bend', degrees: 90 });
    expect(
      corner(
        [
          [-1, 0, 0],
          [Math.cos(rad(120)), Math.sin(rad(120)), 0],
        ],
        bent,
      ),
    ).toMatchObject({ is: 'unresolved' });
    expect(
      corner(
        [
          [1, 0, 0],
          [0, 0, 1],
        ],
        (h) => Object.assign(h.plan.nodes.c!, { turn: 'bend' }),
      ),
    ).toMatchObject({ is: 'bend' });
    const back = (h: ReturnType<typeof house>) => {
      bent(h);
      Object.assign(h.plan.nodes.c!, { turn: 'elbow' });
    };
    expect(
      corner(
        [
          [1, 0, 0],
          [0, 0, 1],
        ],
        back,
      ),
    ).toMatchObject({ is: 'elbow' });
  });

  it('change size at a reducer, kind at a transition, and at a corner have an elbow of the larger size with it', () => {
    const reducer = corner([
      [1, 0, 0, COPPER_15],
      [-1, 0, 0, COPPER_28],
    ]);
    expect(reducer).toMatchObject({ is: 'reducer', change: { from: COPPER_28, to: COPPER_15, edge: 'l0' } });
    expect(
      corner([
        [1, 0, 0],
        [-1, 0, 0, { kind: 'plastic', size: '22' }],
      ]),
    ).toMatchObject({ is: 'transition' });
    expect(
      corner([
        [1, 0, 0],
        [0, 1, 0, COPPER_15],
      ]),
    ).toMatchObject({ is: 'elbow', tube: COPPER_22, change: { is: 'reducer' } });
  });

  it('are coupled where new pipe carries on from old, and never bent in one there', () => {
    const isNew = (h: ReturnType<typeof house>) => {
      h.plan.legs.l1!.option = 'o';
      h.plan.runs.r!.turns = 'bend';
    };
    expect(
      corner(
        [
          [1, 0, 0],
          [-1, 0, 0],
        ],
        isNew,
      ),
    ).toMatchObject({ is: 'coupling', tube: COPPER_22 });
    expect(
      corner(
        [
          [1, 0, 0],
          [0, 1, 0],
        ],
        isNew,
      ),
    ).toMatchObject({ is: 'elbow' });
  });
});

describe('three pipes', () => {
  const tee = (a: Tube, b: Tube, branch: Tube) =>
    corner([
      [1, 0, 0, a],
      [0, 1, 0, branch],
      [-1, 0, 0, b],
    ]);

  it('are a tee told largest end first, branch last, with the words beside the figures', () => {
    expect(tee(COPPER_22, COPPER_22, COPPER_15)).toMatchObject({
      form: 'reducedBranch',
      words: 'tee 22 x 22 x 15, both ends 22, branch 15 (reduced branch)',
      ends: ['l0', 'l2'],
      branch: 'l1',
    });
    expect(tee(COPPER_15, COPPER_22, COPPER_22)).toMatchObject({
      form: 'reducedEnd',
      words: 'tee 22 x 15 x 22, ends 22 and 15, branch 22 (reduced end)',
      ends: ['l2', 'l0'],
    });
    expect(tee(COPPER_15, COPPER_22, COPPER_15)).toMatchObject({
      form: 'endAndBranchReduced',
      words: 'tee 22 x 15 x 15, ends 22 and 15, branch 15 (one end and branch reduced)',
    });
    expect(tee(COPPER_15, COPPER_15, COPPER_22)).toMatchObject({
      form: 'pendant',
      words: 'tee 15 x 15 x 22, both ends 15, branch 22 (pendant)',
    });
    expect(tee(COPPER_22, COPPER_22, COPPER_22)).toMatchObject({ form: 'equal', words: 'tee 22, equal' });
  });

  it('are unresolved, with a reason, where no tee has that shape', () => {
    expect(
      corner([
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ]),
    ).toMatchObject({ is: 'unresolved', reason: 'corner' });
    expect(
      corner([
        [1, 0, 0],
        [-1, 0, 0],
        [1, 1, 0],
      ]),
    ).toMatchObject({ is: 'unresolved', reason: 'angle' });
    expect(
      corner([
        [1, 0, 0],
        [-1, 0, 0],
        [2, 0, 0],
      ]),
    ).toMatchObject({ is: 'unresolved', reason: 'ways' });
    expect(
      corner([
        [1, 0, 0],
        [-1, 1, 0],
        [-1, -1, 0],
      ]),
    ).toMatchObject({ is: 'unresolved', reason: 'ways' });
  });

  it('may branch at 45 in waste pipe', () => {
    expect(
      corner([
        [1, 0, 0, WASTE],
        [-1, 0, 0, WASTE],
        [1, 1, 0, WASTE],
      ]),
    ).toMatchObject({ is: 'tee', degrees: 45 });
  });

  it('with unseen pipe go by the run that carries on, and say that it was not seen', () => {
    const h = house().run('r').run('new');
    h.node('a', [0, 0, 0]).node('c', [1000, 0, 0]).node('b', [2000, 0, 0]).node('d', [1000, 900, 0]);
    h.stretch('s1', 'r', 'a', 'c').stretch('s2', 'r', 'c', 'b').leg('l', 'new', 'c', 'd', { tube: COPPER_15 });
    expect(fittingAt(buildNetwork(h.plan, after, testKinds), 'c')).toMatchObject({
      is: 'tee',
      branch: 'l',
      seen: false,
    });
    h.plan.legs.l!.option = 'o';
    h.plan.legs.l!.run = 'r';
    expect(fittingAt(buildNetwork(h.plan, after, testKinds), 'c')).toMatchObject({
      is: 'tee',
      branch: 'l',
      guessed: false,
    });
    h.plan.stretches.s1!.option = 'o';
    h.plan.stretches.s2!.option = 'o';
    h.plan.stretches.s2!.tube = COPPER_28;
    expect(fittingAt(buildNetwork(h.plan, after, testKinds), 'c')).toMatchObject({ is: 'unresolved', reason: 'place' });
  });

  it('of old unseen pipe are a tee whose way through is not known, and is charged so', () => {
    const h = house().point('m', 'meter', [0, 0, 0], gasMeter).run('r').on('a', 'm', 'outlet');
    h.node('c', [1000, 0, 0]).node('b', [2000, 0, 0]).node('d', [1000, 900, 0]);
    h.stretch('s1', 'r', 'a', 'c').stretch('s2', 'r', 'c', 'b').stretch('s3', 'r', 'c', 'd');
    const net = buildNetwork(h.plan, after, testKinds);
    expect(fittingAt(net, 'c')).toMatchObject({ is: 'tee', guessed: true });
    expect(allowanceClasses(net, traceSystem(net, 'gas')).get('s2')).toMatchObject([
      { class: 'unresolved', vertex: 'c' },
    ]);
  });
});

describe('other places', () => {
  it('a cross and a bunch are unresolved', () => {
    expect(
      corner([
        [1, 0, 0],
        [-1, 0, 0],
        [0, 1, 0],
        [0, -1, 0],
      ]),
    ).toMatchObject({ is: 'unresolved', reason: 'cross' });
    expect(
      corner([
        [1, 0, 0],
        [-1, 0, 0],
        [0, 1, 0],
        [0, -1, 0],
        [0, 0, 1],
      ]),
    ).toMatchObject({ is: 'unresolved', reason: 'ways' });
  });

  it('an end is open, or capped where something was cut off', () => {
    expect(corner([[1, 0, 0]])).toMatchObject({ is: 'open', tube: COPPER_22 });
    const cut = (h: ReturnType<typeof house>) => {
      h.plan.options.o!.fates = { l1: 'cap' };
    };
    expect(
      corner(
        [
          [1, 0, 0],
          [0, 1, 0],
        ],
        cut,
      ),
    ).toMatchObject({ is: 'cap', tube: COPPER_22 });
    expect(corner([])).toMatchObject({ is: 'none' });
  });

  it('a joint turns where the pipe does not leave along the facing', () => {
    const joint = (to: readonly [number, number, number]) => {
      const h = house().point('b', 'boiler', [0, 0, 1000], gasTail).run('r').on('n1', 'b', 'gas').node('n2', to);
      h.leg('l', 'r', 'n1', 'n2');
      return fittingAt(buildNetwork(h.plan, after, testKinds), 'b/gas');
    };
    expect(joint([0, 0, 0])).toMatchObject({ is: 'joint', degrees: 0, point: 'b', connection: 'gas', size: '22' });
    expect(joint([500, 0, 1000])).toMatchObject({ is: 'joint', degrees: 90 });
    expect(joint([0, 0, 2000])).toMatchObject({ is: 'unresolved', reason: 'connection' });
  });

  it('two pipes on one connection are unresolved', () => {
    const h = house().point('b', 'boiler', [0, 0, 1000], gasTail).run('r').on('n1', 'b', 'gas').on('n2', 'b', 'gas');
    h.node('n3', [0, 0, 0]).node('n4', [900, 0, 1000]).leg('l', 'r', 'n1', 'n3').leg('k', 'r', 'n2', 'n4');
    expect(fittingAt(buildNetwork(h.plan, after, testKinds), 'b/gas')).toMatchObject({
      is: 'unresolved',
      reason: 'connection',
    });
  });

  it('throws on a place the network does not have', () => {
    expect(() => fittingAt(buildNetwork(house().plan, after, testKinds), 'x')).toThrow('no vertex');
  });
});
