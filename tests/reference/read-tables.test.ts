import { describe, expect, it } from 'vitest';
import { readSources, readTables } from '../../src/reference/read-tables.ts';
import { sampleTable } from './sample-table.ts';

const sources = readSources({ 'a.json': { id: 'a-book', title: 'A book', read: 'page' } });

describe('reading tables', () => {
  it('sorts by id, whatever the order of the files', () => {
    const read = readTables({ '1.json': sampleTable({ id: 'b' }), '2.json': sampleTable({ id: 'a' }) }, sources);
    expect([...read.keys()]).toEqual(['a', 'b']);
  });

  it('refuses a second table of one id', () => {
    expect(() => readTables({ '1.json': sampleTable({}), '2.json': sampleTable({}) }, sources)).toThrow('is taken');
  });

  it('refuses a second source of one id', () => {
    const book = { id: 'a-book', title: 'A book', read: 'page' };
    expect(() => readSources({ '1.json': book, '2.json': book })).toThrow('is taken');
  });

  it('names the file of a bad shape', () => {
    expect(() => readTables({ 'here.json': { ...sampleTable({}), clause: '' } }, sources)).toThrow('here.json');
    expect(() => readTables({ 'here.json': { ...sampleTable({}), extra: 1 } }, sources)).toThrow('here.json');
    expect(() => readSources({ 'there.json': { id: 'x', title: '', read: 'page' } })).toThrow('there.json');
  });

  it('refuses a short row, an unknown source and an axis that does not rise', () => {
    const t = sampleTable({});
    expect(() => readTables({ f: { ...t, rows: [{ key: '1', cells: [1] }] } }, sources)).toThrow('cells');
    expect(() => readTables({ f: { ...t, source: 'other' } }, sources)).toThrow('unknown source');
    expect(() => readTables({ f: { ...t, columns: [...t.columns].reverse() } }, sources)).toThrow('does not rise');
    expect(() => readTables({ f: { ...t, columnAxis: { ...t.columnAxis, to: 99 } } }, sources)).toThrow(
      'is valid where',
    );
    expect(() => readTables({ f: { ...t, rows: [t.rows[0], t.rows[0]] } }, sources)).toThrow('twice');
  });

  it('wants exactly one default for a topic', () => {
    const a = sampleTable({ id: 'a', topic: 'thing', isDefault: false });
    const b = sampleTable({ id: 'b', topic: 'thing', isDefault: false });
    expect(() => readTables({ a, b }, sources)).toThrow('0 default tables');
    expect(() => readTables({ a: { ...a, isDefault: true }, b: { ...b, isDefault: true } }, sources)).toThrow(
      '2 default tables',
    );
    expect(readTables({ a: { ...a, isDefault: true }, b }, sources).size).toBe(2);
  });
});
