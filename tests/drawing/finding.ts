import { type Finding, findingKey, type Outcome } from '../../src/report/finding.ts';

/** A finding that says nothing but where it is and how bad. */
export function finding(rule: string, outcome: Outcome, at: Finding['at']): Finding {
  return {
    rule,
    key: findingKey(rule, [rule], 'A'),
    outcome,
    lifeSafety: false,
    topic: 'gas',
    ids: [rule],
    legs: [],
    title: rule,
    why: '',
    todo: '',
    found: null,
    wanted: null,
    wantedIs: null,
    at,
    more: 0,
    missing: [],
    working: null,
    cites: [],
    unverified: false,
  };
}
