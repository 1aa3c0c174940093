import { describe, expect, test } from 'vitest';
import { listCsv } from '../../src/files/format/list-csv.ts';
import { listText, sayLine } from '../../src/files/format/list-text.ts';
import type { Line } from '../../src/report/piece.ts';

const line = (told: Partial<Line>): Line => ({
  key: '|elbow|22|endFeed',
  family: 'fitting',
  piece: 'elbow',
  name: 'end feed elbow',
  size: '22',
  joining: 'endFeed',
  quantity: 2,
  unit: 'each',
  asked: '2',
  edited: null,
  runs: ['r1'],
  at: [],
  note: '',
  unverified: false,
  unresolved: null,
  ...told,
});
const tube = line({
  family: 'tube',
  piece: 'tube-copper',
  name: 'copper tube',
  joining: '',
  quantity: 18.4,
  unit: 'm',
  asked: '7 lengths of 3 m',
});
const clip = line({ family: 'support', piece: 'clip', name: 'clip', joining: '', quantity: 10 });
const edit = (quantity: number | null, more: Partial<NonNullable<Line['edited']>> = {}) => ({
  edited: { quantity, madeOn: 2, note: '', moved: false, ...more },
});

describe('a line as it is said', () => {
  test.each([
    ['2 x 22 end feed elbow', line({})],
    ['18.4 m of 22 copper tube (7 lengths of 3 m)', tube],
    ['21 m of 22 copper tube', { ...tube, ...edit(21) }],
    ['4 x 22 end feed elbow', line(edit(4))],
    ['2 x 22 end feed elbow', line(edit(null))],
    ['1 x end cap', line({ size: '', name: 'end cap', quantity: 1 })],
    ['0.3 m of 22 copper tube', { ...tube, quantity: 0.1 + 0.2, asked: '' }],
  ])('%s', (said, of) => {
    expect(sayLine(of)).toBe(said);
  });
});

describe('the list as a message', () => {
  test('pipe first, then fittings, then clips, whatever order they come in', () => {
    expect(listText([clip, line({}), tube], 'Flat, option A')).toBe(
      [
        'Flat, option A',
        '',
        'Pipe',
        '18.4 m of 22 copper tube (7 lengths of 3 m)',
        '',
        'Fittings',
        '2 x 22 end feed elbow',
        '',
        'Clips',
        '10 x 22 clip',
        '',
      ].join('\n'),
    );
  });

  test('says what was taken off by hand and what is not decided', () => {
    const text = listText([
      line(edit(0, { note: 'in the van' })),
      line({ unresolved: 'the pipe turns by 30', size: '28' }),
      line({ size: '15', ...edit(3, { moved: true, madeOn: 1 }), unverified: true }),
    ]);
    expect(text).toBe(
      [
        'Fittings',
        '3 x 15 end feed elbow - drawing moved: 1 when it was changed, 2 now; unverified',
        '',
        'Taken off by hand',
        '2 x 22 end feed elbow - in the van',
        '',
        'To settle before ordering',
        '2 x 28 end feed elbow - the pipe turns by 30',
        '',
      ].join('\n'),
    );
  });

  test('with nothing on it says so', () => {
    expect(listText([])).toBe('Nothing to buy.\n');
  });
});

describe('the list as a sheet', () => {
  test('keeps what the drawing gives beside what was changed', () => {
    const rows = listCsv(
      [line({ ...edit(4, { note: 'two spare' }), runs: ['r1', 'r2'] }), tube],
      {},
      (id) => `run ${id}`,
    ).split('\r\n');
    expect(rows).toEqual([
      'Group,Drawn,Changed to,Unit,Ask for,Size,Joining,Piece,Note,Not decided,Unverified,Runs',
      'Pipe,18.4,,m,7 lengths of 3 m,22,,copper tube,,,no,run r1',
      'Fittings,2,4,each,2,22,end feed,end feed elbow,two spare,,no,run r1; run r2',
      '',
    ]);
  });

  test('a note that looks like a sum stays a note', () => {
    expect(listCsv([line(edit(1, { note: '=HYPERLINK("x")' }))])).toContain('"\'=HYPERLINK(""x"")"');
  });
});
