import { describe, expect, it } from 'vitest';
import { testKind } from '../../../src/catalogue/test-kinds.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { example } from '../../../src/engine/example.ts';
import {
  type Expected,
  editionsOn,
  proposedEdition,
  readDay,
  readExpected,
} from '../../../src/view/records/expected.ts';
import { answerTests, answerUnsafe, sayTest, sayUnsafe, today } from '../../../src/view/records/say-records.ts';
import { BOX_HIGH, goOn, inBox, isFull, pathOf } from '../../../src/view/records/signature-strokes.ts';
import { asksOf, blankRecord, figureKey, recordOf, toldOf } from '../../../src/view/records/test-told.ts';
import { timedM3PerH } from '../../../src/view/records/timed-rate.ts';

const kindOf = (id: string) => {
  const kind = testKind(id);
  if (!kind) throw new Error(id);
  return kind;
};

function expected(): Expected {
  const { plan } = example()
    .point('gas-meter', 'meter', [0, 0, 500], { meter: 'G4' })
    .point('boiler', 'boiler', [3000, 0, 1300], { inputKwHotWater: 30, inputBasis: 'gross' })
    .run('g', 'gas', [
      { point: 'meter', connection: 'outlet' },
      [75, -115, 2300],
      { point: 'boiler', connection: 'gas' },
    ]);
  return readExpected(evaluate(plan, { option: 'A', when: 'after' }).sections.find((s) => s.id === 'tests'));
}

describe('what the report expects, read by the forms', () => {
  it('lists each test of each part once, and not what they have in common', () => {
    expect(expected().due.map((d) => `${d.kind.id}: ${d.part}`)).toEqual([
      'tightness: New pipework on its own',
      'tightness: Whole installation, appliances connected',
      'purge: Boiler',
      'gas-pressure: ',
      'gas-rate: Boiler',
      'commissioning: Boiler',
    ]);
  });

  it('finds the words for a blank by part and edition', () => {
    const { of } = expected();
    const whole = 'Whole installation, appliances connected';
    expect(of(kindOf('tightness'), whole, 'Drop', '3')).toBe('4.0 mbar: G4 meter, pipe to 28');
    expect(of(kindOf('tightness'), whole, 'Drop', '4')).toMatch(/^can't tell/);
    expect(of(kindOf('tightness'), whole, 'Test pressure', '3')).toBe('20 to 21 mbar');
    expect(of(kindOf('tightness'), 'New pipework on its own', 'Drop', '3')).toMatch(/^none that can be perceived/);
    expect(of(kindOf('gas-rate'), 'Boiler', 'Gas rate', '')).toBe('2.79 m3/h, at its full input');
    expect(of(kindOf('gas-rate'), 'Hob', 'Gas rate', '')).toBe('');
  });

  it('proposes an edition where the day leaves no choice', () => {
    const { editions } = expected();
    expect(editions.map(({ id, from, until }) => [id, from, until])).toEqual([
      ['3', null, '2026-09-30'],
      ['4', '2026-03', null],
    ]);
    expect(proposedEdition(editions, '2026-10-01')).toBe('4');
    expect(proposedEdition(editions, '2026-02-01')).toBe('3');
    expect(proposedEdition(editions, '2026-06-01')).toBe('');
    expect(editionsOn(editions, null)).toHaveLength(2);
    expect(proposedEdition([], '2026-10-01')).toBe('');
    expect(readDay('5 May 2026')).toBe('2026-05-05');
    expect(readDay('some day')).toBeNull();
  });

  it('expects nothing without a report', () => {
    const none = readExpected(undefined);
    expect([none.due, none.editions, none.of(kindOf('water'), 'Heating', 'Drop', '')]).toEqual([[], [], '']);
  });
});

describe('a record and its boxes', () => {
  it('turn into each other, and keep figures that no box asks for', () => {
    const blank = blankRecord(kindOf('tightness'), 'whole', '4', '2026-10-02');
    const record = { ...blank, figures: { ...blank.figures, dropMbar: 0.5, older: 7 }, result: 'steady' };
    expect(recordOf(record, toldOf(record))).toEqual(record);
    expect(recordOf(record, { ...toldOf(record), on: null, [figureKey('dropMbar')]: null })).toMatchObject({
      on: null,
      figures: { dropMbar: null, older: 7 },
    });
  });

  it('asks each figure with its unit, what is expected, and what was found before', () => {
    const blank = blankRecord(kindOf('tightness'), 'Whole installation, appliances connected', '3', '2026-09-01');
    const reading = { what: '', value: 1, unit: 'mbar', on: null, place: '', note: '', kind: 'tightness-drop' };
    const asks = asksOf('tightness', toldOf(blank), expected(), [reading], true);
    expect(asks.find((a) => a.label === 'Drop, mbar')?.help).toBe(
      'Expected: 4.0 mbar: G4 meter, pipe to 28. As found: 1 mbar.',
    );
    expect(asks.some((a) => a.key === 'edition')).toBe(true);
    expect(blankRecord(kindOf('water'), '', '4', '2026-10-02').edition).toBe('');
  });

  it('is said in a line', () => {
    const blank = blankRecord(kindOf('gas-rate'), 'Boiler', '', '2026-10-02');
    expect(sayTest(blank)).toEqual({ what: 'Gas rate', figure: 'still blank', more: 'Boiler', open: true });
    const timed = { ...blank, figures: { ...blank.figures, volumeFt3: 1, seconds: 36 } };
    expect(sayTest(timed)).toMatchObject({ figure: '2 October 2026', open: false });
    expect(sayTest(timed).more).toMatch(/^Boiler; 2.83 m3\/h; /);
    expect([answerTests([]), answerTests([blank])]).toEqual(['none', '1 written']);
    expect(timedM3PerH(0.1, null, 120)).toBeCloseTo(3, 9);
    expect([timedM3PerH(0.1, null, 0), timedM3PerH(null, null, 9)]).toEqual([null, null]);
  });
});

describe('an unsafe situation', () => {
  const line = {
    what: 'open end',
    place: '',
    classification: 'my words',
    notice: '',
    photo: null,
    on: null,
    signed: [],
  };
  it('is said with the words of the engineer, and who has signed', () => {
    expect(sayUnsafe(line)).toEqual({ what: 'open end', figure: 'my words', more: 'not signed', open: true });
    const signed = [
      { name: '', on: null, strokes: [[1, 2]] },
      { name: 'the tenant', on: null, strokes: [] },
    ];
    expect(sayUnsafe({ ...line, signed })).toMatchObject({ more: 'signed: a signature, the tenant', open: false });
    expect([answerUnsafe([]), answerUnsafe([line]), answerUnsafe([line, line])]).toEqual([
      'none',
      '1 situation',
      '2 situations',
    ]);
    expect(today(new Date(2026, 0, 5))).toBe('2026-01-05');
  });

  it('keeps a signature in its box, thinned', () => {
    const box = { left: 10, top: 20, width: 500 };
    expect(inBox(box, 260, 70)).toEqual([500, 100]);
    expect(inBox(box, 900, 900)).toEqual([1000, BOX_HIGH]);
    expect(inBox(box, 0, 0)).toEqual([0, 0]);
    const stroke = goOn(goOn([], [10, 10]), [12, 10]);
    expect(stroke).toEqual([10, 10]);
    expect(goOn(stroke, [30, 10])).toEqual([10, 10, 30, 10]);
    expect(pathOf([5, 6])).toBe('M5 6L5 6');
    expect(pathOf([5, 6, 7, 8])).toBe('M5 6L7 8');
    expect(isFull([Array.from({ length: 6000 }, () => 1)])).toBe(true);
  });
});
