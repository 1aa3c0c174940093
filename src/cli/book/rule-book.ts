import { example, give, type Rule, ruleFacts, rules, type Sentences } from '../../engine/evaluate.ts';
import { source } from '../../reference/tables.ts';
import { sayQuantity } from '../../report/quantity.ts';
import type { Cite } from '../../report/working.ts';
import { bestExample } from './rule-example.ts';

/** The book and its pictures, by the name of each file in the folder it is written to. */
export interface RuleBook {
  readonly markdown: string;
  readonly pictures: ReadonlyMap<string, string>;
}

const BASIS = {
  law: 'law',
  requirement: 'asked for by a standard or regulation',
  recommendation: 'recommended',
  practice: 'common practice, no source',
} as const;

/** How a figure came to be here, in the words the screen uses. */
const SURE = {
  page: 'read on its page',
  quotation: 'read as a quotation',
  derived: 'own arithmetic',
  practice: 'common practice, no source',
  memory: 'unverified: from memory',
  none: 'no page of its own',
} as const;

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');
const pictureOf = (rule: Rule): string => `${rule.id.replace('/', '-')}.svg`;

function sayCite(cite: Cite): string {
  const s = source(cite.source);
  return [s.title, cite.clause].filter(Boolean).join(', ');
}

function sentencesOf(rule: Rule): string[] {
  return Object.entries(rule.say).flatMap(([key, told]): string[] => {
    if (key === 'pass' || typeof told === 'string') return [];
    const { title, why, todo } = told as Sentences;
    return [`- **${title}.** ${why} ${todo}`];
  });
}

function figuresOf(rule: Rule): string[] {
  // Figures are those of a new job: an edition pinned by a job may give others.
  const facts = ruleFacts(rule, give(example().plan, { option: null, when: 'after' }));
  if (facts.figures.length === 0) return [];
  const rows = facts.figures.map(
    ({ title, figure, cite }) =>
      `| ${cell(title)} | ${cell(sayQuantity(figure))} | ${SURE[figure.sureness]} | ${cell(sayCite(cite))} |`,
  );
  return ['', '| Figure | | Sureness | Source |', '| --- | --- | --- | --- |', ...new Set(rows)];
}

function chapter(rule: Rule, pictures: Map<string, string>): string[] {
  const best = bestExample(rule);
  if (best) pictures.set(pictureOf(rule), `${best.svg.trimEnd()}\n`);
  return [
    `### ${rule.id}`,
    '',
    `${rule.say.pass} *${BASIS[rule.basis]}${rule.lifeSafety ? '; law or life safety' : ''}.*`,
    '',
    ...rule.cites.map((c) => `Source: ${sayCite(c)} (${SURE[source(c.source).read]}).`),
    ...(rule.needs.length > 0 ? ['', `Needs: ${rule.needs.join('; ')}.`] : []),
    '',
    'What it says:',
    '',
    ...sentencesOf(rule),
    ...figuresOf(rule),
    '',
    ...(best
      ? [
          `![${best.example.name}](rules/${pictureOf(rule)})`,
          '',
          `Drawn: ${best.example.name}. Said of it: ${best.finding.title}.`,
        ]
      : ['Nothing of it lies at one place, so nothing is drawn.']),
    '',
  ];
}

/** Every rule by topic: what it asks, from where and how sure, what it says, and an example it speaks of, drawn. */
export function ruleBook(): RuleBook {
  const pictures = new Map<string, string>();
  const topics = [...new Set([...rules.values()].map((r) => r.topic))].sort();
  const lines = [
    '# Rules',
    '',
    'Written by `npm run rules`; a test keeps it fresh. What stands in braces is filled from the drawing. Figures are those',
    'of a new job; where editions differ the basis of the job chooses. A rule compares; the registered engineer decides, and',
    "local rules and the appliance's own instructions go first.",
    '',
    ...topics.flatMap((topic) => [
      `## ${topic.charAt(0).toUpperCase()}${topic.slice(1)}`,
      '',
      ...[...rules.values()].filter((r) => r.topic === topic).flatMap((rule) => chapter(rule, pictures)),
    ]),
  ];
  return { markdown: `${lines.join('\n').trimEnd()}\n`, pictures };
}
