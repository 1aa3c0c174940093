import { differences, tally } from '../../engine/evaluate.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import {
  type Difference,
  type Standing,
  sayTally,
  type TallyFigure,
  type TallyRow,
  tallyRows,
} from '../../report/tally.ts';
import { defineVerb, FINE } from '../define-verb.ts';
import { openFile } from '../open-file.ts';

const usage = 'compare FILE [--json]';

const STANDING: Readonly<Record<Exclude<Standing, null>, string>> = {
  best: 'best',
  level: '',
  close: 'too near to tell',
};

/** Before the work, then after every option by its name. */
function casesOf(plan: Plan): readonly { readonly name: string; readonly chosen: Case }[] {
  const options = Object.values(plan.options).sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  return [
    { name: 'Before', chosen: { option: options[0]?.id ?? null, when: 'before' } },
    ...options.map((o) => ({ name: o.name, chosen: { option: o.id, when: 'after' } as const })),
  ];
}

function sayCell(cell: TallyFigure, standing: Standing): string {
  const { figure, under } = sayTally(cell);
  return [figure, standing === null ? '' : STANDING[standing], under].filter((s) => s !== '').join('; ') || '-';
}

function sayRow(row: TallyRow, names: readonly string[]): string {
  const lines = row.cells.flatMap((cell, i) =>
    cell === null ? [] : [`    ${names[i]}: ${sayCell(cell, row.standing[i] ?? null)}`],
  );
  const level = row.standing.includes('level') ? ' (same in every option)' : '';
  return [`${row.label}${level}`, ...lines].join('\n');
}

const sayDifference = (d: Difference): string => `    ${d.kind}: ${d.name}${d.say === '' ? '' : `: ${d.say}`}`;

function sayDifferences(title: string, all: readonly Difference[]): string {
  const systems = [...new Set(all.map((d) => d.system))];
  const parts = systems.map((system) =>
    [`  ${system}`, ...all.filter((d) => d.system === system).map(sayDifference)].join('\n'),
  );
  return [title, ...(parts.length === 0 ? ['  nothing'] : parts)].join('\n');
}

export default defineVerb({
  id: 'compare',
  usage,
  about: 'before and every option side by side, and what differs between them',
  flags: ['json'],
  async run(call, terminal) {
    const plan = openFile(call, terminal, usage);
    const cases = casesOf(plan);
    const tallies = cases.map(({ chosen }) => tally(plan, chosen));
    const [before, first, ...others] = cases;
    const pairs = [...(before && first ? [[before, first]] : []), ...others.map((o) => [first, o])].flatMap(([a, b]) =>
      a && b ? [{ from: a, to: b, all: differences(plan, a.chosen, b.chosen) }] : [],
    );
    if (call.flags.json) {
      const told = pairs.map((p) => ({ from: p.from.chosen, to: p.to.chosen, differences: p.all }));
      terminal.out(`${JSON.stringify({ tallies, differences: told }, null, 2)}\n`);
      return FINE;
    }
    const names = cases.map((c) => c.name);
    const rows = tallyRows(tallies);
    const groups = [...new Set(rows.map((r) => r.group))].map((group) =>
      [`# ${group}`, ...rows.filter((r) => r.group === group).map((r) => sayRow(r, names))].join('\n'),
    );
    const said = pairs.map((p) => sayDifferences(`# What differs: ${p.to.name} from ${p.from.name}`, p.all));
    terminal.out(`${[...groups, ...said].join('\n\n')}\n`);
    return FINE;
  },
});
