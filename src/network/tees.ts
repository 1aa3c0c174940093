import type { Tube } from '../plan/records/pipework.ts';
import { type AngleClass, angleClass, hasBranchesAt45, sayDegrees, tolerance, turnBetween } from './angles.ts';
import type { Change, Tee, TeeForm, Unresolved } from './fitting.ts';
import { type Edge, into, type Vertex } from './network.ts';
import { bySize, sayTube } from './tube-sizes.ts';

type Trio = readonly [Edge, Edge, Edge];

/** Largest end, other end, branch last. */
function formOf([end, other, branch]: readonly [Tube, Tube, Tube]): TeeForm {
  const ends = bySize(end, other);
  const toLargest = bySize(end, branch);
  if (ends === 0) return toLargest === 0 ? 'equal' : toLargest < 0 ? 'reducedBranch' : 'pendant';
  if (toLargest > 0) return 'pendant';
  return toLargest === 0 ? 'reducedEnd' : 'endAndBranchReduced';
}

const FORM_WORDS: Readonly<Record<TeeForm, string>> = {
  equal: 'equal',
  reducedBranch: 'reduced branch',
  reducedEnd: 'reduced end',
  endAndBranchReduced: 'one end and branch reduced',
  pendant: 'pendant',
};

function wordsOf(sizes: readonly [Tube, Tube, Tube], form: TeeForm): string {
  const [end, other, branch] = sizes.map(sayTube);
  if (form === 'equal') return `tee ${end}, equal`;
  const ends = end === other ? `both ends ${end}` : `ends ${end} and ${other}`;
  return `tee ${end} x ${other} x ${branch}, ${ends}, branch ${branch} (${FORM_WORDS[form]})`;
}

function teeOf(
  vertex: Vertex,
  ends: readonly [Edge, Edge],
  branch: Edge,
  degrees: 45 | 90,
  from: 'drawing' | 'runs' | 'guess',
): Tee {
  const [end, other] = bySize(ends[0].tube, ends[1].tube) <= 0 ? ends : [ends[1], ends[0]];
  const sizes = [end.tube, other.tube, branch.tube] as const;
  const form = formOf(sizes);
  const changes: Change[] = [other, branch]
    .filter((edge) => edge.tube.kind !== end.tube.kind)
    .map((edge) => ({ is: 'transition', from: end.tube, to: edge.tube, edge: edge.id }));
  return {
    is: 'tee',
    vertex: vertex.id,
    edges: vertex.edges,
    ends: [end.id, other.id],
    branch: branch.id,
    degrees,
    sizes,
    form,
    words: wordsOf(sizes, form),
    changes,
    seen: from === 'drawing',
    guessed: from === 'guess',
  };
}

function unresolved(vertex: Vertex, reason: Unresolved['reason'], why: string): Unresolved {
  return { is: 'unresolved', vertex: vertex.id, edges: vertex.edges, reason, why };
}

/** The three ways of choosing two ends and a branch. */
const ways = ([a, b, c]: Trio) =>
  [
    { ends: [a, b], branch: c },
    { ends: [a, c], branch: b },
    { ends: [b, c], branch: a },
  ] as const;

/**
 * Where a way cannot be seen: new pipe is a branch of the old, else the two of one run are the ends, or the two of one
 * size. Old pipe nobody can see is a tee all the same, only that the way through it is not known.
 */
function byRuns(vertex: Vertex, edges: Trio): Tee | Unresolved {
  const alike = (test: (one: Edge, other: Edge, branch: Edge) => boolean) => {
    const found = ways(edges).filter(({ ends, branch }) => test(ends[0], ends[1], branch));
    return found.length === 1 ? found[0] : undefined;
  };
  const way =
    alike((a, b, branch) => a.state === 'there' && b.state === 'there' && branch.state === 'new') ??
    alike((a, b) => a.run === b.run) ??
    alike((a, b) => bySize(a.tube, b.tube) === 0);
  if (way) return teeOf(vertex, way.ends, way.branch, 90, 'runs');
  if (edges.every((e) => e.state === 'there')) return teeOf(vertex, [edges[0], edges[1]], edges[2], 90, 'guess');
  return unresolved(
    vertex,
    'place',
    'Three pipes meet, and which two are in line is not known: the place of one of them is unseen.',
  );
}

/** Three pipes at a place: two in line and one aside make a tee, anything else is said to be unresolved. */
export function teeAt(vertex: Vertex, edges: Trio): Tee | Unresolved {
  const vectors = edges.map((e) => into(e, vertex.id));
  if (vectors.some((v) => v === null)) return byRuns(vertex, edges);
  const give = tolerance(edges.map((e) => e.tube.kind));
  const turn = (one: Edge, other: Edge): number => {
    const [u, w] = [into(one, vertex.id), into(other, vertex.id)];
    return u && w ? turnBetween(u, w) : 0;
  };
  const inLine = ways(edges).filter(({ ends }) => angleClass(turn(ends[0], ends[1]), give) === 0);
  const way = inLine[0];
  if (!way) {
    const right = ways(edges).every(({ ends }) => angleClass(turn(ends[0], ends[1]), give) === 90);
    return right
      ? unresolved(
          vertex,
          'corner',
          'Three pipes meet at right angles to each other. No tee has that shape: turn one of them a little before or after.',
        )
      : unresolved(
          vertex,
          'ways',
          'Three pipes meet and no two of them are in line, so no tee fits. Bring two of them into line.',
        );
  }
  const aside = Math.min(turn(way.ends[0], way.branch), turn(way.ends[1], way.branch));
  const degrees: AngleClass | undefined = angleClass(aside, give);
  const oblique = edges.every((e) => hasBranchesAt45(e.tube.kind));
  if (inLine.length > 1 || degrees === 0) {
    return unresolved(vertex, 'ways', 'Two pipes leave in the same direction, one inside the other.');
  }
  if (degrees === 90 || (degrees === 45 && oblique)) return teeOf(vertex, way.ends, way.branch, degrees, 'drawing');
  return unresolved(vertex, 'angle', `A branch leaves at ${sayDegrees(aside)}. No tee of this pipe has that angle.`);
}
