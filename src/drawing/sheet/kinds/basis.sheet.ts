import type { Plan } from '../../../plan/plan.ts';
import type { Report } from '../../../report/report.ts';
import { factBlock, headingBlock, textBlock } from '../blocks.ts';
import { type Block, flowPages } from '../flow.ts';
import { SHEET_TEXT } from '../ink.ts';
import { assumptionsOf, NOT_TOLD, sayCase, told } from '../say.ts';
import type { SheetJob, SheetKind } from '../sheet.ts';

const UNDER = { under: 1 } as const;

const degrees = (n: number | null): string => (n === null ? NOT_TOLD : `${n} °C`);

function basisBlocks({ plan, chosen }: SheetJob, w: number): Block[] {
  const { basis, job } = plan;
  return [
    headingBlock('Basis', w),
    factBlock('What is to be done', told(job.reason), w),
    factBlock('Case', sayCase(plan, chosen), w),
    factBlock('Where', told(job.address), w),
    factBlock('Surveyed on', told(basis.surveyDate), w),
    factBlock('Gas', basis.gas === 'propane' ? 'propane' : 'natural gas', w),
    factBlock(
      'Heat value, gross',
      basis.calorificValueMJPerM3 === null
        ? 'not told: the usual figure with its bounds'
        : `${basis.calorificValueMJPerM3} MJ/m³`,
      w,
    ),
    factBlock('Flow, return', `${degrees(basis.designFlowC)}, ${degrees(basis.designReturnC)}`, w),
    ...Object.entries(basis.editions).map(([topic, table]) => factBlock(`Edition, ${topic}`, table, w)),
    ...(job.note.trim() === '' ? [] : [factBlock('Note', job.note.trim(), w)]),
  ];
}

function storeyBlocks({ storeys }: Plan, w: number): Block[] {
  return [
    headingBlock('Heights, mm', w),
    ...Object.values(storeys)
      .sort((a, b) => a.floorMm - b.floorMm)
      .map((s) => {
        const doubt = s.sureness === 'assumed' ? ', assumed until measured' : '';
        return factBlock(s.name, `floor ${s.floorMm} over the datum, ceiling ${s.ceilingMm} over it${doubt}`, w);
      }),
  ];
}

function overrideBlocks({ overrides }: Plan, w: number): Block[] {
  const all = Object.values(overrides);
  if (all.length === 0) return [];
  return [
    headingBlock("Limits from the appliance's own sheet", w),
    ...all.map((o) => {
      const where = [o.page.trim(), o.note.trim()].filter((t) => t !== '').join('; ');
      return factBlock(o.limit, `${o.value} ${o.unit}${where === '' ? '' : ` (${where})`}`, w);
    }),
  ];
}

/** What was read on site, who has given leave, and what has to be done before a day. */
function siteBlocks({ job }: Plan, w: number): Block[] {
  const { readings = [], permissions = [], holdPoints = [] } = job;
  const blocks: Block[] = [];
  if (readings.length > 0) blocks.push(headingBlock('Readings', w));
  for (const r of readings) {
    const figure = r.value === null ? NOT_TOLD : `${r.value} ${r.unit}`.trim();
    const rest = [r.place, r.on ?? '', r.note].filter((t) => t.trim() !== '').join(', ');
    blocks.push(factBlock(r.what, [figure, rest].filter((t) => t !== '').join('; '), w));
  }
  if (permissions.length > 0) blocks.push(headingBlock('Leave for the work', w));
  for (const p of permissions) {
    const given =
      p.given === null ? (p.asked === null ? 'not asked yet' : `asked ${p.asked}, not given yet`) : `given ${p.given}`;
    blocks.push(
      factBlock(p.what, [`from ${told(p.from)}: ${given}`, p.note].filter((t) => t.trim() !== '').join('; '), w),
    );
  }
  if (holdPoints.length > 0) blocks.push(headingBlock('Before going on', w));
  for (const h of holdPoints) {
    const state = h.done ? 'done' : 'not done';
    blocks.push(factBlock(h.what, [h.before, h.on ?? '', h.owner, state].filter((t) => t.trim() !== '').join(', '), w));
  }
  return blocks;
}

function assumedBlocks(report: Report, w: number): Block[] {
  const all = assumptionsOf(report);
  return [
    headingBlock('Assumed and derived', w),
    ...(all.length === 0 ? [textBlock('Nothing.', w, UNDER)] : all.map((say) => textBlock(say, w, UNDER))),
  ];
}

const SURE: Readonly<Record<string, string>> = {
  page: 'read on its page',
  quotation: 'read as a quotation',
  derived: 'worked out',
  practice: 'trade practice',
  memory: 'unverified',
};

function sourceBlocks(report: Report, w: number): Block[] {
  if (report.sources.length === 0) return [];
  return [
    headingBlock('Sources of the figures', w),
    ...report.sources.map((s) =>
      textBlock(SURE[s.sureness] === undefined ? s.title : `${s.title}: ${SURE[s.sureness]}`, w, {
        size: SHEET_TEXT.caption,
        under: 0.8,
      }),
    ),
  ];
}

const basis: SheetKind = {
  id: 'basis',
  order: 50,
  choices: () => [{ key: 'basis', label: 'Basis and what is assumed', usual: true, scales: [] }],
  pages(job, key, layout) {
    const { plan, report } = job;
    const sheet = {
      key,
      title: 'Basis and what is assumed',
      under: 'What the figures rest on. Change one of these and they change.',
      documentType: 'basis',
      blocks: (w: number) => [
        ...basisBlocks(job, w),
        ...storeyBlocks(plan, w),
        ...siteBlocks(plan, w),
        ...overrideBlocks(plan, w),
        ...assumedBlocks(report, w),
        ...sourceBlocks(report, w),
      ],
    };
    return flowPages(sheet, layout);
  },
};

export default basis;
