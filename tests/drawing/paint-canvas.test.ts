import { describe, expect, test } from 'vitest';
import { annotate } from '../../src/drawing/annotate.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { styleOf } from '../../src/drawing/look/style-of.ts';
import { themes } from '../../src/drawing/look/tokens.ts';
import { place, sheetFrame, unplace } from '../../src/drawing/paint/frame.ts';
import { type Canvas2d, paint } from '../../src/drawing/paint/paint-canvas.ts';
import { demo } from './demo.ts';
import { AFTER, PLAN_VIEW, page, run } from './small-plan.ts';

interface Stroked {
  readonly ink: unknown;
  readonly width: number;
  readonly dash: readonly number[];
  readonly at: number;
}

/** A canvas that only remembers. */
function recorder() {
  const strokes: Stroked[] = [];
  const texts: { text: string; font: string; ink: unknown }[] = [];
  let depth = 0;
  let dash: number[] = [];
  const none = (): void => {};
  const ctx: Canvas2d = {
    fillStyle: '',
    strokeStyle: '',
    lineWidth: 0,
    lineCap: 'butt',
    lineJoin: 'miter',
    lineDashOffset: 0,
    font: '',
    textAlign: 'left',
    textBaseline: 'alphabetic',
    fontKerning: 'auto',
    save: () => {
      depth++;
    },
    restore: () => {
      depth--;
    },
    translate: none,
    rotate: none,
    beginPath: none,
    moveTo: none,
    lineTo: none,
    quadraticCurveTo: none,
    arc: none,
    closePath: none,
    stroke: () => {
      strokes.push({ ink: ctx.strokeStyle, width: ctx.lineWidth, dash, at: ctx.lineDashOffset });
    },
    fill: none,
    setLineDash: (d) => {
      dash = d;
    },
    fillText: (text) => {
      expect(ctx.fontKerning).toBe('none');
      texts.push({ text, font: ctx.font, ink: ctx.fillStyle });
    },
    strokeText: none,
  };
  return { ctx, strokes, texts, depth: () => depth };
}

const SCREEN = {
  perMm: 0.08,
  perPaperMm: 3.4,
  origin: [100, 500] as const,
  turnDeg: 0,
  leastPen: 1,
  medium: 'screen' as const,
};

describe('painting on a canvas', () => {
  test('pens and beats are paper mm times 3.4 px, the same at every zoom', () => {
    const plan = page();
    run(
      plan,
      'f',
      [
        [0, 0, 100],
        [4000, 0, 100],
      ],
      { service: 'heatingFlow' },
    );
    const all = fragments(plan, PLAN_VIEW, AFTER).filter((f) => f.map === 'legs');
    for (const perMm of [0.05, 0.2]) {
      const { ctx, strokes } = recorder();
      paint(ctx, all, { ...SCREEN, perMm }, 'day');
      expect(strokes).toHaveLength(1);
      expect(strokes[0]?.width).toBeCloseTo(0.7 * 3.4);
      expect(strokes[0]?.ink).toBe(themes.day.service.heatingFlow);
      const [dash = 0] = strokes[0]?.dash ?? [];
      expect(dash / 3.4).toBeGreaterThan(3);
      expect(dash / 3.4).toBeLessThan(3.4);
      expect(strokes[0]?.at).toBeCloseTo(dash / 2);
    }
  });

  test('no pen is thinner than the least', () => {
    const plan = demo('flat');
    const list = annotate(fragments(plan, { kind: 'plan', storey: 'B' }, AFTER), {
      plan,
      view: { kind: 'plan', storey: 'B' },
      mmPerPaperMm: 42.5,
    });
    const { ctx, strokes, texts, depth } = recorder();
    paint(ctx, list, SCREEN, 'night');
    expect(Math.min(...strokes.map((s) => s.width))).toBeGreaterThanOrEqual(1);
    expect(texts.map((t) => t.text)).toContain('G 28');
    expect(texts.every((t) => t.font.includes('Hanken Grotesk Variable'))).toBe(true);
    expect(depth()).toBe(0);
  });

  test('print is black alone, but for the two greys', () => {
    const plan = demo('flat');
    const view = { kind: 'plan', storey: 'B' } as const;
    const list = annotate(fragments(plan, view, AFTER), { plan, view, mmPerPaperMm: 50, medium: 'sheet' });
    const { ctx, strokes, texts } = recorder();
    paint(ctx, list, sheetFrame(50, [0, 0]), 'print');
    expect([...new Set([...strokes.map((s) => s.ink), ...texts.map((t) => t.ink)])]).toEqual(['#000000']);
    const look = styleOf('print');
    expect([look.fill('wall'), look.fill('void'), look.fill('tint')]).toEqual(['#C9C9C9', '#EFEFEF', null]);
  });

  test('a place goes to the paper and back, turned or not', () => {
    for (const turnDeg of [0, 90, 33]) {
      const frame = { ...SCREEN, turnDeg };
      const [x, y] = unplace(frame, place(frame, [1234, -567]));
      expect(x).toBeCloseTo(1234);
      expect(y).toBeCloseTo(-567);
    }
  });
});
