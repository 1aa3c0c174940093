import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { checkPlan } from '../../src/files/format/check-plan.ts';
import { MOST_DEPTH, type ReadPlan, readPlan } from '../../src/files/format/read-plan.ts';
import { VERSION } from '../../src/plan/envelope.ts';
import type { Plan } from '../../src/plan/plan.ts';

const flat = readFileSync(fileURLToPath(new URL('../../demo-plans/flat.plan.json', import.meta.url)), 'utf8');

type Loose = Record<string, Record<string, unknown>>;
/** The flat's file with something done to it. */
function changed(change: (plan: Record<string, Loose>, envelope: Record<string, unknown>) => void): ReadPlan {
  const envelope = JSON.parse(flat);
  change(envelope.plan, envelope);
  return readPlan(JSON.stringify(envelope));
}
function broken(read: ReadPlan) {
  if (read.kind !== 'broken') throw new Error(`${read.kind} instead of broken`);
  return read;
}
const sound = (plan: Plan | null): Plan => {
  expect(plan).not.toBeNull();
  expect(checkPlan(plan as unknown as Record<string, unknown>)).toEqual([]);
  return plan as Plan;
};

describe('a broken record', () => {
  test('is named with its field and what stands there', () => {
    const read = broken(changed((plan) => Object.assign(plan.runs!['B-f1']!, { service: 7 })));
    expect(read.problems).toEqual([
      { map: 'runs', id: 'B-f1', field: 'service', why: 'text was expected, 7 stands there' },
    ]);
    expect(read.sentence).toContain('One thing in this job cannot be read: run B-f1, field service: text was expected');
    expect(read.sentence).toContain('The file itself is left as it is.');
  });

  test('is left out of what is offered, with what hung on it and nothing else', () => {
    const read = broken(changed((plan) => Object.assign(plan.runs!['B-f1']!, { service: 7 })));
    const plan = sound(read.salvage);
    const whole = JSON.parse(flat).plan as Plan;
    expect(read.dropped.map((p) => `${p.map} ${p.id}`).sort()).toEqual([
      'legs B-f1-1',
      'legs B-f1-2',
      'legs B-f1-3',
      'runs B-f1',
    ]);
    const { 'B-f1': _gone, ...others } = whole.runs;
    expect(plan.runs).toEqual(others);
    expect(plan.points).toEqual(whole.points);
  });

  test('an option that cannot be read keeps everything that is new', () => {
    const read = broken(changed((plan) => Object.assign(plan.options!.A!, { fates: 'all' })));
    const plan = sound(read.salvage);
    expect(plan.options.A?.fates).toEqual({});
    expect(Object.keys(plan.legs)).toHaveLength(Object.keys(JSON.parse(flat).plan.legs).length);
    expect(read.dropped).toEqual([{ map: 'options', id: 'A', field: '', why: 'its name and fates are lost' }]);
  });

  test.each([
    [
      'a missing field',
      (p: Record<string, Loose>) => delete p.walls!.BW!.thicknessMm,
      'wall BW, field thicknessMm: is missing',
    ],
    [
      'a word out of the list',
      (p: Record<string, Loose>) => Object.assign(p.openings!.bw1!, { kind: 'hatch' }),
      'opening bw1, field kind',
    ],
    [
      'an id that is not its key',
      (p: Record<string, Loose>) => Object.assign(p.walls!.BW!, { id: 'BX' }),
      "wall BW, field id: calls itself 'BX'",
    ],
    [
      'a place a kilometre off',
      (p: Record<string, Loose>) => Object.assign(p.walls!.BW!, { a: { x: 2e6, y: 0 } }),
      'wall BW, field a.x: further than 1 km',
    ],
    ['a record that is a list', (p: Record<string, Loose>) => Object.assign(p.rooms!, { hall: [] }), 'room hall'],
    [
      'a number past all bounds',
      (p: Record<string, Loose>) => Object.assign(p.walls!.BW!, { thicknessMm: '1e999' }),
      'wall BW, field thicknessMm',
    ],
  ])('%s', (_what, change, said) => {
    const read = broken(changed((plan) => void change(plan)));
    expect(read.sentence).toContain(said);
    sound(read.salvage);
  });
});

describe('a pointer that leads nowhere', () => {
  test('is a problem, and what hangs on it goes', () => {
    const read = broken(changed((plan) => delete plan.nodes!['B-hob-tee']));
    expect(read.problems.map((p) => p.id).sort()).toEqual(['B-g1-4', 'B-g2-1', 'B-g3-1']);
    expect(read.problems[0]?.why).toBe('names node B-hob-tee, which is not in the plan');
    expect(Object.keys(sound(read.salvage).legs)).not.toContain('B-g2-1');
  });

  test('to something that may be untold is only let go', () => {
    const read = broken(changed((plan) => delete plan.rooms!.hall));
    const plan = sound(read.salvage);
    expect(plan.voids.BV1?.bottom).toBeNull();
    expect(read.dropped).toEqual([
      { map: 'voids', id: 'BV1', field: 'bottom', why: 'no longer names floor hall, which is not there' },
    ]);
  });

  test('is not taken for a name every object has', () => {
    const read = broken(changed((plan) => Object.assign(plan.legs!['B-g1-1']!, { run: 'constructor' })));
    expect(read.problems[0]).toMatchObject({ map: 'legs', id: 'B-g1-1', field: 'run' });
  });
});

describe('versions', () => {
  test('a newer version is open to look at only', () => {
    const read = changed((_plan, envelope) => Object.assign(envelope, { version: VERSION + 1, writer: 'Kickset 9' }));
    if (read.kind !== 'newer') throw new Error(read.kind);
    expect(read.sentence).toContain(`by Kickset 9 in version ${VERSION + 1}`);
    expect(read.sentence).toContain('to look at only');
    expect(Object.keys(read.plan?.runs ?? {})).toContain('B-g1');
  });

  test('a newer version that cannot be drawn says so', () => {
    const read = changed((_plan, envelope) => Object.assign(envelope, { version: VERSION + 1, plan: { all: 'new' } }));
    if (read.kind !== 'newer') throw new Error(read.kind);
    expect(read.plan).toBeNull();
    expect(read.sentence).toContain('cannot be shown');
  });

  test('a newer minor stays editable and keeps what it added', () => {
    const read = changed((plan, envelope) => {
      envelope.minor = 99;
      Object.assign(plan, { sketches: { k1: { id: 'k1', strokes: [1, 2] } } });
      Object.assign(plan.runs!['B-g1']!, { pressureClass: 'low' });
    });
    if (read.kind !== 'ok') throw new Error(read.sentence);
    expect(read.fromNewer).toBe(true);
    expect(read.plan).toHaveProperty('sketches.k1.strokes', [1, 2]);
    expect(read.plan.runs['B-g1']).toHaveProperty('pressureClass', 'low');
  });

  test.each([0, -1, 1.5, '1', null])('version %j is none', (version) => {
    const read = broken(changed((_plan, envelope) => Object.assign(envelope, { version })));
    expect(read.sentence).toContain('its version is not a whole number');
    sound(read.salvage);
  });
});

describe('what is not a job', () => {
  test.each([
    ['', 'This file cannot be read as a job: the text breaks off (line 1, column 1).'],
    ['\u0089PNG\r\n', 'This file cannot be read as a job: a value should stand here (line 1, column 1).'],
    ['[1,2]', 'This file is not a Kickset job.'],
    ['{"format":"other","version":1}', 'This file is not a Kickset job.'],
    ['{"a":1,\n  "b" 2}', 'This file cannot be read as a job: a colon should stand here (line 2, column 7).'],
    ['['.repeat(MOST_DEPTH + 1), `This file is nested ${MOST_DEPTH + 1} levels deep, as no job is. It was not read.`],
  ])('%j', (text, sentence) => {
    expect(readPlan(text)).toEqual({ kind: 'notPlan', sentence });
  });

  test('a mark of byte order before the text does no harm', () => {
    expect(readPlan(`\ufeff${flat}`).kind).toBe('ok');
  });
});

describe('a damaged file', () => {
  test('that breaks off gives back every whole record before the break', () => {
    const cut = flat.indexOf('"B-h1-2"');
    const read = broken(readPlan(flat.slice(0, cut + 40)));
    expect(read.sentence).toMatch(/^This file is damaged: the text breaks off \(line \d+, column \d+\)\./);
    const plan = sound(read.salvage);
    expect(Object.keys(plan.legs)).toContain('B-h1-1');
    expect(Object.keys(plan.legs)).not.toContain('B-h1-2');
    expect(read.dropped.map((p) => p.field)).toContain('options');
  });

  test('says the line and column of a slip made by hand', () => {
    const line = flat.slice(0, flat.indexOf('"walls"')).split('\n').length;
    const read = broken(readPlan(flat.replace('"walls": {', '"walls" {')));
    expect(read.sentence).toContain(`a colon should stand here (line ${line}, column 11)`);
  });

  test('with a name twice in one place is not read as if nothing were the matter', () => {
    const read = broken(readPlan(flat.replace('"runs": {', '"runs": {"B-g1": {},')));
    expect(read.problems).toEqual([{ map: 'file', id: '', field: 'B-g1', why: 'stands twice' }]);
    sound(read.salvage);
  });
});

describe('names that do harm', () => {
  const poisoned = (text: string, at: string, what: string) => text.replace(at, `${at} ${what},`);
  test.each([
    ['in the plan', poisoned(flat, '"plan": {', '"__proto__": {"readOnly": true}')],
    ['among the runs', poisoned(flat, '"runs": {', '"__proto__": {"id": "__proto__"}')],
    ['in a record', poisoned(flat, '"B-g1": {', '"__proto__": {"option": "A"}')],
    ['deep in an unknown field', poisoned(flat, '"B-g1": {', '"more": [{"a": {"__proto__": {"x": 1}}}]')],
    ['as the name of a record', poisoned(flat, '"runs": {', '"constructor": {"id": "constructor"}')],
  ])('%s', (_where, text) => {
    const read = broken(readPlan(text));
    expect(read.problems.length).toBeGreaterThan(0);
    const plan = sound(read.salvage);
    expect(Object.getPrototypeOf(plan)).toBe(Object.prototype);
    expect(Object.getPrototypeOf(plan.runs)).toBe(Object.prototype);
    expect(({} as Record<string, unknown>).readOnly).toBeUndefined();
    expect(Object.keys(plan.runs)).toContain('B-g1');
  });

  test('picture data that is no text is named and left behind', () => {
    const read = broken(changed((_plan, envelope) => Object.assign(envelope, { blobs: { a: 1, b: 'eA==' } })));
    expect(read.problems).toEqual([{ map: 'blobs', id: 'a', field: '', why: 'is not text' }]);
    expect(read.blobs).toEqual({ b: 'eA==' });
  });
});
