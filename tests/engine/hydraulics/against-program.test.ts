import { beforeAll, describe, expect, it } from 'vitest';
import type { HydraulicNet } from '../../../src/engine/hydraulics/hydraulic-net.ts';
import { solveNetwork } from '../../../src/engine/hydraulics/solve-network.ts';
import { type AskProgram, startProgram } from './network-program.ts';
import { programMethod } from './other-laws.ts';
import { numbersFrom, randomNet } from './random-nets.ts';
import { REFERENCE_NETS } from './reference-nets.ts';

let ask: AskProgram;
beforeAll(async () => {
  ask = await startProgram();
}, 60000);

/** Part that flows and losses of head may be apart, and what is too little to compare: l/s, m. */
const APART = 1e-3;
/**
 * Litres a second: no tap or radiator runs on so little. A link between two sources carries the difference of what they
 * give, so the millionths that both ways of solving leave of those are more than a thousandth of it; over the two
 * hundred nets the widest is 2.2e-6 litres a second, beside 5e-6 allowed. Every other flow is held to a thousandth.
 */
const LITTLE_FLOW = 5e-3;
/** A fifth of a metre: what is lost next to the source is nothing that a gauge would show. */
const LITTLE_HEAD = 0.2;

/** Worst distance in parts of `APART`, of flows and of what is lost from the highest head. */
function compare(net: HydraulicNet, viscosityM2PerS: number): void {
  const theirs = ask(net, viscosityM2PerS);
  const ours = solveNetwork(net, programMethod(viscosityM2PerS));
  if (!ours.ok) throw new Error(ours.why);
  const top = Math.max(...theirs.headM.values());
  for (const [id, q] of theirs.flowLPerS) {
    const got = ours.flowLPerS.get(id) ?? Number.NaN;
    expect(Math.abs(got - q), `flow ${id}: ${got}, ${q}`).toBeLessThanOrEqual(
      APART * Math.max(Math.abs(q), LITTLE_FLOW),
    );
  }
  for (const [id, h] of theirs.headM) {
    const got = ours.headM.get(id) ?? Number.NaN;
    expect(Math.abs(got - h), `head ${id}: ${got}, ${h}`).toBeLessThanOrEqual(APART * Math.max(top - h, LITTLE_HEAD));
  }
}

describe('against the public-domain network program', () => {
  it.each(REFERENCE_NETS)('$title', ({ net, viscosityM2PerS }) => {
    compare(net, viscosityM2PerS);
  });

  it.each(Array.from({ length: 20 }, (_, i) => i))(
    'ten nets of batch %s: trees, rings, two sources, pumps',
    (batch) => {
      for (let i = 0; i < 10; i++) {
        const number = batch * 10 + i;
        const next = numbersFrom(7919 * (number + 1));
        const net = randomNet(next, {
          nodes: 3 + Math.floor(next() * 30),
          rings: number % 2 === 0 ? 0 : 1 + Math.floor(next() * 6),
          secondSource: number % 5 === 0,
          pump: number % 3 === 0,
        });
        compare(net, [1.3059e-6, 4.74e-7, 3.8717e-7][number % 3] ?? 1e-6);
      }
    },
  );
});
