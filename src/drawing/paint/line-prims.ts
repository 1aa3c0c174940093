import type { CornerItem, LineItem, LineStyle, Vec } from '../display-list.ts';
import type { Look } from '../look/style-of.ts';
import { PEN } from '../look/tokens.ts';
import { type Beat, fitBeat } from './beat.ts';
import { type Frame, mmPerPaperMm, place } from './frame.ts';
import { move, type Prim, polyline, type Seg, type Stroke, to } from './prim.ts';

/** A pipe of unknown way shorter than this many of its drawn ends is drawn whole. */
const LEAST_PARTED = 3;

/** The band under a chosen pipe is only its two edges where the pipe's own ink could not be told from it. */
const BAND_EDGES_MM = 1.2;

const coreOf = (style: LineStyle, look: Look): number | undefined =>
  style.core ?? (look.theme === 'forced' && style.ink === 'chosen' ? style.pen - BAND_EDGES_MM : undefined);

const pen = (frame: Frame, mm: number): number => Math.max(frame.leastPen, mm * frame.perPaperMm);

function strokeOf(style: LineStyle, frame: Frame, look: Look, beat: Beat | undefined, core = false): Stroke {
  const dash = style.fit
    ? beat
    : style.dash.length > 0
      ? { dash: style.dash.map((d) => d * frame.perPaperMm), at: 0 }
      : undefined;
  return {
    ink: core ? look.paper : look.ink(style.ink),
    width: pen(frame, core ? (coreOf(style, look) ?? 0) : style.pen),
    cap: style.cap ?? 'butt',
    join: style.cap === 'round' ? 'round' : 'miter',
    ...(dash ? { dash: dash.dash, dashAt: dash.at } : {}),
  };
}

const between = (a: Vec, b: Vec, t: number): Vec => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
const apart = (a: Vec, b: Vec): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

function lengthOf(pts: readonly Vec[]): number {
  return pts.reduce((sum, p, i) => sum + (i === 0 ? 0 : apart(pts[i - 1] ?? p, p)), 0);
}

/** The part of a polyline between two distances along it. */
function part(pts: readonly Vec[], from: number, upTo: number): Vec[] {
  const out: Vec[] = [];
  let s = 0;
  for (let i = 1; i < pts.length; i++) {
    const a = pts[i - 1] as Vec;
    const b = pts[i] as Vec;
    const l = apart(a, b);
    if (l > 0 && s + l > from && s < upTo) {
      if (out.length === 0) out.push(between(a, b, Math.max(0, (from - s) / l)));
      out.push(between(a, b, Math.min(1, (upTo - s) / l)));
    }
    s += l;
  }
  return out;
}

/** A polyline whose corners are rounded by at most `r` painted units. */
function rounded(pts: readonly Vec[], r: number): Seg[] {
  return pts.flatMap((p, i): Seg[] => {
    const before = pts[i - 1];
    const after = pts[i + 1];
    if (!before) return [move(p[0], p[1])];
    if (!after) return [to(p[0], p[1])];
    const a = apart(before, p);
    const b = apart(p, after);
    const t = Math.min(r, a / 2, b / 2);
    if (t <= 0) return [to(p[0], p[1])];
    const [ax, ay] = between(p, before, t / a);
    const [bx, by] = between(p, after, t / b);
    return [to(ax, ay), { c: 'Q', x1: p[0], y1: p[1], x: bx, y: by }];
  });
}

function crosses(pts: readonly Vec[], every: number, frame: Frame, ink: string): Prim[] {
  const length = lengthOf(pts);
  const n = Math.max(1, Math.round(length / every));
  const half = PEN.stripCrossHalf * frame.perPaperMm;
  const width = pen(frame, 0.3);
  return Array.from({ length: n }, (_, i): Prim => {
    const [x, y] = part(pts, 0, ((i + 0.5) * length) / n).at(-1) ?? [0, 0];
    return {
      p: 'path',
      path: [move(x - half, y - half), to(x + half, y + half), move(x - half, y + half), to(x + half, y - half)],
      stroke: { ink, width, cap: 'butt', join: 'miter' },
    };
  });
}

/** Middles of the breaks, along the line from where it starts to be painted. */
function gapsAlong(item: LineItem, frame: Frame, pts: readonly Vec[], start: number): number[] {
  const [a, b] = [pts[0], pts.at(-1)];
  if (!item.gaps || !a || !b) return [];
  const l = apart(a, b) || 1;
  return item.gaps
    .map((gap) => {
      const [x, y] = place(frame, gap.at, gap.spread);
      return ((x - a[0]) * (b[0] - a[0]) + (y - a[1]) * (b[1] - a[1])) / l - start;
    })
    .sort((p, q) => p - q);
}

/** Pieces of a line cut down to what lies within so much of either end. */
function onlyEnds<P extends { readonly pts: readonly Vec[]; readonly at: number }>(
  pieces: readonly P[],
  length: number,
  most: number,
): { pts: readonly Vec[]; at: number }[] {
  return pieces.flatMap((piece) => {
    const long = lengthOf(piece.pts);
    const cut = (from: number, upTo: number) => {
      const [a, b] = [Math.max(from - piece.at, 0), Math.min(upTo - piece.at, long)];
      return b > a ? [{ pts: part(piece.pts, a, b), at: piece.at + a }] : [];
    };
    return [...cut(0, most), ...cut(length - most, length)];
  });
}

/** The dotted hairline between the ends of a pipe whose way nobody knows. */
function unknownWay(pts: readonly Vec[], most: number, frame: Frame, ink: string): Prim {
  const way = part(pts, most, lengthOf(pts) - most);
  const dash = PEN.unknownWayDash.map((d) => d * frame.perPaperMm);
  const stroke: Stroke = { ink, width: pen(frame, PEN.unknownWay), cap: 'butt', join: 'miter', dash, dashAt: 0 };
  return { p: 'path', path: polyline(way), stroke };
}

/** A line as painted: ends left to corners, the beat fitted, broken where something passes in front, hollow, struck. */
export function linePrims(item: LineItem, frame: Frame, look: Look): Prim[] {
  const { style } = item;
  const k = mmPerPaperMm(frame);
  if (item.scales && (k < item.scales[0] || k >= item.scales[1])) return [];
  const all = item.pts.map((p, i) => place(frame, p, item.spread?.[i], item.offsetsMm?.[i]));
  const whole = lengthOf(all);
  if (item.closed) {
    return [{ p: 'path', path: polyline(all, true), stroke: strokeOf(style, frame, look, undefined) }];
  }
  const radius = PEN.cornerRadius * frame.perPaperMm;
  const start = Math.min(radius, (item.trim?.[0] ?? 0) * frame.perMm);
  const end = whole - Math.min(radius, (item.trim?.[1] ?? 0) * frame.perMm);
  const pts = start > 0 || end < whole ? part(all, start, end) : all;
  if (pts.length < 2) return [];
  const length = end - start;
  const beat = style.fit ? fitBeat(length / frame.perPaperMm, style.dash) : undefined;
  const inUnits = beat && { dash: beat.dash.map((d) => d * frame.perPaperMm), at: beat.at * frame.perPaperMm };
  const half = (PEN.crossGapWidths * style.pen * frame.perPaperMm) / 2;
  const pieces: { pts: readonly Vec[]; at: number }[] = [];
  let from = 0;
  for (const middle of gapsAlong(item, frame, all, start)) {
    if (middle - half > from) pieces.push({ pts: part(pts, from, Math.min(length, middle - half)), at: from });
    from = Math.max(from, middle + half);
  }
  if (from === 0) pieces.push({ pts, at: 0 });
  else if (from < length) pieces.push({ pts: part(pts, from, length), at: from });
  const round = (item.roundMm ?? 0) * frame.perPaperMm;
  const prims: Prim[] = [];
  const most = (style.ends ?? 0) * frame.perPaperMm;
  const parted = most > 0 && length > LEAST_PARTED * most;
  if (parted) {
    prims.push(unknownWay(pts, most, frame, look.ink(style.ink)));
    pieces.splice(0, pieces.length, ...onlyEnds(pieces, length, most));
  }
  for (const core of coreOf(style, look) === undefined ? [false] : [false, true]) {
    for (const piece of pieces) {
      if (piece.pts.length < 2) continue;
      const shifted = inUnits && { dash: inUnits.dash, at: inUnits.at + piece.at };
      prims.push({
        p: 'path',
        path: round > 0 ? rounded(piece.pts, round) : polyline(piece.pts),
        stroke: strokeOf(style, frame, look, shifted, core),
      });
    }
  }
  const struck = style.strike === undefined ? [] : parted ? pieces.map((p) => p.pts) : [all];
  for (const line of struck) {
    prims.push(...crosses(line, (style.strike ?? 0) * frame.perPaperMm, frame, look.ink(style.ink)));
  }
  return prims;
}

/** The rounded piece of ink between two legs that leave it to each other. */
export function cornerPrims(item: CornerItem, frame: Frame, look: Look): Prim[] {
  const k = mmPerPaperMm(frame);
  const take = Math.min(item.radiusMm * k, item.most);
  const toward = (end: Vec): Vec => {
    const l = apart(item.at, end);
    return l === 0 ? item.at : between(item.at, end, take / l);
  };
  const [ax, ay] = place(frame, toward(item.a), item.spread);
  const [x1, y1] = place(frame, item.at, item.spread);
  const [x, y] = place(frame, toward(item.b), item.spread);
  const path: Seg[] = [move(ax, ay), { c: 'Q', x1, y1, x, y }];
  const prims: Prim[] = [{ p: 'path', path, stroke: strokeOf({ ...item.style, fit: true }, frame, look, undefined) }];
  if (item.style.core !== undefined) {
    prims.push({ p: 'path', path, stroke: strokeOf({ ...item.style, fit: true }, frame, look, undefined, true) });
  }
  return prims;
}
