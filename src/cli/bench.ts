import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import process from 'node:process';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { type Duel, fight, type Outcome } from './bench/duel.ts';

const DUELS = Object.values(import.meta.glob<Duel>('./bench/duels/*.duel.ts', { eager: true, import: 'default' })).sort(
  (a, b) => (a.id < b.id ? -1 : 1),
);

/** Rounds of each duel: the median of fewer says little. */
const ROUNDS = 9;

/** Takes up what the sample before left behind. The engine's collector is reached by a flag set while it runs. */
setFlagsFromString('--expose-gc');
const collect: () => void = runInNewContext('gc');

/** Time this process was at work, ms: what else runs on the machine does not count. */
function cpuMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function versions(): string {
  const versionIn = (folder: string): string => JSON.parse(readFileSync(`${folder}package.json`, 'utf8')).version;
  const used = ['rbush', 'valibot', 'polygon-clipping'].map((of) => `${of} ${versionIn(`node_modules/${of}/`)}`);
  const cpu = cpus();
  return [
    `kickset ${versionIn('')}; node ${process.versions.node}, v8 ${process.versions.v8}; ${used.join(', ')}`,
    `${process.platform} ${process.arch}, ${cpu.length} x ${cpu[0]?.model.trim() ?? 'unknown'}`,
    `${ROUNDS} rounds, both turn by turn, medians of processor time; ratio = ours / peer in the same round`,
  ].join('\n');
}

const ms = (n: number): string => `${n.toPrecision(3)} ms`;

function aim({ aimMs, wallMs }: Outcome): string {
  if (aimMs === null || wallMs === null) return '';
  return `; ${ms(wallMs)} by the wall clock, ${wallMs <= aimMs ? 'aim' : 'MORE THAN THE AIM OF'} ${aimMs} ms`;
}

function say(o: Outcome): string {
  const gate = o.atMost === null ? '' : o.held ? `, at most ${o.atMost}` : `, MORE THAN ${o.atMost}`;
  return [
    `${o.id}: ${o.figure} ${o.value.toPrecision(3)} (${o.lo.toPrecision(3)} to ${o.hi.toPrecision(3)})${gate}`,
    `    ${o.ours}: ${ms(o.oursMs)}${aim(o)}`,
    `    ${o.peer}: ${ms(o.peerMs)}`,
  ].join('\n');
}

const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const asData = process.argv.includes('--json');
const chosen = asked.length === 0 ? DUELS : DUELS.filter((d) => asked.includes(d.id));
if (chosen.length === 0) {
  process.stderr.write(`bench: there is no such duel; there are ${DUELS.map((d) => d.id).join(', ')}\n`);
  process.exitCode = 2;
} else {
  if (!asData) process.stdout.write(`${versions()}\n\n`);
  const outcomes = chosen.map((duel) => {
    const outcome = fight(duel, ROUNDS, cpuMs, collect);
    if (!asData) process.stdout.write(`${say(outcome)}\n`);
    return outcome;
  });
  if (asData) process.stdout.write(`${JSON.stringify(outcomes, null, 2)}\n`);
  process.exitCode = outcomes.every((o) => o.held) ? 0 : 1;
}
