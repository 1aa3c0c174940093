import { layoutOf, type Paper } from './paper.ts';
import type { PagePlan, Sheet, SheetJob, Standing } from './sheet.ts';
import { kindOf } from './sheet-kinds.ts';
import { titleBlock } from './title-block.ts';

export interface IssueRequest {
  readonly paper: Paper;
  /** Keys of the sheets to print, in order. */
  readonly keys: readonly string[];
  /** Scale by key where it is not the usual one: 20 for 1:20. */
  readonly scales?: Readonly<Record<string, number>>;
}

/**
 * The sheets of a job, numbered through, ready to print. A drawing that has no room at its scale is parted over several;
 * nothing is ever fitted to the page. Same job, same request: the same sheets.
 */
export function issueSheets(job: SheetJob, request: IssueRequest): Sheet[] {
  const layout = layoutOf(request.paper);
  const pages = request.keys.flatMap((key): readonly PagePlan[] => {
    const kind = kindOf(key);
    return kind ? kind.pages(job, key, layout, request.scales?.[key] ?? null) : [];
  });
  const standing: Standing = {
    numberOf(key) {
      const at = pages.findIndex((p) => p.key === key || p.key.startsWith(`${key}#`));
      return at < 0 ? undefined : at + 1;
    },
  };
  return pages.map((page, i): Sheet => {
    const place = { number: i + 1, of: pages.length };
    const block = titleBlock(job, layout, page.head, place, standing);
    const parts = [...page.draw(standing), { clip: null, prims: block }];
    return { key: page.key, head: page.head, paper: request.paper, ...place, parts };
  });
}
