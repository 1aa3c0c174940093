import type { RecordMap } from '../../plan/plan.ts';

/** Where something in a file cannot be read: a map of the plan, its own fields (`plan`), or the file around it. */
export type ProblemMap = RecordMap | 'plan' | 'file' | 'blobs';

/** One thing in a file that cannot be read. `id` and `field` are empty where the whole is meant. */
export interface Problem {
  readonly map: ProblemMap;
  readonly id: string;
  readonly field: string;
  readonly why: string;
}

const NAMES: Readonly<Record<ProblemMap, string>> = {
  storeys: 'floor',
  walls: 'wall',
  openings: 'opening',
  rooms: 'room',
  roofs: 'roof',
  grounds: 'ground',
  voids: 'void',
  points: 'point',
  runs: 'run',
  nodes: 'node',
  legs: 'leg',
  stretches: 'unseen stretch',
  items: 'item',
  groups: 'group',
  options: 'option',
  acknowledgements: 'acknowledgement',
  overrides: 'changed limit',
  listEdits: 'list edit',
  things: 'thing',
  blobRefs: 'picture',
  plan: 'the job',
  file: 'the file',
  blobs: 'picture data',
};

/** "run r7", "the job". */
export function nameOf(map: ProblemMap, id: string): string {
  return id === '' ? NAMES[map] : `${NAMES[map]} ${id}`;
}

/** "run r7, field service: text was expected, a number stands there". */
export function sayProblem(p: Problem): string {
  const where = nameOf(p.map, p.id) + (p.field === '' ? '' : `, field ${p.field}`);
  return `${where}: ${p.why}`;
}

/** The first few in one sentence, the rest counted. */
export function sayProblems(problems: readonly Problem[], most = 3): string {
  const said = problems.slice(0, most).map(sayProblem).join('; ');
  const more = problems.length - most;
  return more > 0 ? `${said}; and ${more} more` : said;
}
