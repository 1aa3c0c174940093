import type { Table } from '../../src/reference/schema/table-schema.ts';

/** A small table of two numbered axes, rows read by the next size up, columns read linearly. */
export const sampleTable = (changes: Partial<Table>): Table => ({
  id: 'sample',
  title: 'Sample',
  topic: null,
  isDefault: false,
  source: 'a-book',
  clause: 'table 1',
  sureness: 'page',
  rowAxis: { id: 'size', title: 'size', unit: 'mm', lookUp: 'next-size-up', from: 10, to: 30 },
  columnAxis: { id: 'length', title: 'length', unit: 'm', lookUp: 'linear', from: 1, to: 4 },
  columns: [
    { key: '1', unit: 'm3/h', digits: 1 },
    { key: '2', unit: 'm3/h', digits: 1 },
    { key: '4', unit: 'm3/h', digits: 1 },
  ],
  rows: [
    { key: '10', cells: [8, 6, 2] },
    { key: '20', cells: [16, 12, 4], sureness: 'memory', source: 'a-book', clause: 'row two' },
    { key: '30', cells: [{ lo: 20, hi: 24, value: 21 }, null, 'word'] },
  ],
  alongRow: 'falling',
  downColumn: 'rising',
  methodErrorLo: null,
  methodErrorHi: null,
  methodErrorUnit: null,
  inForce: null,
  notes: [],
  ...changes,
});
