import { expect, test } from 'vitest';
import { drawSvg } from '../../src/drawing/draw-svg.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { photoPlace } from '../../src/geometry/photo-place.ts';
import type { BlobRef } from '../../src/plan/records/statements.ts';
import { flatPlan } from '../demo/flat-plan.ts';

const photo = (id: string, more: Partial<BlobRef>): BlobRef => ({
  id,
  hash: 'h',
  kind: 'photo',
  name: '',
  mediaType: 'image/jpeg',
  on: null,
  place: null,
  ...more,
});

function withPhotos(...photos: readonly BlobRef[]) {
  const plan = flatPlan();
  for (const p of photos) plan.blobRefs[p.id] = p;
  return plan;
}

const storey = Object.keys(flatPlan().storeys)[0] ?? '';
const option = Object.keys(flatPlan().options)[0] ?? '';
const chosen = { option, when: 'after' } as const;
const drawn = (plan: ReturnType<typeof flatPlan>) =>
  fragments(plan, { kind: 'plan', storey }, chosen).filter((f) => f.map === 'blobRefs');

test('a photo stands where it was pinned, or at the thing it is of', () => {
  const boiler = Object.values(flatPlan().points).find((p) => p.kind === 'boiler')?.id ?? '';
  const wall = Object.keys(flatPlan().walls)[0] ?? '';
  const plan = withPhotos(
    photo('there', { pin: { storey, x: 1234, y: 2345 } }),
    photo('boiler', { on: boiler }),
    photo('wall', { on: wall }),
    photo('loose', {}),
    photo('gone', { on: 'nobody' }),
    photo('sheet', { kind: 'sheet', pin: { storey, x: 0, y: 0 } }),
  );
  expect(drawn(plan).map((f) => f.id)).toEqual(['there', 'boiler', 'wall']);
  expect(drawn(plan)[0]?.items).toMatchObject([{ t: 'mark', mark: 'photo', at: [1234, 2345] }]);
  const place = photoPlace(plan, plan.blobRefs.boiler ?? photo('x', {}));
  expect(place?.storey).toBe(plan.points[boiler]?.storey);
  // Its mark moves with the thing.
  const moved = structuredClone(plan);
  const point = moved.points[boiler];
  if (point?.place.on === 'wall') point.place.alongMm += 500;
  else if (point) point.place.x += 500;
  expect(photoPlace(moved, photo('x', { on: boiler }))?.at).not.toEqual(place?.at);
});

test('a photo that is pinned or taken off is drawn anew, and nothing else of the pipes is', () => {
  const before = withPhotos();
  const was = fragments(before, { kind: 'plan', storey }, chosen);
  const after = { ...before, blobRefs: { p: photo('p', { pin: { storey, x: 10, y: 20 } }) } };
  const now = fragments(after, { kind: 'plan', storey }, chosen);
  expect(now.filter((f) => !was.includes(f)).map((f) => f.id)).toEqual(['p']);
  expect(fragments(before, { kind: 'plan', storey }, chosen).some((f) => f.map === 'blobRefs')).toBe(false);
});

test('the mark is on the sheet too', () => {
  const without = drawSvg(withPhotos(), { kind: 'plan', storey }, chosen, 'print', {});
  const plan = withPhotos(photo('p', { pin: { storey, x: 3000, y: 2000 } }));
  expect(drawSvg(plan, { kind: 'plan', storey }, chosen, 'print', {}).length).toBeGreaterThan(without.length);
});
