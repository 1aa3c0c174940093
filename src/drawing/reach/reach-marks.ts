import type { ReachAnswer } from '../../report/report.ts';
import type { Box, Item, LineStyle, TextItem, Vec } from '../display-list.ts';
import { SPOT_MM } from '../labels/finding-marks.ts';
import { TEXT_MM } from '../look/tokens.ts';
import { textWidth } from '../text/measure.ts';

/** Between words and the edge of what shows, paper mm. */
const EDGE_MM = 1.5;
const LETTER: Readonly<Record<string, string>> = { check: 'C', stop: 'S', cantTell: '?' };

/** A level vial with its bubble in the middle, in paper mm about a place. */
function vial(at: Vec, by: Vec): Item[] {
  const [w, h, r] = [4.2, 1.75, 1.2];
  const from = (x: number, y: number): Vec => [by[0] + x, by[1] + y];
  const style: LineStyle = { ink: 'accent', pen: 0.45, dash: [], fit: false };
  const shape: Vec[] = [
    from(-w, -h + r),
    from(-w + r, -h),
    from(w - r, -h),
    from(w, -h + r),
    from(w, h - r),
    from(w - r, h),
    from(-w + r, h),
    from(-w, h - r),
  ];
  const line = (offsetsMm: readonly Vec[], closed: boolean): Item => {
    return { t: 'line', pts: offsetsMm.map(() => at), offsetsMm, style, ...(closed ? { closed } : {}) };
  };
  const paper: Item = {
    t: 'line',
    pts: [at, at],
    offsetsMm: [from(-w, 0), from(w, 0)],
    style: { ink: 'paper', pen: 2 * h, dash: [], fit: false },
  };
  return [
    paper,
    line(shape, true),
    line([from(-1.4, -h), from(-1.4, h)], false),
    line([from(1.4, -h), from(1.4, h)], false),
    { t: 'mark', mark: 'tee', at, turnDeg: 0, ink: 'accent', offsetMm: by },
  ];
}

/** How an end stands: its mark beside it, on a short leader. */
export function stateMark(at: Vec, state: ReachAnswer['state'], by: Vec): Item[] {
  const leader: Item = {
    t: 'line',
    pts: [at, at],
    offsetsMm: [
      [0, 0],
      [by[0] * 0.6, by[1] * 0.6],
    ],
    style: { ink: 'leader', pen: 0.25, dash: [], fit: false },
  };
  if (state === 'pass') return [leader, ...vial(at, by)];
  const text = LETTER[state] ?? '';
  return [leader, { t: 'mark', mark: `finding:${state}`, at, turnDeg: 0, ink: 'ink1', text, offsetMm: by }];
}

/** What is in the way, in words beside its ring: right of it, left of it, else under it and pushed into what shows. */
export function words(at: Vec, text: string, k: number, visible: Box | undefined): TextItem {
  const item = { t: 'text', at, text, size: 'flag', weight: 600, ink: 'ink1', turnDeg: 0, halo: true } as const;
  const off = SPOT_MM + 1.2;
  const wide = textWidth(text, TEXT_MM.screen.flag, 600);
  const right = visible ? visible.maxX / k - at[0] / k - EDGE_MM : Number.POSITIVE_INFINITY;
  const left = visible ? at[0] / k - visible.minX / k - EDGE_MM : Number.POSITIVE_INFINITY;
  if (off + wide <= right) return { ...item, align: 'left', offsetMm: [off, 0] };
  if (off + wide <= left) return { ...item, align: 'right', offsetMm: [-off, 0] };
  const under = -off - TEXT_MM.screen.flag / 2;
  return { ...item, align: 'right', offsetMm: [Math.min(right, Math.max(wide / 2, wide - left)), under] };
}

/** What those words take, in mm of the plane. */
export function wordsBox(item: TextItem, k: number): Box {
  const [dx, dy] = item.offsetMm ?? [0, 0];
  const wide = textWidth(item.text, TEXT_MM.screen.flag, 600) + 1;
  const from = item.at[0] + (item.align === 'left' ? dx : dx - wide) * k;
  const half = (TEXT_MM.screen.flag / 2 + 0.5) * k;
  const y = item.at[1] + dy * k;
  return { minX: from, maxX: from + wide * k, minY: y - half, maxY: y + half };
}
