import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fittingKinds } from '../../src/catalogue/fittings.ts';
import { itemKinds } from '../../src/catalogue/items.ts';
import { pointKinds } from '../../src/catalogue/point-kinds.ts';
import { services } from '../../src/catalogue/services.ts';
import { tubeKinds } from '../../src/catalogue/tubes.ts';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Report } from '../../src/report/report.ts';
import { demoNames, demoPlan } from './demo-file.ts';

const font: { advances: Record<string, Record<string, number>> } = JSON.parse(
  readFileSync(new URL('../../shared/fonts/hanken-grotesk.json', import.meta.url), 'utf8'),
);
/** Ids that are no words: those with a hyphen or a capital inside. */
const ids = [fittingKinds, itemKinds, pointKinds, services, tubeKinds]
  .flatMap((registry) => [...registry.keys()])
  .filter((id) => /-|[a-z][A-Z]/.test(id) && id !== 'push-fit');

/** Every sentence and label of a report that a panel or a list puts on screen. */
function wordsOf(report: Report): string[] {
  const rows = report.sections.flatMap((s) => [s.title, s.answer, ...s.rows.flatMap((row) => Object.values(row))]);
  const lines = report.lines.flatMap((l) => [l.name, l.size, l.asked, l.note, l.unresolved]);
  const runs = report.runs.flatMap((r) => [
    r.name,
    r.bends,
    ...r.workings.flatMap((w) => [w.title, ...w.missing, ...w.assumed, ...w.steps.flatMap((s) => [s.label, s.how])]),
  ]);
  const legs = report.legs.flatMap((l) => l.fittings);
  const findings = report.findings.flatMap((f) => [f.title, f.why, f.todo, ...f.missing]);
  return [...rows, ...lines, ...runs, ...legs, ...findings].filter(
    (w): w is string => typeof w === 'string' && w !== '',
  );
}

describe.each(demoNames.flatMap((name) => (['before', 'after'] as const).map((when) => [name, when] as const)))(
  'what is said of %s, %s',
  (name, when) => {
    const words = wordsOf(evaluate(demoPlan(name), { option: 'A', when }));
    // Which sort of row or state it is stands among its values; these are words of the report's own shape.
    const shape = new Set(['cantTell']);
    const said = words.filter((w) => !shape.has(w));

    test('is in letters that the one font has', () => {
      expect(said.length).toBeGreaterThan(10);
      expect(said.filter((w) => [...w].some((c) => font.advances['400']?.[c] === undefined))).toEqual([]);
    });

    test('names nothing by the id it has in files', () => {
      expect(said.filter((w) => ids.some((id) => w.includes(id)))).toEqual([]);
      expect(said.filter((w) => /\b[a-z]+[A-Z]\w*\b/.test(w.replace(/\b(kW|kPa|kJ|kgK|mbar|MJ)\b/g, '')))).toEqual([]);
    });

    test('leaves nothing empty, doubled or unfilled', () => {
      expect(said.filter((w) => /undefined|NaN|null|Infinity|\{\w+\}| {2}|\(\)/.test(w))).toEqual([]);
    });
  },
);
