import type { Case, Plan } from '../../plan/plan.ts';
import type { Report } from '../../report/report.ts';
import type { Prim } from '../paint/prim.ts';
import type { Layout, Paper, Rect } from './paper.ts';

/** One line of the list as it is printed: what the counter is asked for. */
export interface ListRow {
  readonly amount: string;
  readonly what: string;
  /** In a smaller line under it. */
  readonly under: string;
}

export interface ListGroup {
  readonly title: string;
  readonly rows: readonly ListRow[];
}

/** Everything that sheets are made of. */
export interface SheetJob {
  readonly plan: Plan;
  readonly chosen: Case;
  readonly report: Report;
  readonly list: readonly ListGroup[];
  /** Day of issue where the plan tells none: "2026-05-01". */
  readonly today: string;
}

/** What prints on its own piece of paper, or over several: a floor, a face of a wall, the list… */
export interface SheetChoice {
  /** "plan:G", "face:w1:left", "list". */
  readonly key: string;
  readonly label: string;
  /** Printed unless it is left out. */
  readonly usual: boolean;
  /** Scales it may be drawn at, 50 for 1:50, the usual one first; empty: nothing is drawn to scale. */
  readonly scales: readonly number[];
}

/** How the title block names a sheet. */
export interface SheetHead {
  readonly title: string;
  readonly documentType: string;
  readonly scale: number | null;
  /** North up, or by how much it is turned; null: no north on it. */
  readonly northDeg: number | null;
  readonly datum: string | null;
  /** Said beside the scale: banks are spread, where to look for the rest. */
  readonly remark: string | null;
}

/** Shapes in mm of the sheet; with `clip`, only what lies in it shows. */
export interface SheetPart {
  readonly clip: Rect | null;
  readonly prims: readonly Prim[];
}

/** Where a page stands among the others once all of them are known. */
export interface Standing {
  /** Number of the first sheet with this key; undefined where it is not printed. */
  numberOf(key: string): number | undefined;
}

/** A page before it is drawn: how many there are must be known before the first one can be. */
export interface PagePlan {
  readonly key: string;
  readonly head: SheetHead;
  draw(standing: Standing): readonly SheetPart[];
}

/** A sheet ready to be printed: `number` of `of`. */
export interface Sheet {
  readonly key: string;
  readonly head: SheetHead;
  readonly paper: Paper;
  readonly number: number;
  readonly of: number;
  readonly parts: readonly SheetPart[];
}

/** One kind of sheet: which there may be for a job, and the pages of one of them. */
export interface SheetKind {
  readonly id: string;
  readonly order: number;
  choices(job: SheetJob): readonly SheetChoice[];
  /** `scale` null: the usual one. Text sheets do not look at it. */
  pages(job: SheetJob, key: string, layout: Layout, scale: number | null): readonly PagePlan[];
}
