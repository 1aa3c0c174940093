import { describe, expect, it } from 'vitest';
import { fittingHeads, fittingMetres } from '../../src/engine/hydraulics/fitting-loss.ts';
import { tubeLoss } from '../../src/engine/hydraulics/tube-loss.ts';

type Basis = 'heating' | 'water';
type Span = readonly [lo: number, hi: number, value: number];

/** Metres of tube that lose one velocity head, at a gradient in Pa/m: bore over friction factor, the flow found by halving. */
function metresOfHead(boreMm: number, tC: number, paPerM: number): number {
  let lo = 0;
  let hi = 50;
  for (let i = 0; i < 60; i++) {
    const mid = (lo + hi) / 2;
    if ((tubeLoss({ flowKgPerS: mid, boreMm, roughnessMm: 0.0015, tC })?.paPerM ?? 0) < paPerM) lo = mid;
    else hi = mid;
  }
  return boreMm / 1000 / (tubeLoss({ flowKgPerS: lo, boreMm, roughnessMm: 0.0015, tC })?.f ?? Number.NaN);
}

/** Printed to a hundredth of a metre, and what it was made from was rounded the same way. */
function expectSpan(basis: Basis, cls: string, boreMm: number, [lo, hi, value]: Span): void {
  const q = fittingMetres(basis, cls, boreMm);
  const name = `${basis} ${cls} at ${boreMm}`;
  for (const [got, wanted] of [
    [q?.lo, lo],
    [q?.hi, hi],
    [q?.value, value],
  ]) {
    expect(Math.abs((got ?? Number.NaN) - (wanted ?? 0)), `${name}: ${got}, ${wanted}`).toBeLessThanOrEqual(
      0.009 + 0.004 * (wanted ?? 0),
    );
  }
}
const same = (n: number): Span => [n, n, n];
/** A loss of so many velocity heads, from and to and at best. */
const heads = (l: number, [lo, hi, value]: Span): Span => [lo * l, hi * l, value * l];

/** Publication 150 of the copper trade association, table 1, metres: size, bore, straight and angle valve, bend, elbows. */
const PUB_150 = [
  [6, 4.8, 0.07, 0.9, 0.08, 0.1, 0.16],
  [8, 6.8, 0.11, 1.0, 0.12, 0.16, 0.24],
  [10, 8.8, 0.15, 1.5, 0.16, 0.21, 0.33],
  [12, 10.8, 0.2, 1.8, 0.2, 0.28, 0.42],
  [15, 13.6, 0.3, 2.0, 0.26, 0.37, 0.6],
  [22, 20.2, 0.4, 4.3, 0.41, 0.6, 1.0],
  [28, 26.2, 0.6, 6.0, 0.58, 0.83, 1.3],
] as const;

/** Bores past that table keep the share of a bore that 28 has, and reach down to the figure of 28 and up by 15 in a hundred. */
const past = (n: number, bore: number): Span => {
  const value = (n * bore) / 26.2;
  return [n, 1.15 * value, value];
};

interface Turns {
  readonly capillary: Span;
  readonly compression: Span;
  readonly bend: Span;
}

function others(bore: number, { capillary, compression, bend }: Turns): void {
  const l = metresOfHead(bore, 75, 200);
  const heating = (cls: string, span: Span) => expectSpan('heating', cls, bore, span);
  heating('elbow90', [capillary[0], compression[1], capillary[2]]);
  heating('elbow45', [capillary[2] / 2, compression[2], 0.7 * capillary[2]]);
  heating('bend45', [bend[2] / 2, bend[2], 0.7 * bend[2]]);
  heating('tee-run', heads(l, [0, 1.5, 0.5]));
  heating('tee-branch', [capillary[2], 1.5 * l, capillary[2] + 0.2 * l]);
  heating('reducer', heads(l, [0, 0.5, 0.3]));
  heating('transition', heads(l, [0, 0.5, 0.3]));
  heating('check-valve', heads(l, [1, 3, 1.7]));
  heating('isolation-valve', heads(l, [0.03, 0.5, 0.03]));
  heating('union', heads(l, [0, 0.1, 0]));
  for (const cls of ['drain-cock', 'test-point']) heating(cls, same(0));
}

describe('metres for a fitting, heating', () => {
  it.each(PUB_150)('publication 150, table 1, size %s', (_, bore, straight, angle, bend, capillary, compression) => {
    expectSpan('heating', 'straight-valve', bore, same(straight));
    expectSpan('heating', 'angle-valve', bore, same(angle));
    expectSpan('heating', 'bend90', bore, same(bend));
    expectSpan('heating', 'elbow90-capillary', bore, same(capillary));
    expectSpan('heating', 'elbow90-compression', bore, same(compression));
  });

  it.each(PUB_150)('size %s: turns of 45, tees and valves are heads in metres at 200 Pa/m and 75 degrees', (...row) => {
    const [, bore, , , bend, capillary, compression] = row;
    others(bore, { capillary: same(capillary), compression: same(compression), bend: same(bend) });
  });

  it.each([32.6, 39.6])('bore %s carries the bores of 28', (bore) => {
    const turns = { capillary: past(0.83, bore), compression: past(1.3, bore), bend: past(0.58, bore) };
    expectSpan('heating', 'straight-valve', bore, past(0.6, bore));
    expectSpan('heating', 'angle-valve', bore, past(6.0, bore));
    expectSpan('heating', 'bend90', bore, turns.bend);
    expectSpan('heating', 'elbow90-capillary', bore, turns.capillary);
    expectSpan('heating', 'elbow90-compression', bore, turns.compression);
    others(bore, turns);
  });
});

/** BS 6700, table D.3 as remembered, metres: bore, elbow, tee, stop valve, check valve. */
const D_3 = [
  [12, 0.5, 0.6, 4.0, 2.5],
  [20, 0.8, 1.0, 7.0, 4.3],
  [25, 1.0, 1.5, 10.0, 5.6],
  [32, 1.4, 2.0, 13.0, 6.0],
  [40, 1.7, 2.5, 16.0, 7.9],
  [50, 2.3, 3.5, 22.0, 11.5],
] as const;

describe('metres for a fitting, hot and cold water', () => {
  it.each(D_3)('BS 6700, table D.3, bore %s', (bore, elbow, tee, stop, check) => {
    const water = (cls: string, span: Span) => expectSpan('water', cls, bore, span);
    water('elbow90', same(elbow));
    water('tee-run', same(0));
    water('tee-branch', same(tee));
    water('stop-valve', same(stop));
    water('check-valve', same(check));
    water('double-check', [2 * check, 3 * check, 2 * check]);
    for (const cls of ['bend90', 'elbow45']) water(cls, [elbow / 2, elbow, 0.7 * elbow]);
    water('bend45', [0.3 * elbow, 0.7 * elbow, elbow / 2]);
  });

  it.each(D_3)(
    'bore %s: changes of size and full-bore pieces are heads in metres at 10 degrees and 1.5 kPa a metre',
    (bore) => {
      const l = metresOfHead(bore, 10, 1500);
      const water = (cls: string, span: Span) => expectSpan('water', cls, bore, span);
      for (const cls of ['reducer', 'transition']) water(cls, heads(l, [0, 0.5, 0.3]));
      water('isolation-valve', heads(l, [0, 0.5, 0]));
      water('union', heads(l, [0, 0.1, 0]));
      for (const cls of ['drain-cock', 'test-point']) water(cls, same(0));
    },
  );
});

/** What loses how many velocity heads, from and to. */
const HANDBOOK = [
  ['elbow90', 1.0, 1.7],
  ['bend90', 0.4, 0.9],
  ['tee-run', 0.5, 0.5],
  ['tee-branch', 0.2 + 0.4, 0.2 + 1.7],
  ['entry', 1.0, 1.0],
  ['exit', 1.0, 1.0],
  ['globe-valve', 8.0, 8.0],
  ['angle-globe-valve', 2.7, 2.7],
  ['gate-valve', 0.3, 0.3],
  ['isolation-valve', 0.03, 0.03],
  ['check-valve', 1.7, 1.7],
  ['panel-radiator', 2.5, 2.5],
  ['column-radiator', 5.0, 5.0],
] as const;
/** Of 15 mm. */
const LOSS_PAGE = [
  ['radiator', 3.0],
  ['boiler', 2.5],
  ['radiator-valve-angle', 7],
  ['radiator-valve-straight', 4],
] as const;

describe('velocity heads', () => {
  it.each(HANDBOOK)('heating handbook, table 9.1: %s', (key, lo, hi) => {
    expect(fittingHeads(key)?.lo).toBeCloseTo(lo, 9);
    expect(fittingHeads(key)?.hi).toBeCloseTo(hi, 9);
  });

  it.each(LOSS_PAGE)('page on minor losses, its table: %s', (key, k) => {
    expect(fittingHeads(key)?.lo).toBe(k);
    expect(fittingHeads(key)?.hi).toBe(k);
  });
});
