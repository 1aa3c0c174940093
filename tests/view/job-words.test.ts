import { describe, expect, it } from 'vitest';
import { type Ask, readTold } from '../../src/view/job/line-form.tsx';
import {
  answerHoldPoints,
  answerPermissions,
  answerReadings,
  sayDate,
  sayHoldPoint,
  sayPermission,
  sayReading,
} from '../../src/view/job/say-job.ts';
import { sayBytes, sayLost, sayUse } from '../../src/view/photos/say-pictures.ts';

const permission = { what: 'flue', from: 'freeholder', asked: null, given: null, note: '' };
const hold = { what: 'drain', before: 'the pour', on: null, owner: '', done: false };

describe('lines of the job card', () => {
  it('say what stands and what is still to come', () => {
    expect(sayPermission(permission)).toEqual({ what: 'flue', figure: 'to ask', more: 'from freeholder', open: true });
    expect(sayPermission({ ...permission, asked: '2026-05-01' })).toMatchObject({
      figure: 'asked',
      more: 'from freeholder; asked 1 May 2026',
      open: true,
    });
    expect(sayPermission({ ...permission, given: '2026-05-09', note: 'by letter' })).toMatchObject({
      figure: 'given',
      more: 'from freeholder; given 9 May 2026; by letter',
      open: false,
    });
    expect(sayHoldPoint({ ...hold, on: '2026-06-12', owner: 'builder' })).toMatchObject({
      figure: 'open',
      more: 'before the pour; 12 June 2026; builder',
    });
    const reading = { what: 'Gas rate', value: null, unit: 'm³/h', on: null, place: 'meter', note: '' };
    expect(sayReading(reading)).toMatchObject({ figure: 'not read', open: true });
    expect(sayReading({ ...reading, value: 0 })).toMatchObject({ figure: '0 m³/h', open: false });
    expect(sayDate('some day')).toBe('some day');
  });

  it('answer in a few words while they are closed', () => {
    expect(answerPermissions([])).toBe('none');
    const asked = { ...permission, asked: '2026-05-01' };
    expect(answerPermissions([permission, asked, { ...asked, given: '2026-05-02' }])).toBe(
      '1 given, 1 asked, 1 to ask',
    );
    expect(answerHoldPoints([])).toBe('none');
    expect(answerHoldPoints([{ ...hold, done: true }])).toBe('all done');
    expect(answerHoldPoints([hold, { ...hold, what: 'sleeve' }])).toBe('2 open');
    const dated = { ...hold, what: 'sleeve', on: '2026-06-12' };
    expect(answerHoldPoints([hold, { ...dated, on: '2026-07-01' }, dated])).toBe('12 June 2026, sleeve');
    expect(answerReadings([])).toBe('none');
  });
});

describe('a line that is typed', () => {
  const asks: readonly Ask[] = [
    { key: 'what', label: 'What was read', kind: 'text', wanted: true },
    { key: 'value', label: 'Value', kind: 'number' },
    { key: 'on', label: 'Read on', kind: 'date' },
    { key: 'done', label: 'Done', kind: 'tick' },
  ];
  it('is read field by field', () => {
    expect(readTold(asks, { what: ' rate ', value: '2,15', on: '', done: true })).toEqual({
      told: { what: 'rate', value: 2.15, on: null, done: true },
    });
    expect(readTold(asks, { what: 'rate', value: '', on: '2026-05-01' })).toEqual({
      told: { what: 'rate', value: null, on: '2026-05-01', done: false },
    });
  });
  it('says what is wrong, and where', () => {
    expect(readTold(asks, { what: 'rate', value: 'twenty' })).toEqual({
      wrong: 'Value: "twenty" is no number. Type it as 21 or 21.5.',
      key: 'value',
    });
    expect(readTold(asks, { what: '  ', value: '' })).toEqual({
      wrong: 'What was read: this is still wanted.',
      key: 'what',
    });
  });
});

describe('pictures in words', () => {
  it('counts what they take, and what is not here', () => {
    expect(sayBytes(340)).toBe('1 kB');
    expect(sayBytes(1_240_000)).toBe('1.2 MB');
    expect(sayUse({ pictures: 0, bytes: 0, missing: [] })).toBe('');
    expect(sayUse({ pictures: 1, bytes: 81_000, missing: [] })).toBe('1 picture, 81 kB on this device.');
    expect(sayUse({ pictures: 3, bytes: 2_000_000, missing: ['a'] })).toBe(
      '3 pictures, 2.0 MB on this device; 1 is not here.',
    );
    expect(sayUse({ pictures: 1, bytes: 0, missing: ['a'] })).toBe('1 picture, none of them on this device.');
  });
  it('says what a file lacks', () => {
    expect(sayLost(0, 'missing')).toBe('');
    expect(sayLost(1, 'missing')).toMatch(/^1 picture of this job is not on this device, so the file has none of it\./);
    expect(sayLost(2, 'spoiled')).toMatch(/^2 pictures in the file are spoiled and were left out\./);
  });
});
