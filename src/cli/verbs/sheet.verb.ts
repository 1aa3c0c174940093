import { issueSheets } from '../../drawing/sheet/issue.ts';
import { PAPERS, paperOf } from '../../drawing/sheet/paper.ts';
import type { SheetJob } from '../../drawing/sheet/sheet.ts';
import { sheetChoices } from '../../drawing/sheet/sheet-kinds.ts';
import { sheetSvg } from '../../drawing/sheet/sheet-svg.ts';
import { sheetsPage } from '../../drawing/sheet/sheets-page.ts';
import { evaluate } from '../../engine/evaluate.ts';
import { listGroups } from '../../files/format/list-sheet.ts';
import { BadCall, type Call, defineVerb, FINE } from '../define-verb.ts';
import { chosenCase, openFile } from '../open-file.ts';

const usage =
  'sheet FILE [--out F.html|F.svg] [--sheets plan,face,list,findings,basis] [--paper A4-across] [--scale 50] [--date YYYY-MM-DD] [--case OPTION:after]';

function paper(asked: string | true | undefined) {
  const found = paperOf(typeof asked === 'string' ? asked : 'A4-across');
  if (!found) throw new BadCall(`--paper is ${PAPERS.map((p) => p.id).join(', ')}`);
  return found;
}

/** Every usual sheet; or those of the kinds or keys that were asked for, usual or not. */
function keys(job: SheetJob, asked: string | true | undefined): string[] {
  const all = sheetChoices(job);
  if (typeof asked !== 'string') return all.filter((c) => c.usual).map((c) => c.key);
  return asked.split(',').flatMap((name) => {
    const found = all.filter((c) => c.key === name || c.key.split(':')[0] === name);
    if (found.length === 0)
      throw new BadCall(`there is no sheet "${name}"; there is ${all.map((c) => c.key).join(', ')}`);
    return found.map((c) => c.key);
  });
}

function scale(asked: string | true | undefined): number | null {
  if (asked === undefined) return null;
  const n = Number(typeof asked === 'string' ? asked.replace(/^1:/, '') : Number.NaN);
  if (!(n >= 1)) throw new BadCall('--scale is the figure after "1:", as 50');
  return n;
}

function day(asked: string | true | undefined): string {
  if (asked === undefined) return new Date().toISOString().slice(0, 10);
  if (typeof asked !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(asked)) throw new BadCall('--date is YYYY-MM-DD');
  return asked;
}

async function sheets(call: Call, file: Parameters<typeof openFile>[1]): Promise<number> {
  const { flags } = call;
  const plan = openFile(call, file, usage);
  const chosen = chosenCase(plan, flags.case);
  const report = evaluate(plan, chosen);
  const job: SheetJob = { plan, chosen, report, list: listGroups(report.lines), today: day(flags.date) };
  const asked = keys(job, flags.sheets);
  const all = scale(flags.scale);
  const scales = all === null ? {} : Object.fromEntries(asked.map((key) => [key, all]));
  const issued = issueSheets(job, { paper: paper(flags.paper), keys: asked, scales });
  const [first] = issued;
  if (!first) throw new BadCall('nothing is drawn that could stand on a sheet');
  const out = flags.out;
  if (typeof out !== 'string') file.out(sheetsPage(plan.name, issued));
  else if (!out.endsWith('.svg')) file.write(out, sheetsPage(plan.name, issued));
  else if (issued.length === 1) file.write(out, sheetSvg(first, true));
  else for (const s of issued) file.write(out.replace(/\.svg$/, `-${s.number}.svg`), sheetSvg(s, true));
  return FINE;
}

export default defineVerb({
  id: 'sheet',
  usage,
  about: 'sheets to print at a true scale, as one HTML page or one SVG each',
  flags: ['out', 'sheets', 'paper', 'scale', 'date', 'case'],
  run: (call, terminal) => sheets(call, terminal),
});
