import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { pointKinds } from '../../src/catalogue/point-kinds.ts';
import { tubeKinds } from '../../src/catalogue/tubes.ts';
import { applyRule } from '../../src/engine/apply-rule.ts';
import type { Example, Rule, Sentences } from '../../src/engine/define-rule.ts';
import { rules } from '../../src/engine/evaluate.ts';
import { give } from '../../src/engine/given.ts';
import type { Case, Plan } from '../../src/plan/plan.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { source, table, tables } from '../../src/reference/tables.ts';
import type { Finding } from '../../src/report/finding.ts';
import type { Cite } from '../../src/report/working.ts';
import { ALWAYS_KNOWN, SAID_ELSEWHERE } from './rule-exceptions.ts';

const AFTER: Case = { option: 'A', when: 'after' };
const RANK = ['stop', 'check', 'cantTell', 'note'];
const files = import.meta.glob<Rule>('../../src/engine/rules/*/*.rule.ts', { eager: true, import: 'default' });
const font: { advances: Record<string, Record<string, number>> } = JSON.parse(
  readFileSync(new URL('../../shared/fonts/hanken-grotesk.json', import.meta.url), 'utf8'),
);
/** Verdicts that only a person may give. */
const VERDICT = /\b(complian(t|ce)|complies|approv(ed|al)|certified|safe)\b/i;

const findingsOf = (rule: Rule, plan: Plan): Finding[] => applyRule(rule, give(plan, AFTER));
const sentencesOf = (rule: Rule): [string, Sentences][] =>
  Object.entries(rule.say).filter((e): e is [string, Sentences] => typeof e[1] !== 'string');
const saidKeys = (rule: Rule, example: Example): string[] => {
  const given = give(example.given(), AFTER);
  return rule.judge(given, rule.params(given)).map((f) => f.say ?? (f.outcome === 'cantTell' ? 'cantTell' : 'fault'));
};

function checkCite(cite: Cite): void {
  expect(source(cite.source).id).toBe(cite.source);
  expect(cite.clause.trim()).not.toBe('');
  if (cite.table !== undefined) expect(table(cite.table).id).toBe(cite.table);
}

/** Three sentences a person can read off the drawing, in letters the one font has. */
function checkWords(finding: Finding): void {
  const { title, why, todo } = finding;
  for (const words of [title, why, todo]) {
    expect(words.trim()).toBe(words);
    expect(words).not.toMatch(/[{}]|undefined|null|NaN|Infinity| {2}/);
    expect(words.length).toBeGreaterThan(9);
    expect(words).not.toMatch(VERDICT);
    // Ids of the catalogue are for files, not for people.
    expect(words).not.toMatch(/[a-z][A-Z]/);
    expect([...pointKinds.keys(), ...tubeKinds.keys()].filter((id) => id.includes('-') && words.includes(id))).toEqual(
      [],
    );
    expect([...words].filter((c) => font.advances['400']?.[c] === undefined)).toEqual([]);
    expect(words).toMatch(/^["'A-Z0-9]/);
  }
  expect(title).not.toMatch(/[.,;:]$/);
  expect(why).toMatch(/[.?]$/);
  expect(todo).toMatch(/[.?]$/);
}

function checkPlaces(plan: Plan, finding: Finding): void {
  const kinds = ['runs', 'points', 'voids', 'walls', 'openings', 'rooms'] as const;
  expect(finding.ids.length).toBeGreaterThan(0);
  expect(finding.ids.filter((id) => !kinds.some((kind) => Object.hasOwn(plan[kind], id)))).toEqual([]);
  expect([...finding.ids].sort()).toEqual(finding.ids);
  expect(finding.legs.filter((id) => !Object.hasOwn(plan.legs, id) && !Object.hasOwn(plan.stretches, id))).toEqual([]);
  if (finding.at === null) return;
  expect(Object.hasOwn(plan.storeys, finding.at.storey)).toBe(true);
  expect([finding.at.x, finding.at.y, finding.at.z].every(Number.isFinite)).toBe(true);
}

test('no two rules share an id, and each id is the path of its file', () => {
  const paths = Object.keys(files).map((path) => path.replace(/^.*\/rules\/(.*)\.rule\.ts$/, '$1'));
  expect(Object.values(files).map((rule) => rule.id)).toEqual(paths);
  expect([...rules.keys()]).toEqual([...paths].sort());
});

test('exceptions are those of rules that are there, and still needed', () => {
  for (const [id, keys] of Object.entries(SAID_ELSEWHERE)) {
    const said = new Set((rules.get(id)?.examples ?? []).flatMap((e) => saidKeys(rules.get(id) as Rule, e)));
    expect(Object.keys(keys).filter((key) => said.has(key) || rules.get(id)?.say[key] === undefined)).toEqual([]);
  }
  for (const id of Object.keys(ALWAYS_KNOWN)) {
    expect(rules.get(id)?.examples.some((e) => e.expect === 'cantTell')).toBe(false);
  }
});

describe.each([...rules.values()])('$id', (rule) => {
  test('cites what can be opened', () => {
    expect(rule.cites.length).toBeGreaterThan(0);
    for (const cite of rule.cites) checkCite(cite);
  });

  test('takes every number from a table', () => {
    for (const example of rule.examples) {
      for (const [name, figure] of Object.entries(rule.params(give(example.given(), AFTER)))) {
        if (figure.is !== 'known') continue;
        expect(
          tables().map((t) => t.id),
          name,
        ).toContain(figure.cite.table);
        checkCite(figure.cite);
      }
    }
  });

  test('says what is wrong, why it matters and what to do', () => {
    expect(rule.say.pass.trim()).not.toBe('');
    expect(rule.needs.length).toBeGreaterThan(0);
    for (const [, { title, why, todo }] of sentencesOf(rule)) {
      for (const part of [title, why, todo]) expect(part.trim()).not.toBe('');
      expect(new Set([title, why, todo]).size).toBe(3);
    }
  });

  test('has an example of nothing to say, of something to say, and of not knowing', () => {
    const expected = rule.examples.map((e) => e.expect);
    expect(expected).toContain('pass');
    expect(expected.some((e) => e !== 'pass')).toBe(true);
    if (!Object.hasOwn(ALWAYS_KNOWN, rule.id)) expect(expected).toContain('cantTell');
    expect(new Set(rule.examples.map((e) => e.name)).size).toBe(rule.examples.length);
  });

  test('shows each of its sentences in an example', () => {
    const said = new Set(rule.examples.flatMap((e) => saidKeys(rule, e)));
    const unsaid = sentencesOf(rule).map(([key]) => key);
    const elsewhere = Object.keys(SAID_ELSEWHERE[rule.id] ?? {});
    const saidWords = new Set([...said].map((key) => rule.say[key]));
    const never = Object.hasOwn(ALWAYS_KNOWN, rule.id) ? ['cantTell'] : [];
    expect(
      unsaid.filter((key) => !saidWords.has(rule.say[key]) && !elsewhere.includes(key) && !never.includes(key)),
    ).toEqual([]);
  });

  describe.each(rule.examples)('$name', (example) => {
    const plan = example.given();
    const findings = findingsOf(rule, plan);
    const worst = RANK.find((outcome) => findings.some((f) => f.outcome === outcome)) ?? 'pass';

    test('stands on a sound plan', () => {
      expect(danglingReferences(plan)).toEqual([]);
    });

    test('comes out as told', () => {
      expect(worst).toBe(example.expect);
      const first = findings.find((f) => f.outcome === worst);
      if (!example.found) return;
      const { lo, hi, tolerance } = example.found;
      expect(Math.abs((first?.found?.lo ?? Number.NaN) - lo)).toBeLessThanOrEqual(tolerance);
      expect(Math.abs((first?.found?.hi ?? Number.NaN) - hi)).toBeLessThanOrEqual(tolerance);
      expect(example.from ?? '').not.toBe('');
    });

    test('says it in whole words, at a place, of things that are there', () => {
      for (const finding of findings) {
        checkWords(finding);
        checkPlaces(plan, finding);
        for (const cite of finding.cites) checkCite(cite);
        expect(finding.missing.length > 0).toBe(finding.outcome === 'cantTell');
      }
    });
  });
});
