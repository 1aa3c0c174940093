import { describe, expect, test } from 'vitest';
import { figure } from '../../src/reference/figure.ts';
import type { Sureness } from '../../src/report/quantity.ts';

type Row = readonly [table: string, row: string, column: string, figure: number, source: string, sureness: Sureness];

/** Each figure as its source gives it, and how the source was read. */
const FIGURES: readonly Row[] = [
  // Building control article on alarms: 300 from walls, 150 below the ceiling, 1 to 3 m along the floor.
  ['alarm-place', 'from walls', 'mm', 300, 'alarm-consultation-article', 'page'],
  ['alarm-place', 'below ceiling', 'mm', 150, 'alarm-consultation-article', 'page'],
  ['alarm-place', 'nearest', 'mm', 1000, 'alarm-consultation-article', 'page'],
  ['alarm-place', 'furthest', 'mm', 3000, 'alarm-consultation-article', 'page'],
  // BS 7671 544.1.2 as quoted: within 600 of the meter outlet; 10 mm2 for a house is from memory.
  ['bonding', 'from meter', 'mm', 600, 'bonding-quotation', 'quotation'],
  ['bonding', 'conductor', 'mm2', 10, 'bs-7671', 'memory'],
  // Page on the zones: 2.25 m high, 1.2 m round an outlet without a tray, zone 2 the next 0.6 m.
  ['bathroom-zones', 'height', 'mm', 2250, 'bathroom-zones-page', 'page'],
  ['bathroom-zones', 'outlet', 'mm', 1200, 'bathroom-zones-page', 'page'],
  ['bathroom-zones', 'zone 2', 'mm', 600, 'bathroom-zones-page', 'page'],
  // Training page: sockets at least 3 m from zone 1; 2.5 m in the newest edition is from memory.
  ['bathroom-zones', 'socket', 'mm', 3000, 'bathroom-electrics-page', 'page'],
  ['bathroom-zones', 'socket, newest', 'mm', 2500, 'bs-7671', 'memory'],
  // Diagram 33: 10 cm2 for each kW net to a room, 5 to outside, high and low each.
  ['cupboard-vents', 'to a room', 'cm2PerKw', 10, 'bs-5440-2', 'memory'],
  ['cupboard-vents', 'to outside', 'cm2PerKw', 5, 'bs-5440-2', 'memory'],
  // Above 14 kW gross only room-sealed where people sleep.
  ['appliance-place', 'bedroom', 'kW', 14, 'sleeping-room-answers', 'page'],
  ['appliance-place', 'under stairs', 'storeys', 2, 'bs-6798', 'memory'],
  ['appliance-place', 'airing cupboard', 'mm', 25, 'bs-6798', 'memory'],
];

describe('figures of space and safety as their sources give them', () => {
  test.each(FIGURES)('%s: %s, %s', (table, row, column, value, source, sureness) => {
    expect(figure(table, row, column)).toMatchObject({
      is: 'known',
      lo: value,
      hi: value,
      sureness,
      cite: { source, table },
    });
  });
});

/** Room round a boiler until its sheet is at hand: ranges of common practice, never told as a page. */
const ROOM: readonly (readonly [row: string, lo: number, hi: number])[] = [
  ['front', 500, 600],
  ['sides', 5, 10],
  ['above', 200, 300],
  ['below', 200, 300],
  ['door', 5, 5],
];

describe('room round a boiler', () => {
  test.each(ROOM)('%s: %d to %d, common practice', (row, lo, hi) => {
    expect(figure('working-room', row, 'mm')).toMatchObject({ is: 'known', lo, hi, sureness: 'practice' });
  });
});

describe('judgement of a drawing is never passed off as published', () => {
  test.each([
    ['alarm-place', 'at the ceiling', 'mm'],
    ['bonding', 'on the pipe', 'mm'],
    ['emergency-control', 'highest', 'mm'],
    ['emergency-control', 'in front', 'mm'],
    ['emergency-control', 'remote', 'mm'],
    ['in-sight', 'least', 'm'],
  ])('%s: %s', (table, row, column) => {
    expect(figure(table, row, column)).toMatchObject({
      is: 'known',
      sureness: 'practice',
      cite: { source: 'trade-practice', clause: 'judgement of a drawing' },
    });
  });
});
