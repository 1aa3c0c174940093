import type { Finding, FindingLimit } from '../report/finding.ts';
import { findingKey } from '../report/finding.ts';
import { roundQuantity } from '../report/quantity.ts';
import { roundWorking } from '../report/working.ts';
import { type Fault, fill, type Rule, type Sentences, type Words } from './define-rule.ts';
import type { Given } from './given.ts';

function sentencesOf(rule: Rule, fault: Fault): Sentences {
  const key = fault.say ?? (fault.outcome === 'cantTell' ? 'cantTell' : 'fault');
  const found = rule.say[key];
  if (found === undefined || typeof found === 'string') throw new Error(`${rule.id} has no sentences "${key}"`);
  return found;
}

/** The limit in words for a reader, with what the job has in its place. */
function limitOf(given: Given, { limit, wanted }: Fault): { readonly limit?: FindingLimit } {
  if (!limit || !wanted) return {};
  const all = Object.values(given.plan.overrides).filter((o) => o.limit === limit.id);
  const own = all.find((o) => o.scope !== null && o.scope === limit.scope) ?? all.find((o) => o.scope === null);
  const told = own && own.unit === wanted.unit ? { id: own.id, page: own.page, note: own.note } : null;
  return { limit: { ...limit, unit: wanted.unit, own: told } };
}

function toFinding(rule: Rule, fault: Fault, given: Given, params: Awaited<ReturnType<Rule['params']>>): Finding {
  const { title, why, todo } = sentencesOf(rule, fault);
  const words: Words = { missing: (fault.missing ?? []).join(', '), ...fault.words };
  const ids = [...new Set(fault.ids)].sort();
  const wanted = fault.wanted ?? null;
  const used = Object.values(params).filter((p) => p.is === 'known');
  return {
    rule: rule.id,
    key: findingKey(rule.id, ids, given.case.when === 'after' ? given.case.option : 'before'),
    outcome: fault.outcome,
    lifeSafety: rule.lifeSafety,
    topic: rule.topic,
    ids,
    legs: [...new Set(fault.legs ?? [])].sort(),
    title: fill(title, words),
    why: fill(why, words),
    todo: fill(todo, words),
    found: fault.found ? roundQuantity(fault.found) : null,
    wanted: wanted ? roundQuantity(wanted) : null,
    wantedIs: wanted ? (fault.wantedIs ?? 'atMost') : null,
    at: fault.at ?? null,
    more: fault.more ?? 0,
    missing: fault.missing ?? [],
    working: fault.working ? roundWorking(fault.working) : null,
    cites: fault.cites ?? rule.cites,
    unverified:
      fault.unverified ??
      (used.some((p) => p.sureness === 'memory') ||
        wanted?.sureness === 'memory' ||
        fault.found?.sureness === 'memory'),
    ...limitOf(given, fault),
  };
}

/** Findings of one rule, one a key: the worst of those that share it. */
export function applyRule(rule: Rule, given: Given): Finding[] {
  const params = rule.params(given);
  return rule.judge(given, params).map((fault) => toFinding(rule, fault, given, params));
}
