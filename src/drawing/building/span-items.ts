import { type JoistLine, joistLines } from '../../geometry/joist-lines.ts';
import { cross, distance, dot, scale, sub, unit } from '../../geometry/vec.ts';
import type { Void } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { Item, LineStyle, Vec } from '../display-list.ts';

const BEARING: LineStyle = { ink: 'accent', pen: 0.7, dash: [], fit: false };
const SPAN: LineStyle = { ink: 'accent', pen: 0.18, dash: [], fit: false };
/** Half a tick across the end of a span, as a part of the centres. */
const TICK = 0.25;
/** How far along the span its figure stands: a room's name has the middle. */
const SAID_AT = 0.25;

/** A span and what its ends were taken from. */
export interface Span {
  readonly a: Xy;
  readonly b: Xy;
  readonly mm: number;
  readonly ends: 'bearings' | 'outline';
}

function onBearings(v: Void, line: JoistLine): Xy[] {
  const d = sub(line.b, line.a);
  return v.bearings
    .flatMap(({ a, b }) => {
      const e = sub(b, a);
      const det = cross(d, e);
      if (det === 0) return [];
      const t = cross(sub(a, line.a), e) / det;
      const u = cross(sub(a, line.a), d) / det;
      return u >= 0 && u <= 1 ? [{ t, at: { x: line.a.x + d.x * t, y: line.a.y + d.y * t } }] : [];
    })
    .sort((p, q) => p.t - q.t)
    .map(({ at }) => at);
}

/** Spans of one joist: between bearings where two are met, else from end to end. */
function spansAlong(v: Void, line: JoistLine): Span[] {
  const met = onBearings(v, line);
  if (met.length < 2) return [{ a: line.a, b: line.b, mm: distance(line.a, line.b), ends: 'outline' }];
  return met.slice(1).flatMap((b, i): Span[] => {
    const a = met[i];
    return a ? [{ a, b, mm: distance(a, b), ends: 'bearings' }] : [];
  });
}

/** Spans of the joist in the middle of a void. */
export function spansOf(v: Void): Span[] {
  const lines = joistLines(v);
  const middle = lines[Math.floor(lines.length / 2)];
  return middle ? spansAlong(v, middle) : [];
}

/** The least and the longest span of all joists, in whole mm; null where there are no joists. */
export function spanRange(v: Void): { readonly lo: number; readonly hi: number; readonly ends: Span['ends'] } | null {
  const all = joistLines(v).flatMap((line) => spansAlong(v, line));
  if (all.length === 0) return null;
  const mm = all.map((s) => s.mm);
  const ends = all.every((s) => s.ends === 'bearings') ? 'bearings' : 'outline';
  return { lo: Math.round(Math.min(...mm)), hi: Math.round(Math.max(...mm)), ends };
}

/** Bearings and the span of a chosen void: a heavy line at each bearing, a dimension along the middle joist. */
export function spanItems(v: Void, onto: (p: Xy) => Vec): Item[] {
  const items: Item[] = v.bearings.map(({ a, b }) => ({ t: 'line', pts: [onto(a), onto(b)], style: BEARING }));
  const half = (v.joists?.centresMm ?? 0) * TICK;
  for (const { a, b, mm } of spansOf(v)) {
    const way = unit(sub(b, a));
    const across = scale({ x: -way.y, y: way.x }, half);
    const tick = (p: Xy): Item => ({
      t: 'line',
      pts: [onto({ x: p.x - across.x, y: p.y - across.y }), onto({ x: p.x + across.x, y: p.y + across.y })],
      style: { ...SPAN, pen: 0.35 },
    });
    items.push({ t: 'line', pts: [onto(a), onto(b)], style: SPAN }, tick(a), tick(b));
    items.push({
      t: 'text',
      at: onto({ x: a.x + (b.x - a.x) * SAID_AT, y: a.y + (b.y - a.y) * SAID_AT }),
      text: `span ${Math.round(mm)}`,
      size: 'dimension',
      weight: 600,
      align: 'left',
      offsetMm: [1.2, 0],
      ink: 'ink1',
      turnDeg: 0,
      halo: true,
    });
  }
  return items;
}

/** Edges of an outline that joists running so end on: its walls at both ends. */
export function endEdges(v: Pick<Void, 'outline'>, way: Xy): { a: Xy; b: Xy }[] {
  return v.outline.flatMap((a, i) => {
    const b = v.outline[(i + 1) % v.outline.length] ?? a;
    return distance(a, b) > 1 && Math.abs(dot(unit(sub(b, a)), way)) < Math.SQRT1_2 ? [{ a, b }] : [];
  });
}
