import { annotate } from '../annotate.ts';
import { cull } from '../cull.ts';
import type { Box, Fragment, View } from '../display-list.ts';
import { fragments } from '../fragments.ts';
import { sheetFrame } from '../paint/frame.ts';
import type { Prim } from '../paint/prim.ts';
import { primsOf } from '../paint/prims-of.ts';
import { columnPrims } from './column.ts';
import { extentOf, leftOut } from './extent.ts';
import { findingsIn } from './findings-in.ts';
import { PRINT } from './ink.ts';
import { ladderPrims } from './ladder.ts';
import { matchLines, stripsOf } from './match-lines.ts';
import type { Layout } from './paper.ts';
import { type Part, partingOf, scaleThatFits } from './parting.ts';
import { sayDatum } from './say.ts';
import type { PagePlan, SheetHead, SheetJob, SheetPart, Standing } from './sheet.ts';
import { type Spaces, spacesOf } from './spaces.ts';

export interface DrawnView {
  readonly key: string;
  readonly view: View;
  readonly storey: string;
  readonly title: string;
  readonly documentType: string;
  /** Usual scales, the one to be taken first; the last is taken where none has room. */
  readonly usual: readonly number[];
  readonly north: boolean;
  readonly ladder: boolean;
}

/** Marks have their size on paper: what lies this far outside a window may still reach into it. */
const REACH_MM = 12;

const isSpread = (f: Fragment): boolean =>
  f.items.some((i) => i.t === 'line' && (i.spread?.some((s) => s.length > 0) ?? false));

function touches(box: Box, { minX, maxX, minY, maxY }: Box): boolean {
  return box.minX <= maxX && box.maxX >= minX && box.minY <= maxY && box.maxY >= minY;
}

function drawing(
  job: SheetJob,
  view: View,
  here: readonly Fragment[],
  scale: number,
  part: Part,
  taken: readonly Box[],
  at: Spaces,
): SheetPart {
  const list = annotate(here, {
    plan: job.plan,
    view,
    mmPerPaperMm: scale,
    medium: 'sheet',
    visible: part.window,
    taken,
    findings: job.report.findings,
  });
  const { drawing: room } = at;
  const frame = sheetFrame(scale, [part.window.minX, part.window.maxY], [room.x, room.y]);
  const prims: Prim[] = list.items.flatMap((g) => g.items.flatMap((item) => primsOf(item, frame, PRINT)));
  return { clip: room, prims };
}

function remarkOf(spread: boolean, lost: readonly string[]): string | null {
  const said = [
    lost.length > 0 ? `Too far outside for this sheet: ${lost.join(', ')}.` : '',
    spread ? 'Pipes that run close together are drawn apart to be read.' : '',
  ].filter((t) => t !== '');
  return said.length === 0 ? null : said.join(' ');
}

/**
 * The pages of a view: one where it has room at its scale, else parted with match lines. What is drawn is at its true
 * scale whatever the paper.
 */
export function viewPages(job: SheetJob, drawn: DrawnView, layout: Layout, asked: number | null): PagePlan[] {
  const { plan, chosen } = job;
  const all = fragments(plan, drawn.view, chosen);
  if (all.length === 0) return [];
  const spaces = spacesOf(layout, drawn.ladder);
  const extent = extentOf(all);
  const scale = asked ?? scaleThatFits(extent.house, drawn.usual, spaces.drawing);
  const whole = partingOf(extent.all, scale, spaces.drawing);
  const house = partingOf(extent.house, scale, spaces.drawing);
  const parting = house.parts.length < whole.parts.length ? house : whole;
  const parted = parting.parts.length > 1;
  const filled = parting.parts.filter((p) => all.some((f) => touches(f.box, p.window)));
  const lost = leftOut(
    plan,
    all,
    filled.map((p) => p.window),
    scale,
  );
  const keyOf = (i: number): string => (parted ? `${drawn.key}#${i}` : drawn.key);
  return filled.map((part, n): PagePlan => {
    const here = cull(all, part.window, REACH_MM * scale).fragments;
    const found = findingsIn(plan, drawn.view, job.report.findings, part.window);
    const spread = here.some(isSpread);
    const head: SheetHead = {
      title: parted ? `${drawn.title}, part ${n + 1} of ${filled.length}` : drawn.title,
      documentType: drawn.documentType,
      scale,
      northDeg: drawn.north ? 0 : null,
      datum: sayDatum(plan, drawn.storey),
      remark: remarkOf(spread, lost),
    };
    return {
      key: keyOf(parting.parts.indexOf(part)),
      head,
      draw(standing: Standing) {
        const column = columnPrims(
          {
            plan,
            report: job.report,
            fragments: here,
            here: found,
            findingsSheet: standing.numberOf('findings'),
            answer: drawn.ladder,
          },
          spaces,
        );
        const lines = parted ? matchLines(parting, part, spaces.drawing, (i) => standing.numberOf(keyOf(i))) : [];
        const ladder = spaces.ladder ? ladderPrims(plan, chosen, drawn.storey, spaces.ladder) : [];
        return [
          drawing(job, drawn.view, here, scale, part, stripsOf(parting, part, scale), spaces),
          { clip: null, prims: [...lines, ...ladder, ...column] },
        ];
      },
    };
  });
}
