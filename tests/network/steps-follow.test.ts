import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { besideLine } from '../../src/geometry/beside-line.ts';
import { roomFaces } from '../../src/geometry/rooms.ts';
import { segmentDistance } from '../../src/geometry/segments.ts';
import { type Followed, followed } from '../../src/network/steps/follow.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Xy, Xyz } from '../../src/plan/records/parts.ts';
import { house } from './house.ts';

/** An L-shaped room with walls of 100 on its outside, its inner faces 50 in from these corners. */
function room(): Plan {
  const { plan } = house();
  const xy = [
    [0, 0],
    [4000, 0],
    [4000, 2000],
    [2000, 2000],
    [2000, 4000],
    [0, 4000],
  ] as const;
  xy.forEach(([x, y], i) => {
    const [x2, y2] = xy[(i + 1) % xy.length]!;
    const id = `w${i}`;
    plan.walls[id] = {
      id,
      storey: 's',
      a: { x, y },
      b: { x: x2, y: y2 },
      thicknessMm: 100,
      construction: 'block',
      heightMm: null,
      option: null,
      sureness: 'seen',
    } as unknown as Plan['walls'][string];
  });
  return plan;
}

const line = (found: Followed): string[] => {
  if (!found.ok) throw new Error(found.why);
  return found.pts.map((p) => `${Math.round(p.x)},${Math.round(p.y)},${Math.round(p.z)}`);
};
const ask = (from: Xyz, to: Xy, own: string | null = null) => ({ storey: 's', from, to, own });

describe('a line beside another', () => {
  it('has the same corners, inside and outside, and drops a side that is swallowed', () => {
    const ell = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 100 },
    ];
    expect(besideLine(ell, 10, false)).toEqual([
      { x: 0, y: 10 },
      { x: 90, y: 10 },
      { x: 90, y: 100 },
    ]);
    expect(besideLine(ell, -10, false)).toEqual([
      { x: 0, y: -10 },
      { x: 110, y: -10 },
      { x: 110, y: 100 },
    ]);
  });
});

describe('along a wall', () => {
  it('goes round inside and outside corners at its distance, the shorter way', () => {
    const found = followed(room(), { what: 'wall', mm: 50 }, ask({ x: 3900, y: 1500, z: 150 }, { x: 1800, y: 3500 }));
    expect(line(found)).toEqual(['3900,1900,150', '1900,1900,150', '1900,3500,150'].map((s) => s));
  });

  it('comes to the wall first where the pipe stands away from it', () => {
    const found = followed(room(), { what: 'wall', mm: 25 }, ask({ x: 1000, y: 500, z: 150 }, { x: 3000, y: 200 }));
    expect(line(found)).toEqual(['1000,75,150', '3000,75,150']);
    expect(found).toMatchObject({ word: 'along the wall, 25 off' });
  });

  it('says what door it goes across, and nothing of a window over it', () => {
    const plan = room();
    const opening = { id: 'd', wall: 'w0', from: 'a', alongMm: 1500, widthMm: 800, sillMm: 0, headMm: 2000 };
    plan.openings.d = {
      ...opening,
      kind: 'door',
      name: 'Back door',
      option: null,
    } as unknown as Plan['openings'][string];
    const go = (z: number) => followed(plan, { what: 'wall', mm: 25 }, ask({ x: 1000, y: 75, z }, { x: 3000, y: 75 }));
    expect(go(150)).toMatchObject({ word: 'along the wall, 25 off, across the way of Back door' });
    expect(go(2200)).toMatchObject({ word: 'along the wall, 25 off' });
  });

  it('has no wall to follow outside', () => {
    const found = followed(house().plan, { what: 'wall', mm: 25 }, ask({ x: 0, y: 0, z: 0 }, { x: 900, y: 0 }));
    expect(!found.ok && found.why).toContain('No room');
  });

  it('stays exactly so far off, wherever it starts and ends', () => {
    const plan = room();
    const [face] = roomFaces(plan, 's').faces;
    const sides = face!.outline.map((a, i) => ({ a, b: face!.outline[(i + 1) % face!.outline.length]! }));
    const inside = fc.record({ x: fc.integer({ min: 200, max: 1800 }), y: fc.integer({ min: 200, max: 1800 }) });
    fc.assert(
      fc.property(inside, inside, fc.constantFrom(25, 50, 100), (from, to, mm) => {
        const found = followed(plan, { what: 'wall', mm }, ask({ ...from, z: 100 }, to));
        if (!found.ok) {
          expect(found.why).toContain('abreast');
          return;
        }
        for (const p of found.pts) {
          const at = { ...p, z: 0 };
          const off = Math.min(
            ...sides.map(
              ({ a, b }) => segmentDistance({ a: at, b: at }, { a: { ...a, z: 0 }, b: { ...b, z: 0 } }).distance,
            ),
          );
          expect(off).toBeGreaterThan(mm - 0.001);
          // Round an outside corner the pipe's own corner lies further off than its sides.
          expect(off).toBeLessThan(mm * 1.415);
        }
      }),
      { numRuns: 200, seed: 2 },
    );
  });
});

describe('along a joist bay', () => {
  function floor(): Plan {
    const { plan } = house();
    plan.voids.v = {
      id: 'v',
      storey: 's',
      kind: 'floor',
      name: '',
      outline: [
        { x: 0, y: 0 },
        { x: 4000, y: 0 },
        { x: 4000, y: 3000 },
        { x: 0, y: 3000 },
      ],
      holes: [],
      bottom: { from: 'floor', of: 's', mm: -250 },
      top: { from: 'floor', of: 's', mm: 0 },
      joists: {
        wayDeg: 0,
        centresMm: 400,
        first: { x: 0, y: 200 },
        depthMm: 200,
        breadthMm: 50,
        spanMm: null,
        kind: 'sawn',
        bottom: null,
        exceptions: [{ index: 2, offsetMm: 60, what: '' }],
      },
      bearings: [],
      ventilated: null,
      option: null,
      sureness: 'seen',
    } as unknown as Plan['voids'][string];
    return plan;
  }

  it('goes to the middle between its two joists and on to abreast of the tap', () => {
    // Joists at 200, 600, 1060 (moved), 1400.
    const found = followed(floor(), { what: 'bay', mm: 0 }, ask({ x: 500, y: 700, z: -100 }, { x: 3500, y: 2500 }));
    expect(line(found)).toEqual(['500,830,-100', '3500,830,-100']);
  });

  it('has no bay beside the last joist, nor where no joists are told', () => {
    const beside = followed(floor(), { what: 'bay', mm: 0 }, ask({ x: 500, y: 100, z: -100 }, { x: 3500, y: 2500 }));
    expect(!beside.ok && beside.why).toContain('no bay');
    const none = followed(house().plan, { what: 'bay', mm: 0 }, ask({ x: 0, y: 0, z: 0 }, { x: 10, y: 0 }));
    expect(!none.ok && none.why).toContain('No joists');
  });
});

describe('along a run', () => {
  const run = () => {
    const h = house().run('r', 'gas', { option: 'o' });
    h.node('n0', [0, 0, 100]).node('n1', [2000, 0, 100]).node('n2', [2000, 2000, 100]).node('n3', [4000, 2000, 100]);
    return h.line('r', ['n0', 'n1', 'n2', 'n3']).plan;
  };

  it('takes the same corners on the side it starts on, at its own height', () => {
    const go = (y: number, to: Xy) => followed(run(), { what: 'run', mm: 75 }, ask({ x: 500, y, z: 300 }, to));
    expect(line(go(75, { x: 3000, y: 2100 }))).toEqual(['1925,75,300', '1925,2075,300', '3000,2075,300']);
    expect(line(go(-60, { x: 3000, y: 1900 }))).toEqual([
      '500,-75,300',
      '2075,-75,300',
      '2075,1925,300',
      '3000,1925,300',
    ]);
    expect(line(go(75, { x: 100, y: 90 }))).toEqual(['100,75,300']);
  });

  it('does not follow itself', () => {
    const found = followed(run(), { what: 'run', mm: 75 }, ask({ x: 0, y: 75, z: 300 }, { x: 900, y: 0 }, 'r'));
    expect(!found.ok && found.why).toContain('no other run');
  });
});
