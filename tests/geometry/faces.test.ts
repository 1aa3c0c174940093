import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { facePlane, faceStretches } from '../../src/geometry/face-plane.ts';
import { connectionPlace, hostedXy, toHouse } from '../../src/geometry/hosting.ts';
import { pointBox, segmentToPoint, toLocal } from '../../src/geometry/point-box.ts';
import { distance3 } from '../../src/geometry/vec.ts';
import type { HostedPlace } from '../../src/plan/records/parts.ts';
import { box, datum, house, room, wall } from './house.ts';

const n = fc.integer({ min: -5000, max: 5000 });
const side = fc.constantFrom('left' as const, 'right' as const);
const hosted = (more: Partial<HostedPlace> = {}): HostedPlace => ({
  on: 'wall',
  wall: 'w',
  side: 'right',
  from: 'a',
  alongMm: 1000,
  standOffMm: 0,
  height: datum(1300),
  ...more,
});

describe('the face of a wall', () => {
  it('goes there and back from house to face', () => {
    fc.assert(
      fc.property(n, n, n, n, side, n, n, n, (ax, ay, bx, by, which, x, y, z) => {
        fc.pre(ax !== bx || ay !== by);
        const face = facePlane(wall('w', [ax, ay], [bx, by], 150), which);
        const back = face.toHouse(face.toFace({ x, y, z }));
        expect(distance3(back, { x, y, z })).toBeLessThan(1e-6);
        const there = face.toFace(face.toHouse({ s: x, z, depth: y }));
        expect(Math.abs(there.s - x) + Math.abs(there.depth - y) + Math.abs(there.z - z)).toBeLessThan(1e-6);
      }),
    );
  });

  it('keeps lengths, and has depth 0 on the face and the thickness behind it', () => {
    const w = wall('w', [0, 0], [4000, 0], 200);
    const face = facePlane(w, 'right');
    expect(face.toFace({ x: 1000, y: -100, z: 5 })).toEqual({ s: 1000, z: 5, depth: 0 });
    expect(face.toFace({ x: 1000, y: 100, z: 5 }).depth).toBe(-200);
    expect(face).toMatchObject({ leftEnd: 'a', lengthMm: 4000 });
  });

  it('is read from the viewer’s left on both sides', () => {
    const w = wall('w', [0, 0], [4000, 0], 200);
    const other = facePlane(w, 'left');
    expect(other.leftEnd).toBe('b');
    expect(other.toFace({ x: 1000, y: 100, z: 5 })).toEqual({ s: 3000, z: 5, depth: 0 });
    expect(other.toFace({ x: 1000, y: 400, z: 5 }).depth).toBe(300);
  });

  it('agrees with where a hosted point stands', () => {
    fc.assert(
      fc.property(
        n,
        n,
        n,
        n,
        side,
        fc.constantFrom('a' as const, 'b' as const),
        fc.nat(3000),
        fc.nat(200),
        (ax, ay, bx, by, which, from, alongMm, standOffMm) => {
          fc.pre(ax !== bx || ay !== by);
          const w = wall('w', [ax, ay], [bx, by], 150);
          const at = hostedXy(house({ walls: [w] }), hosted({ side: which, from, alongMm, standOffMm }))!;
          const face = facePlane(w, which);
          const seen = face.toFace({ ...at.at, z: 0 });
          expect(seen.depth).toBeCloseTo(standOffMm, 6);
          expect(seen.s).toBeCloseTo(from === face.leftEnd ? alongMm : face.lengthMm - alongMm, 6);
          expect(at.right.x * face.right.x + at.right.y * face.right.y).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('is bounded by the rooms along it, with their own floors and ceilings', () => {
    const plan = house({
      walls: [
        wall('s', [0, 0], [6000, 0], 200),
        wall('e', [6000, 0], [6000, 3000], 200),
        wall('n', [6000, 3000], [0, 3000], 200),
        wall('w', [0, 3000], [0, 0], 200),
        wall('p', [2000, 100], [2000, 2900]),
      ],
      rooms: [room('small', [500, 500], { ceilingMm: 2250 }), room('large', [4000, 500], { floorMm: 20 })],
    });
    const s = plan.walls.s!;
    expect(faceStretches(plan, s, 'left')).toEqual([
      { fromS: 100, toS: 3950, rooms: ['large'], floorZ: 20, ceilingZ: 2420 },
      { fromS: 4050, toS: 5900, rooms: ['small'], floorZ: 0, ceilingZ: 2250 },
    ]);
    expect(faceStretches(plan, s, 'right')).toEqual([]);
    expect(faceStretches(plan, plan.walls.p!, 'left').map((f) => f.rooms)).toEqual([['small']]);
    expect(faceStretches(plan, plan.walls.p!, 'right').map((f) => f.rooms)).toEqual([['large']]);
  });
});

describe('the body of a point', () => {
  const w = wall('w', [0, 0], [4000, 0], 200);

  it('stands on its wall with its back to the face', () => {
    const boiler = box('b', hosted(), [400, 300, 700]);
    const found = pointBox(house({ walls: [w], points: [boiler] }), boiler)!;
    expect(found.box).toEqual({ minX: 800, maxX: 1200, minY: -400, maxY: -100, minZ: 1300, maxZ: 2000 });
    expect(found.footprint[0]).toMatchObject({ x: 800, y: -100 });
    expect(found.footprint[2]).toMatchObject({ x: 1200, y: -400 });
  });

  it('turns with its place', () => {
    const free = box('b', { on: 'storey', x: 1000, y: 500, angleDeg: 90, height: datum(0) }, [400, 300, 700]);
    expect(pointBox(house({ points: [free] }), free)?.box).toEqual({
      minX: 1000,
      maxX: 1300,
      minY: 300,
      maxY: 700,
      minZ: 0,
      maxZ: 700,
    });
  });

  it('is nowhere without its wall', () => {
    const boiler = box('b', hosted(), [400, 300, 700]);
    expect(pointBox(house({ points: [boiler] }), boiler)).toBeUndefined();
    expect(connectionPlace(house({ points: [boiler] }), 'b', 'gas')).toBeUndefined();
  });

  it('is as far from a pipe as in its own frame, whichever way it is turned', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359 }), n, n, n, n, n, n, (angleDeg, x1, y1, z1, x2, y2, z2) => {
        const free = box('b', { on: 'storey', x: 300, y: -200, angleDeg, height: datum(900) }, [400, 300, 700]);
        const body = pointBox(house({ points: [free] }), free)!;
        const found = segmentToPoint({ a: { x: x1, y: y1, z: z1 }, b: { x: x2, y: y2, z: z2 } }, body);
        expect(distance3(found.onLine, found.onBox)).toBeCloseTo(found.distance, 6);
        const local = toLocal(body.frame, found.onBox);
        expect(local.x).toBeGreaterThanOrEqual(body.local.minX - 1e-6);
        expect(local.y).toBeLessThanOrEqual(body.local.maxY + 1e-6);
        expect(distance3(toHouse(body.frame, local), found.onBox)).toBeLessThan(1e-6);
      }),
    );
  });

  it('puts a pipe that goes in at no distance', () => {
    const boiler = box('b', hosted(), [400, 300, 700]);
    const body = pointBox(house({ walls: [w], points: [boiler] }), boiler)!;
    const into = { a: { x: 1000, y: -250, z: 1000 }, b: { x: 1000, y: -250, z: 1400 } };
    expect(segmentToPoint(into, body)).toMatchObject({ distance: 0 });
    expect(segmentToPoint({ ...into, b: { x: 1000, y: -250, z: 1260 } }, body).distance).toBeCloseTo(40, 9);
  });

  it('faces its connections the way it is turned', () => {
    const boiler = box('b', hosted({ side: 'left' }), [400, 300, 700], {
      connections: [
        { id: 'r', service: 'gas', label: '', size: null, at: { x: 10, y: 20, z: 30 }, facing: 'right' },
        { id: 'f', service: 'gas', label: '', size: null, at: { x: 0, y: 0, z: 0 }, facing: 'front' },
      ],
    });
    const plan = house({ walls: [w], points: [boiler] });
    expect(connectionPlace(plan, 'b', 'r')).toMatchObject({
      at: { x: 990, y: 120, z: 1330 },
      facing: { x: -1, y: 0, z: 0 },
    });
    expect(connectionPlace(plan, 'b', 'f')?.facing).toMatchObject({ y: 1, z: 0 });
  });
});

describe('moving a wall and back', () => {
  it('leaves what hangs on it where it was', () => {
    fc.assert(
      fc.property(n, n, n, n, side, n, n, (ax, ay, bx, by, which, dx, dy) => {
        fc.pre(ax !== bx || ay !== by);
        const boiler = box('b', hosted({ side: which }), [400, 300, 700]);
        const at = (mx: number, my: number) =>
          connectionPlace(
            house({ walls: [wall('w', [ax + mx, ay + my], [bx + mx, by + my], 150)], points: [boiler] }),
            'b',
            'gas',
          )!.at;
        expect(at(dx - dx, dy - dy)).toEqual(at(0, 0));
        const moved = at(dx, dy);
        expect(moved.x - at(0, 0).x).toBeCloseTo(dx, 6);
        expect(moved.y - at(0, 0).y).toBeCloseTo(dy, 6);
        expect(moved.z).toBe(at(0, 0).z);
      }),
    );
  });
});
