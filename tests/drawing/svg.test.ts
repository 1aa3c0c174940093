import { describe, expect, test } from 'vitest';
import { itemKinds, makeItem } from '../../src/catalogue/items.ts';
import { makePoint } from '../../src/catalogue/make-point.ts';
import { servicesInOrder } from '../../src/catalogue/services.ts';
import { annotate } from '../../src/drawing/annotate.ts';
import type { View } from '../../src/drawing/display-list.ts';
import { drawSvg } from '../../src/drawing/draw-svg.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import type { Theme } from '../../src/drawing/look/style-of.ts';
import { writeSvg } from '../../src/drawing/paint/write-svg.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { demo } from './demo.ts';
import { AFTER, ceilingVoid, opening, PLAN_VIEW, page, room, run } from './small-plan.ts';

function svg(plan: Plan, theme: Theme, scale = 50, view: View = PLAN_VIEW): string {
  const list = annotate(fragments(plan, view, AFTER), { plan, view, mmPerPaperMm: scale });
  return writeSvg(list, { scale, theme, title: plan.name });
}

/** Every service as new, there, assumed and to be taken out. */
function lineBoard(): Plan {
  const plan = page();
  const fates: Record<string, 'strip'> = {};
  servicesInOrder().forEach((service, i) => {
    const y = -i * 500;
    run(
      plan,
      `new${i}`,
      [
        [0, y, 100],
        [2000, y, 100],
      ],
      { service: service.id },
    );
    run(
      plan,
      `there${i}`,
      [
        [2300, y, 100],
        [4300, y, 100],
      ],
      { service: service.id, option: null },
    );
    run(
      plan,
      `guess${i}`,
      [
        [4600, y, 100],
        [6600, y, 100],
      ],
      { service: service.id, option: null, sureness: 'assumed' },
    );
    run(
      plan,
      `out${i}`,
      [
        [6900, y, 100],
        [8900, y, 100],
      ],
      { service: service.id, option: null },
    );
    fates[`out${i}`] = 'strip';
  });
  plan.options.A = { id: 'A', name: 'A', note: '', fates };
  return plan;
}

/** Corners, tees, rises, a crossing, a reducer, a fall. */
function jointBoard(): Plan {
  const plan = page();
  run(
    plan,
    'g',
    [
      [0, 0, 500],
      [0, 0, 2300],
      [1500, 0, 2300],
      [1500, 1200, 2300],
      [3000, 1200, 2300],
      [3000, 1200, 900],
    ],
    { size: '28x0.9' },
  );
  run(plan, 'b', ['g.3', [1500, 2200, 2300]], { size: '15x0.7' });
  run(
    plan,
    'c',
    [
      [-200, 600, 300],
      [2400, 600, 300],
    ],
    { service: 'cold' },
  );
  run(plan, 'c2', ['c.1', [3600, 600, 300]], { service: 'cold', size: '15x0.7' });
  run(
    plan,
    'k',
    [
      [0, -600, 700],
      [2000, -600, 610],
    ],
    { service: 'condensate', size: null },
  );
  return plan;
}

/** Every kind of in-line item on a pipe of its own. */
function itemBoard(): Plan {
  const plan = page();
  [...itemKinds.values()].forEach((kind, i) => {
    const [x, y] = [(i % 4) * 1400, -Math.floor(i / 4) * 700];
    run(
      plan,
      `r${i}`,
      [
        [x, y, 100],
        [x + 500, y, 100],
        [x + 1000, y, 100],
      ],
      { service: kind.services[0] ?? 'cold' },
    );
    plan.items[`i${i}`] = makeItem(kind.id, { id: `i${i}`, node: `r${i}.1`, option: 'A' });
  });
  return plan;
}

/** A room with a door, a window, a false ceiling and a boiler on the wall. */
function roomBoard(): Plan {
  const plan = room(page());
  opening(plan, 'd', 'w-s', { alongMm: 2600 });
  opening(plan, 'w', 'w-n', { kind: 'window', alongMm: 700, widthMm: 1200, sillMm: 900, headMm: 2100 });
  opening(plan, 'a', 'w-e', { kind: 'archway', hinge: null, swings: null });
  ceilingVoid(plan, 'v');
  plan.points.boiler = makePoint('boiler', {
    id: 'boiler',
    storey: 'S',
    place: {
      on: 'wall',
      wall: 'w-n',
      side: 'left',
      from: 'a',
      alongMm: 3400,
      standOffMm: 0,
      height: { from: 'floor', of: 'S', mm: 1300 },
    },
    option: 'A',
  });
  return plan;
}

describe('drawings as text', () => {
  const boards: [string, () => Plan, Theme][] = [
    ['lines-day', lineBoard, 'day'],
    ['lines-print', lineBoard, 'print'],
    ['joints-day', jointBoard, 'day'],
    ['items-night', itemBoard, 'night'],
    ['room-day', roomBoard, 'day'],
  ];
  test.each(boards)('%s', async (name, board, theme) => {
    await expect(svg(board(), theme)).toMatchFileSnapshot(`./__snapshots__/${name}.svg`);
  });
  test('room from the window side', async () => {
    const view = { kind: 'face', wall: 'w-n', side: 'left' } as const;
    await expect(svg(roomBoard(), 'day', 20, view)).toMatchFileSnapshot('./__snapshots__/room-face-day.svg');
  });
});

describe('an SVG file', () => {
  const flat = demo('flat');
  const view = { kind: 'plan', storey: 'B' } as const;

  test('the same plan gives the same bytes', () => {
    expect(drawSvg(flat, view, AFTER, 'print')).toBe(drawSvg(demo('flat'), view, AFTER, 'print'));
  });
  test('is in mm of paper, has a title, and leans on nothing outside', () => {
    const text = drawSvg(flat, view, AFTER, 'print');
    expect(text).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" width="[\d.]+mm"/);
    expect(text).toContain('<title>First-floor flat: First floor, after, A, 1:50</title>');
    expect(text).not.toMatch(/href|url\(|@import/);
  });
  test('names of the user are text, never markup', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 100],
      [2000, 0, 100],
    ]);
    const text = drawSvg({ ...plan, name: '<b>&"' }, PLAN_VIEW, AFTER, 'day');
    expect(text).toContain('&lt;b&gt;&amp;&quot;');
    expect(text).not.toContain('<b>');
  });
  test('the key lists the lines that are there and no others', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 100],
      [2000, 0, 100],
    ]);
    const text = drawSvg(plan, PLAN_VIEW, AFTER, 'day');
    expect(text).toContain('>Gas</text>');
    expect(text).not.toContain('>Cold</text>');
  });
});
