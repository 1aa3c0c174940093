import { expect, test } from 'vitest';
import type { TestRecord, UnsafeSituation } from '../../src/plan/records/basis.ts';
import { drawn } from './drawn.ts';

const record: TestRecord = {
  kind: 'tightness',
  part: 'whole',
  edition: '3',
  on: '2026-09-01',
  figures: { testMbar: 20.5, dropMbar: null },
  result: '',
  by: '',
  note: '',
};
const situation: UnsafeSituation = {
  what: 'open end on the old gas pipe',
  place: 'kitchen',
  classification: '',
  notice: '',
  photo: null,
  on: null,
  signed: [],
};
const signature = { name: 'the tenant', on: null, strokes: [[10, 20, 300, 90]] };

function hand() {
  const { editor } = drawn();
  const why = (command: string, args: unknown): string => {
    const done = editor.run(command, args);
    return done.ok ? '' : done.why;
  };
  return { editor, why, job: () => editor.store.getState().plan.job };
}

test('a record is written, changed in its place, and taken away, each as one step', () => {
  const { editor, why, job } = hand();
  expect(why('test.set', { line: record })).toBe('');
  expect(why('test.set', { at: 0, line: { ...record, result: 'steady' } })).toBe('');
  expect(job().tests).toEqual([{ ...record, result: 'steady' }]);
  expect(why('test.set', { at: 3, line: record })).toBe('That line is no longer there.');
  expect(why('test.set', { line: { ...record, kind: ' ' } })).toBe('Say what was tested.');
  expect(why('test.set', { line: { ...record, figures: { testMbar: -1 } } })).toMatch(/not less than nothing: -1/);
  expect(why('test.set', { at: 0, line: { ...record, figures: { letByRiseMbar: -0.1, coldC: -2 } } })).toBe('');
  expect(why('jobLine.delete', { list: 'tests', at: 0 })).toBe('');
  expect(job().tests).toBeUndefined();
  editor.undo();
  expect(job().tests).toHaveLength(1);
});

test('what is signed keeps its words until the signature is taken off', () => {
  const { why, job } = hand();
  expect(why('unsafe.set', { line: { ...situation, what: '' } })).toBe('Say what was found.');
  expect(why('unsafe.set', { line: situation })).toBe('');
  const signed = { ...situation, signed: [signature] };
  expect(why('unsafe.set', { at: 0, line: signed })).toBe('');
  expect(why('unsafe.set', { at: 0, line: { ...signed, place: 'hall' } })).toMatch(/^It is signed as it stands/);
  expect(why('unsafe.set', { at: 0, line: { ...signed, signed: [signature, signature] } })).toBe('');
  expect(why('unsafe.set', { at: 0, line: situation })).toBe('');
  expect(why('unsafe.set', { at: 0, line: { ...situation, place: 'hall' } })).toBe('');
  expect(job().unsafe).toEqual([{ ...situation, place: 'hall' }]);
});

test('a signature that cannot be kept says why', () => {
  const { why } = hand();
  const as = (change: object): string =>
    why('unsafe.set', { line: { ...situation, signed: [{ ...signature, ...change }] } });
  expect(as({ strokes: [] })).toBe('');
  expect(as({ name: ' ', strokes: [] })).toMatch(/^A signature is written, or the name is typed/);
  expect(as({ strokes: [[1, 2, 3]] })).toMatch(/spoiled/);
  expect(as({ strokes: [[1, 2, 1001, 3]] })).toMatch(/out of its box/);
  expect(as({ strokes: [Array.from({ length: 6002 }, () => 1)] })).toMatch(/too long/);
});

test('a photo of a situation is one of the job, and one that went since leaves the record as it was', () => {
  const { editor, why, job } = hand();
  expect(why('unsafe.set', { line: { ...situation, photo: 'gone' } })).toBe('That photo is no longer in the job.');
  const made = editor.run('blob.set', {
    hash: 'a'.repeat(64),
    mediaType: 'image/jpeg',
    pixels: { width: 4, height: 3 },
    kind: 'photo',
    name: '',
    on: null,
  });
  const photo = made.ok ? (made.made[0] ?? '') : '';
  expect(why('unsafe.set', { line: { ...situation, photo } })).toBe('');
  expect(why('blob.delete', { blobRef: photo })).toBe('');
  expect(why('unsafe.set', { at: 0, line: { ...situation, photo, signed: [signature] } })).toBe('');
  expect(job().unsafe?.[0]?.photo).toBe(photo);
});
