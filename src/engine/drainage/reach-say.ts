import type { ReachBlock } from '../../report/report.ts';
import type { Objection, ReachService } from './reach-ends.ts';
import type { Tried } from './reach-tried.ts';

interface Told {
  readonly best: Tried;
  /** The other ways that were tried. */
  readonly others: readonly Tried[];
  readonly reached: boolean;
  readonly tooLow: boolean;
  readonly blocks: readonly ReachBlock[];
  readonly objections: readonly Objection[];
  readonly tooFar: boolean;
  readonly service: ReachService;
  readonly floorZ: number;
}

/** From here on the height it arrives at is told in metres. */
const FAR_ABOVE_MM = 1000;

const metres = (mm: number): string => (mm / 1000).toFixed(1);

function sayLength({ told, outsideMm }: Tried): string {
  const insideMm = told.lengthMm - outsideMm;
  if (outsideMm < 50) return `${metres(told.lengthMm)} m`;
  if (insideMm < 50) return `${metres(told.lengthMm)} m outside`;
  return `${metres(told.lengthMm)} m, ${metres(outsideMm)} of it outside`;
}

const sayFall = ({ told, best }: Tried, service: ReachService): string => {
  if (service === 'boilerRelief') return '';
  const [least, wanted] = [Math.round(best.fallMm), Math.round(told.fallMm)];
  return least === wanted ? `, falls ${wanted}` : `, falls ${least} to ${wanted}`;
};

/** The same thing stands in the way on the other side of the wall: worth knowing before anybody tries it. */
function sayOthers(best: Tried, others: readonly Tried[]): string[] {
  const ids = new Set(best.blocks.flatMap((b) => b.ids));
  const words = { inside: 'indoors', outside: 'outside', under: 'under the floor' } as const;
  return others
    .filter((o) => o.state === 'stop' && o.how !== best.how && o.blocks.some((b) => b.ids.some((id) => ids.has(id))))
    .slice(0, 1)
    .map((o) => `in the way ${words[o.how]} too`);
}

const arrives = ({ told, worst, best }: Tried): string => {
  const [lo, hi] = [Math.round(worst.arrivesMm), Math.round(best.arrivesMm)];
  if (lo >= FAR_ABOVE_MM) return `arrives ${metres(lo)} m above it`;
  if (told.arrivesMm >= 0 && lo >= 0) return `arrives ${Math.round(told.arrivesMm)} above it`;
  return `arrives between ${Math.abs(lo)} too low and ${hi} above it`;
};

/** One sentence for an end: how far, how much it falls, what is in the way or how high it arrives. */
export function sayReach(t: Told): string {
  const parts = t.blocks.length > 0 ? [t.blocks[0]?.what ?? '', ...sayOthers(t.best, t.others)] : [];
  const more = t.blocks.length - 1;
  if (more > 0) parts[0] = `${parts[0]}, and ${more} more in the way`;
  if (t.reached) parts.push(arrives(t.best), ...t.best.says.filter((s) => !t.best.blocks.some((b) => b.what === s)));
  if (t.tooFar) parts.push('long outside: may freeze');
  parts.push(...t.objections.map((o) => o.say));
  return [`${sayLength(t.best)}${sayFall(t.best, t.service)}`, ...parts].join('; ');
}
