import { type Figure, figure, word } from '../../reference/figure.ts';
import { table } from '../../reference/tables.ts';
import { againstMost, type Quantity, type Verdict } from '../../report/quantity.ts';
import type { Cite, Working, WorkingStep } from '../../report/working.ts';

const TABLE = 'discharge-d2';

/** Outlets of safety valves the table knows: "G1/2", "G3/4", "G1". */
export const valveOutlets = (): string[] => [
  ...new Set(
    table(TABLE).rows.flatMap((r) => {
      const found = word(TABLE, r.key, 'outlet');
      return found.is === 'known' ? [found.word] : [];
    }),
  ),
];

/** "G 1/2", as it is said. */
export const sayOutlet = (outlet: string): string => outlet.replace(/^G(?=\d)/, 'G ');

/** One size of copper from the tundish on, held against the table. */
export interface SizeChoice {
  /** Nominal outside diameter, mm: 22, 28, 35… */
  readonly size: number;
  /** Longest straight pipe it stands for, m. */
  readonly most: Quantity;
  /** What each elbow or bend counts for, m. */
  readonly bend: Quantity;
  /** Measured length and bends together, m of straight pipe. */
  readonly total: Quantity;
  /** Metres that may still be added; below zero: too long by that much. Null where the length has no upper bound. */
  readonly leftM: number | null;
  readonly verdict: Verdict | 'cantTell';
  readonly cite: Cite;
}

export interface DischargeAsk {
  readonly outlet: string;
  readonly lengthM: Quantity;
  readonly bends: { readonly lo: number; readonly hi: number };
}

const known = (f: Figure) => (f.is === 'known' ? f : undefined);

/** Every size of the table for one valve outlet, smallest first; none where the table does not have the outlet. */
export function sizeChoices({ outlet, lengthM, bends }: DischargeAsk): SizeChoice[] {
  return table(TABLE)
    .rows.flatMap((row): SizeChoice[] => {
      const of = word(TABLE, row.key, 'outlet');
      const [size, most, bend] = ['size', 'mostM', 'bendM'].map((c) => known(figure(TABLE, row.key, c)));
      if (of.is !== 'known' || of.word !== outlet || !size || !most || !bend) return [];
      const total: Quantity = {
        lo: lengthM.lo + bends.lo * bend.lo,
        hi: lengthM.hi === null ? null : lengthM.hi + bends.hi * bend.lo,
        value: lengthM.value === null || bends.lo !== bends.hi ? null : lengthM.value + bends.lo * bend.lo,
        unit: 'm',
        digits: 1,
        sureness: most.sureness,
      };
      // 9.0 as the sum of tenths must not fail by the last bit of a float.
      const hair = 1e-9;
      return [
        {
          size: size.lo,
          most,
          bend,
          total,
          leftM: total.hi === null ? null : most.lo - total.hi,
          verdict: againstMost(total, most.lo + hair),
          cite: { source: most.cite.source, clause: most.cite.clause, table: most.cite.table },
        },
      ];
    })
    .sort((a, b) => a.size - b.size);
}

/** The smallest size that passes for certain; undefined where none does, and an engineer has to calculate it. */
export const leastSize = (ask: DischargeAsk): SizeChoice | undefined =>
  sizeChoices(ask).find((c) => c.verdict === 'pass');

const sayBends = ({ lo, hi }: DischargeAsk['bends']): string => (lo === hi ? `${lo}` : `${lo} to ${hi}`);

/** Size by size until one passes, as it is done on paper. The result is the size in mm; null where none passes. */
export function dischargeSize(ask: DischargeAsk): Working {
  const choices = sizeChoices(ask);
  const won = choices.findIndex((c) => c.verdict === 'pass');
  const tried = won < 0 ? choices : choices.slice(0, won + 1);
  const steps: WorkingStep[] = tried.map((c) => ({
    label: `${c.size}: ${c.verdict === 'pass' ? 'passes' : 'too long'}, at most ${c.most.lo.toFixed(1)} m`,
    how: `${(ask.lengthM.hi ?? ask.lengthM.lo).toFixed(1)} m + ${sayBends(ask.bends)} x ${c.bend.lo.toFixed(1)} m`,
    result: c.total,
    cites: [c.cite],
  }));
  const choice = choices[won];
  const last = choices[choices.length - 1];
  return {
    title: `Discharge pipe from the tundish, ${sayOutlet(ask.outlet)}`,
    steps,
    result: choice
      ? { lo: choice.size, hi: choice.size, value: choice.size, unit: 'mm', digits: 0, sureness: choice.most.sureness }
      : null,
    missing: choice
      ? []
      : [
          last
            ? `a size for more than ${last.most.lo.toFixed(0)} m of straight pipe: an engineer has to calculate it`
            : `sizes for an outlet of ${sayOutlet(ask.outlet)}`,
        ],
    assumed: ['copper tube; a pulled bend counts the same as an elbow'],
  };
}
