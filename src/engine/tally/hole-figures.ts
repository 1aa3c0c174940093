import type { TallyFigure } from '../../report/tally.ts';
import type { VoidPart } from '../building/void-parts.ts';
import type { Given } from '../given.ts';
import { goesThrough } from '../materials/sleeves.ts';
import { atLeast, count, figureOf } from './figure-of.ts';

const GROUP = 'Holes';

function joistRows(given: Given): TallyFigure[] {
  const met = given.joistMeetings.filter((m) => m.joists.kind !== 'metalWeb');
  const unread = met.filter((m) => m.reading === null);
  const cut = met.flatMap((m) => (m.reading !== null && m.reading !== 'lengthwise' ? [{ m, as: m.reading.as }] : []));
  const holes = cut.filter(({ as }) => as === 'hole');
  const notches = cut.filter(({ as }) => as === 'top' || as === 'bottom');
  const joists = new Set([...holes, ...notches].map(({ m }) => `${m.space.id}|${m.met.index}`));
  const say = unread.length === 0 ? '' : `${unread.length} of unknown height or depth`;
  const chapter = given.joistMeetings.length === 0 ? null : 'section:floors';
  const runs = (of: typeof cut): string[] => [...new Set(of.map(({ m }) => m.run))].sort();
  return [
    figureOf({
      id: 'holes/joists',
      group: GROUP,
      label: 'Holes through joists',
      order: 0,
      figure: atLeast(holes.length, unread.length),
      say,
      chapter,
      ids: runs(holes),
    }),
    figureOf({
      id: 'holes/notches',
      group: GROUP,
      label: 'Notches in joists',
      order: 1,
      figure: atLeast(notches.length, unread.length),
      say,
      chapter,
      ids: runs(notches),
    }),
    figureOf({
      id: 'work/joists',
      group: 'Work',
      label: 'Joists drilled or notched',
      order: 30,
      figure: atLeast(joists.size, unread.length),
      say,
      chapter,
      ids: runs([...holes, ...notches]),
    }),
  ];
}

const isUpright = ({ pipe: { body } }: VoidPart): boolean =>
  Math.abs(body.b.z - body.a.z) > Math.hypot(body.b.x - body.a.x, body.b.y - body.a.y);

/** Through walls, slabs and outside walls: one for each pipe that goes through, the flue among them. */
function wallRows(given: Given): TallyFigure[] {
  const pipes = given.crossings.filter(goesThrough);
  const flues = given.crossings.filter((c) => c.opening === null && c.pipe.edge.circuit === 'flue');
  const slabs = new Set(
    given.voidParts
      .filter((v) => v.space.kind === 'slab' && v.pipe.edge.state === 'new' && isUpright(v))
      .map((v) => `${v.pipe.run}|${v.space.id}`),
  );
  const cored = new Set([...pipes, ...flues].map((c) => c.wall));
  return [
    figureOf({
      id: 'holes/walls',
      group: GROUP,
      label: 'Holes through walls',
      order: 2,
      figure: count(pipes.length),
      say: flues.length > 0 ? 'and the flue' : '',
      chapter: 'list',
      ids: [...new Set(pipes.map((c) => c.wall))].sort(),
    }),
    figureOf({ id: 'holes/slabs', group: GROUP, label: 'Holes through slabs', order: 3, figure: count(slabs.size) }),
    figureOf({
      id: 'work/walls',
      group: 'Work',
      label: 'Walls cored',
      order: 31,
      figure: count(cored.size),
      chapter: 'list',
      ids: [...cored].sort(),
    }),
  ];
}

/** What new pipe goes through. Nothing before the work. */
export function holeFigures(given: Given): TallyFigure[] {
  return given.case.when === 'before' ? [] : [...joistRows(given), ...wallRows(given)];
}
