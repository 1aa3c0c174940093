import { describe, expect, test } from 'vitest';
import type { Finding, Outcome } from '../../src/report/finding.ts';
import { countOutcomes, groupFindings } from '../../src/view/panels/findings/group-findings.ts';
import { placesOf } from '../../src/view/panels/findings/place-of-finding.ts';
import { demoPlan } from '../engine/demo-file.ts';

const finding = (
  key: string,
  outcome: Outcome,
  topic: string,
  at: Finding['at'] = null,
  ids: string[] = [],
): Finding => ({
  rule: 'a/b',
  key,
  outcome,
  lifeSafety: false,
  topic,
  ids,
  legs: [],
  title: key,
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
});

const ALL = [
  finding('n', 'note', 'gas'),
  finding('c1', 'check', 'water'),
  finding('s', 'stop', 'flue'),
  finding('c2', 'check', 'gas'),
  finding('t', 'cantTell', 'flue'),
];
const keys = (of: readonly Finding[]): string => of.map((f) => f.key).join(' ');

describe('findings put together', () => {
  test('worst first, all in one; as bad stays as it came', () => {
    const [one, ...more] = groupFindings(ALL, 'worst', () => '');
    expect(more).toEqual([]);
    expect(one?.title).toBe('');
    expect(keys(one?.findings ?? [])).toBe('s c1 c2 t n');
  });

  test('by topic: the topic with the worst comes first', () => {
    const groups = groupFindings(ALL, 'topic', () => '');
    expect(groups.map((g) => `${g.title}: ${keys(g.findings)}`)).toEqual(['Flue: s t', 'Water: c1', 'Gas: c2 n']);
  });

  test('nothing is lost and nothing is said twice, however it is put together', () => {
    for (const by of ['worst', 'place', 'topic'] as const) {
      const told = groupFindings(ALL, by, (f) => f.topic).flatMap((g) => g.findings);
      expect(told.map((f) => f.key).sort()).toEqual(ALL.map((f) => f.key).sort());
    }
  });

  test('counts of each kind, worst first, without empty ones', () => {
    expect(countOutcomes(ALL).map((c) => `${c.outcome} ${c.count}`)).toEqual([
      'stop 1',
      'check 2',
      'cantTell 1',
      'note 1',
    ]);
    expect(countOutcomes([])).toEqual([]);
  });
});

describe('where a finding lies', () => {
  const plan = demoPlan('flat');
  const place = placesOf(plan);

  test('is the room of its place, the floor where there is none, and else the whole job', () => {
    const storey = Object.keys(plan.storeys)[0] ?? '';
    const [room] = Object.values(plan.rooms).filter((r) => r.storey === storey && r.name !== '');
    const at = { storey, x: room?.seed.x ?? 0, y: room?.seed.y ?? 0, z: 0, ring: false };
    expect(place(finding('k', 'stop', 'gas', at))).toBe(room?.name);
    expect(place(finding('k', 'stop', 'gas', { ...at, x: -9000 }))).toMatch(/outside or in a wall$/);
    expect(place(finding('k', 'stop', 'gas'))).toBe('The whole job');
  });

  test('a room that is told goes first', () => {
    const [room] = Object.values(plan.rooms);
    expect(place(finding('k', 'stop', 'gas', null, [room?.id ?? '']))).toBe(room?.name);
  });
});
