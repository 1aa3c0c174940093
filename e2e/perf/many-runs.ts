import { emptyPlan } from '../../src/plan/empty-plan.ts';
import { FORMAT, MINOR, VERSION } from '../../src/plan/envelope.ts';
import type { Plan } from '../../src/plan/plan.ts';

const SERVICES = ['gas', 'heatingFlow', 'heatingReturn', 'hot', 'cold'];
const APART_MM = 400;
const STEP_MM = 900;

/**
 * So many runs of three legs side by side in rows, one service after the other, at the density of a busy floor. As the
 * text of a file; the middle leg of the first one goes from (0, 150) to (1800, 150) in mm.
 */
export function manyRuns(count: number): string {
  const plan: Plan = emptyPlan({
    id: `bench-${count}`,
    name: `${count} runs`,
    storey: 's',
    option: 'o',
    ceilingMm: 2400,
    buildUpMm: 250,
  });
  const runs: Record<string, unknown> = {};
  const nodes: Record<string, unknown> = {};
  const legs: Record<string, unknown> = {};
  const perRow = Math.ceil(Math.sqrt(count / 2));
  for (let i = 0; i < count; i++) {
    const service = SERVICES[i % SERVICES.length];
    const x = (i % perRow) * (3 * STEP_MM + APART_MM);
    const y = Math.floor(i / perRow) * APART_MM;
    const run = `r${i}`;
    runs[run] = { id: run, service, name: '', joining: null, turns: 'elbow', option: 'o' };
    const places = [
      [x, y],
      [x, y + 150],
      [x + 2 * STEP_MM, y + 150],
      [x + 2 * STEP_MM, y + 300],
    ] as const;
    const height = { from: 'floor', of: 's', mm: 150 + (i % 7) * 60 };
    const tube = { kind: 'copper', size: '22x0.9' };
    for (const [k, [px, py]] of places.entries()) {
      const id = `n${i}-${k}`;
      nodes[id] = { id, place: { on: 'storey', storey: 's', x: px, y: py, height }, turn: null, option: 'o' };
      if (k === 0) continue;
      const leg = `l${i}-${k}`;
      const ends = { a: `n${i}-${k - 1}`, b: id };
      legs[leg] = { id: leg, run, ...ends, tube, insulation: null, sureness: 'seen', option: 'o' };
    }
  }
  const filled = { ...plan, runs, nodes, legs };
  return JSON.stringify({
    format: FORMAT,
    version: VERSION,
    minor: MINOR,
    writer: 'bench',
    savedAt: '',
    plan: filled,
    blobs: {},
  });
}
