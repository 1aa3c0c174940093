import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ruleBook } from '../../src/cli/book/rule-book.ts';
import { bestExample, drawExample, saidBy } from '../../src/cli/book/rule-example.ts';
import { rules } from '../../src/engine/evaluate.ts';

const FOLDER = 'shared/rules';

describe('the book of rules', () => {
  const book = ruleBook();

  test('is as fresh as the rules: npm run rules', () => {
    expect(readFileSync('shared/rules.md', 'utf8')).toBe(book.markdown);
  });

  test('tells every rule once', () => {
    for (const id of rules.keys()) expect(book.markdown.split(`### ${id}\n`)).toHaveLength(2);
  });

  test('shows no picture of a rule that is gone', () => {
    expect(existsSync(FOLDER)).toBe(true);
    expect(readdirSync(FOLDER).sort()).toEqual([...book.pictures.keys()].sort());
  });

  test.each([...book.pictures.keys()])('%s is drawn as it would be drawn now', (file) => {
    expect(readFileSync(`${FOLDER}/${file}`, 'utf8')).toBe(book.pictures.get(file));
  });

  test('shows a drawn example of every rule that speaks of a place', () => {
    for (const rule of rules.values()) {
      const best = bestExample(rule);
      expect(best === undefined, rule.id).toBe(
        !rule.examples.some((e) => e.expect !== 'pass' && saidBy(rule, e.given()).some((f) => f.at !== null)),
      );
      if (best) expect(best.svg).not.toBe(drawExample(best.example.given(), []));
    }
  });
});
