import { describe, expect, it } from 'vitest';
import { genericThings } from '../../src/catalogue/generic-things.ts';
import { knownLengths } from '../../src/catalogue/known-lengths.ts';
import { makePoint } from '../../src/catalogue/make-point.ts';
import { assumedJoists, assumedLayers, voidChoices } from '../../src/catalogue/void-choices.ts';
import { applianceLoad } from '../../src/engine/gas-system/appliance-load.ts';
import { tolerance } from '../../src/network/angles.ts';
import { figure } from '../../src/reference/figure.ts';

const place = { on: 'storey', x: 1000, y: 2000, angleDeg: 0 } as const;

/** Wide, deep and high of ordinary appliances, mm. */
const ORDINARY = [
  ['combi24', 400, 290, 700],
  ['combi28', 400, 300, 720],
  ['combi30', 400, 310, 740],
  ['combi35', 440, 330, 770],
  ['system18', 400, 290, 700],
  ['system24', 400, 290, 700],
  ['system30', 400, 310, 740],
  ['heatOnly15', 390, 280, 600],
  ['heatOnly18', 390, 280, 600],
  ['cylinder150', 550, 550, 1150],
  ['cylinder210', 550, 550, 1500],
  ['cylinder250', 550, 550, 1750],
  ['preheat120', 500, 500, 1050],
  ['hob60', 580, 510, 60],
  ['cooker60', 600, 600, 900],
  ['fire', 500, 250, 600],
] as const;
/** Figures it brings before a sheet was read: what, from, to. */
const FIGURES = [
  ['system18', 'inputKwHeating', 18, 21.5],
  ['system24', 'inputKwHeating', 24, 28.5],
  ['system30', 'inputKwHeating', 30, 34.4],
  ['cylinder150', 'litres', 145, 155],
  ['cylinder210', 'litres', 205, 215],
  ['cylinder250', 'litres', 245, 255],
  ['preheat120', 'litres', 115, 125],
  ['cylinder150', 'coilKw', 14, 25],
  ['cylinder210', 'coilKw', 15, 30],
  ['cylinder250', 'coilKw', 15, 32],
] as const;
const thing = (key: string) => genericThings().find((t) => t.id === `generic-${key}`);

describe('an appliance whose sheet nobody read', () => {
  it.each(ORDINARY)('%s is drawn %s wide, %s deep, %s high', (key, widthMm, depthMm, heightMm) => {
    expect(thing(key)?.size).toEqual({ widthMm, depthMm, heightMm });
  });

  it.each(FIGURES)('%s brings %s from %s to %s', (key, what, lo, hi) => {
    expect(thing(key)?.fields[what]).toEqual({ lo, hi });
  });
});

/** Gross kW of an appliance of which only the class is told: from, to, taken. */
const LOADS = [
  ['boiler', { type: 'combi', class: '24' }, 24, 28.5, 26.5],
  ['boiler', { type: 'combi', class: '28' }, 28, 32.5, 30.5],
  ['boiler', { type: 'combi', class: '30' }, 30.1, 34.4, 32],
  ['boiler', { type: 'combi', class: '35' }, 35, 40.5, 38],
  ['boiler', { type: 'heatOnly', class: '15' }, 15, 18, 16.8],
  ['boiler', { type: 'heatOnly', class: '18' }, 18, 21.5, 20],
  ['hob', {}, 7.5, 7.5, 7.5],
  ['cooker', {}, 10, 17, 13],
  ['gas-fire', {}, 3, 7, 5],
] as const;

describe('gas for an appliance without a data plate', () => {
  it.each(LOADS)('%s %o: from %s to %s kW gross, taken as %s', (kind, fields, lo, hi, value) => {
    const point = makePoint(kind, { id: 'p1', storey: 's1', place, option: null, fields });
    const { working, assumedClass } = applianceLoad(point, 'It', 'natural');
    expect(assumedClass).toBe(true);
    expect(working.result).toMatchObject({ lo, hi, value });
  });
});

describe('a floor nobody looked under', () => {
  it('has joists of 47 at 400, the first 50 off the wall, over 15 of board and under 22 of deck', () => {
    const joists = assumedJoists();
    expect([joists.centresMm, joists.breadthMm, joists.offWallMm]).toEqual([400, 47, 50]);
    expect(joists.underside).toEqual({ mm: 15, lo: 10, hi: 30 });
    expect(joists.deck).toEqual({ mm: 22, lo: 18, hi: 25 });
  });

  it('is a screed of 65 on 100 of insulation on 100 of concrete on 150 of hardcore where it is solid', () => {
    expect(assumedLayers()).toEqual([
      { what: 'screed', thicknessMm: 65 },
      { what: 'insulation', thicknessMm: 100 },
      { what: 'concrete', thicknessMm: 100 },
      { what: 'hardcore', thicknessMm: 150 },
    ]);
  });

  it('is told with a key where it is of a usual size', () => {
    expect(voidChoices()).toEqual({
      centresMm: [400, 450, 600],
      depthMm: [150, 175, 200, 225],
      boxDepthMm: [100, 150, 200],
      chaseDepthMm: [25, 35, 50],
    });
  });
});

describe('a photo that nobody measured in', () => {
  it('is scaled by bricks of three courses to 225 and doors of 6 ft 6', () => {
    const sizes = knownLengths().map((k) => [k.id, k.widthMm, k.heightMm]);
    const inch = 25.4;
    for (const feet of [24, 27, 30, 33]) {
      const door = sizes.find(([id]) => id === `door ${Math.round(feet * inch)}`);
      expect(door?.slice(1), `${feet} in`).toEqual([Math.round(feet * inch), Math.round(78 * inch)]);
    }
    expect(sizes.find(([id]) => id === 'brick')).toEqual(['brick', 225, 225 / 3]);
  });
});

/** Degrees a joint of that tube gives from a made fitting. */
const GIVES = [
  ['copper', 3],
  ['steel', 2],
  ['csst', 10],
  ['pe', 5],
  ['plastic', 5],
  ['waste', 5],
  ['plastic-overflow', 5],
  ['flue', 5],
  ['a kind nobody knows', 2],
] as const;

describe('what pipe comes as and gives', () => {
  it.each(GIVES)('a turn in %s may be %s degrees off', (kind, deg) => {
    expect(tolerance([kind])).toBe(deg);
  });

  it('copper in 3 m or coils of 10, plastic in 3 m or coils of 25, waste in 3 m, steel in 6 to 6.4 m', () => {
    const stock = (kind: string, column: string) => {
      const found = figure('stock-lengths', kind, column);
      return found.is === 'known' ? [found.lo, found.hi, found.value] : null;
    };
    expect(stock('copper', 'straight')).toEqual([3, 3, 3]);
    expect(stock('copper', 'coil')).toEqual([10, 10, 10]);
    expect(stock('plastic', 'straight')).toEqual([3, 3, 3]);
    expect(stock('plastic', 'coil')).toEqual([25, 25, 25]);
    expect(stock('waste', 'straight')).toEqual([3, 3, 3]);
    expect(stock('steel', 'straight')).toEqual([6, 6.4, 6]);
  });
});
