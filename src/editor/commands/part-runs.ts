import type { Plan } from '../../plan/plan.ts';
import type { CommandContext } from './define-command.ts';
import type { From } from './split-leg.ts';

type Pipes = { id: string; run: string; a: string; b: string }[];

function piecesOf(pipes: Pipes): Pipes[] {
  const pieces: Pipes[] = [];
  const left = [...pipes];
  while (left.length > 0) {
    const piece = left.splice(0, 1);
    const nodes = new Set(piece.flatMap((p) => [p.a, p.b]));
    for (let i = 0; i < left.length; i++) {
      const pipe = left[i];
      if (!pipe || (!nodes.has(pipe.a) && !nodes.has(pipe.b))) continue;
      nodes.add(pipe.a).add(pipe.b);
      piece.push(...left.splice(i, 1));
      i = -1;
    }
    pieces.push(piece);
  }
  return pieces;
}

/**
 * A run that was cut in the middle becomes two: the part with the leg drawn first keeps the id and all that was said of
 * it, the other part is a run of its own that records where it came from. A run in pieces before it was cut stays one.
 */
export function partRuns(before: Plan, draft: Plan, runs: ReadonlySet<string>, ctx: CommandContext): string[] {
  const made: string[] = [];
  const pipesOf = (plan: Plan, run: string): Pipes =>
    [...Object.values(plan.legs), ...Object.values(plan.stretches)].filter((p) => p.run === run);
  for (const id of runs) {
    const run = draft.runs[id];
    if (!run) continue;
    const pieces = piecesOf(pipesOf(draft, id));
    if (pieces.length < 2 || piecesOf(pipesOf(before, id)).length > 1) continue;
    for (const piece of pieces.slice(1)) {
      const part = ctx.ids.next('r');
      const copy: typeof run & From = { ...run, id: part, from: id };
      draft.runs[part] = copy;
      for (const { id: pipe } of piece) {
        const record = draft.legs[pipe] ?? draft.stretches[pipe];
        if (record) record.run = part;
      }
      made.push(part);
    }
  }
  return made;
}
