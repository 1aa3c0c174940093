import { services } from '../../catalogue/services.ts';
import type { Network } from '../../network/network.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Box, Item, Vec } from '../display-list.ts';
import { levelMark } from '../text/say-level.ts';
import { isLevel, type LaidLeg, laidLeg } from './level-stretch.ts';
import { chainOf } from './long-chain.ts';
import { standingOn } from './long-fittings.ts';
import { longGround, type Passed } from './long-ground.ts';
import { clearOf, outerRadius, type Passing, passingPipes } from './passing.ts';
import { type UnrolledPiece, unrolledPieces } from './ribbon-run.ts';
import { type Figure, setFigures } from './room-for-words.ts';

export interface LongOptions {
  readonly storey: string;
  /** Across the section, mm of the plane: where the run starts and ends. */
  readonly left: number;
  readonly right: number;
  /** What shows, mm of the plane. */
  readonly within: Box;
  readonly mmPerPaperMm: number;
  /** mm of the plane of one px: nothing is thinner than three of them. */
  readonly pxMm: number;
  /** Height the chain of distances stands at. */
  readonly chainZ: number;
  /** Floor and ceiling over the datum: between them walls stand. */
  readonly floor: number;
  readonly ceiling: number;
}

/** A level part of the run that can be taken hold of: where it lies across the section. */
export interface LongPart {
  readonly leg: string;
  readonly z: number;
  readonly from: number;
  readonly upTo: number;
}

export interface LongSection {
  readonly ground: readonly Item[];
  readonly items: readonly Item[];
  readonly parts: readonly LongPart[];
  /** The same in words, in order along the run: "3.2 m: up 1920 to 2420". */
  readonly told: readonly string[];
}

const DOT_MM = 0.95;
/** An upright under this is a set in the pipe: it has no figure of its own. */
const LEAST_MM = 20;

const metres = (mm: number): string => `${(Math.round(mm / 100) / 10).toFixed(1)} m`;

/** Level pieces that follow one another at one height, as one. */
function levelParts(pieces: readonly UnrolledPiece[], x: (mm: number) => number): LongPart[] {
  const parts: (LongPart & { longest: number })[] = [];
  for (const p of pieces) {
    const [a, b] = p.places;
    if (p.kind !== 'leg' || !isLevel({ a, b })) continue;
    const z = (p.from[1] + p.upTo[1]) / 2;
    const length = p.upTo[0] - p.from[0];
    const last = parts.at(-1);
    if (last && Math.abs(last.z - z) < 1 && Math.abs(last.upTo - x(p.from[0])) < 1) {
      const longer = length > last.longest;
      parts[parts.length - 1] = {
        ...last,
        upTo: x(p.upTo[0]),
        leg: longer ? p.edge : last.leg,
        longest: Math.max(length, last.longest),
      };
    } else parts.push({ leg: p.edge, z, from: x(p.from[0]), upTo: x(p.upTo[0]), longest: length });
  }
  return parts.map(({ leg, z, from, upTo }) => ({ leg, z, from, upTo }));
}

/** How far along the run a passing pipe is met. */
function alongOf(pieces: readonly UnrolledPiece[], p: Passing): Vec | null {
  const piece = pieces.find((one) => one.edge === p.of);
  if (!piece) return null;
  const [a, b] = piece.places;
  const flat = piece.upTo[0] - piece.from[0];
  const t = flat === 0 ? 0 : Math.hypot(p.at.x - a.x, p.at.y - a.y) / flat;
  return [piece.from[0] + Math.min(1, t) * flat, a.z + (b.z - a.z) * Math.min(1, t)];
}

/**
 * A run unrolled at its whole length: rises and drops, levels, a chain of distances, what it passes through and what
 * passes it. Heights are true; along it everything is drawn in one ratio, so that it fills the width.
 */
export function longSection(plan: Plan, network: Network, run: string, options: LongOptions): LongSection {
  const pieces = unrolledPieces(plan, network, run);
  const { left, right, mmPerPaperMm: k, storey } = options;
  const length = Math.max(0, ...pieces.map((p) => p.upTo[0]));
  const x = (s: number): number => (length < 1 ? (left + right) / 2 : left + (s / length) * (right - left));
  const at = ([s, z]: Vec): Vec => [x(s), z];
  const figure = (z: number): string => levelMark(plan, z, storey);
  const { floor, ceiling } = options;
  const ground = longGround(plan, network, pieces, {
    storey,
    x,
    leastMm: 3 * options.pxMm,
    low: floor,
    high: ceiling,
  });
  const lines = pieces.map(
    (p): Item => ({
      t: 'line',
      pts: [at(p.from), at(p.upTo)],
      style: p.style.dash.length === 0 ? { ...p.style, cap: 'round' } : p.style,
    }),
  );
  const parts = levelParts(pieces, x);
  const told: Passed[] = [...ground.passed];
  const figures: Figure[] = parts.map((part) => ({
    at: [(part.from + part.upTo) / 2, part.z],
    text: figure(part.z),
    strong: true,
    ink: 'ink1',
    tries: [
      { off: [0, 2.4], align: 'middle' },
      { off: [0, -2.4], align: 'middle' },
    ],
  }));
  for (const p of pieces) {
    const [a, b] = p.places;
    const rise = Math.round(b.z - a.z);
    const upright = p.kind === 'leg' && !isLevel({ a, b }) && Math.abs(rise) >= LEAST_MM;
    const word = `${rise > 0 ? 'up' : 'down'} ${Math.abs(rise)}`;
    if (upright) {
      figures.push({
        at: [x((p.from[0] + p.upTo[0]) / 2), (a.z + b.z) / 2],
        text: word,
        strong: false,
        ink: 'ink2',
        tries: [
          { off: [1.6, 0], align: 'left' },
          { off: [-1.6, 0], align: 'right' },
          { off: [1.6, 5], align: 'left' },
          { off: [-1.6, -5], align: 'right' },
        ],
      });
      told.push({ alongMm: p.from[0], words: `${word} to ${figure(b.z)}` });
    } else if (p.kind === 'stretch') told.push({ alongMm: p.from[0], words: 'a stretch nobody has seen' });
    else told.push({ alongMm: p.from[0], words: `level at ${figure(a.z)}` });
  }
  const stood = standingOn(network, pieces, at);
  told.push(...stood.passed);
  const laid = pieces.flatMap((p): LaidLeg[] => {
    const one = p.kind === 'leg' ? laidLeg(plan, p.edge) : null;
    return one ? [one] : [];
  });
  const dots: Item[] = [];
  for (const passing of passingPipes(plan, network, laid)) {
    const place = alongOf(pieces, passing);
    const own = plan.legs[passing.of];
    if (!place || !own) continue;
    const clear = Math.round(clearOf(place[1], outerRadius(own), passing));
    const z = (passing.low + passing.high) / 2;
    const dot: Vec = [x(place[0]), z];
    dots.push({ t: 'mark', mark: 'tee', at: dot, turnDeg: 0, ink: inkOf(passing.service), sizeMm: DOT_MM });
    const words = clear < 0 ? 'in the way' : `${clear} clear`;
    figures.push({
      at: dot,
      text: words,
      strong: clear < 0,
      ink: clear < 0 ? 'stop' : 'ink2',
      tries: [
        { off: [1.6, -1.8], align: 'left' },
        { off: [-1.6, -1.8], align: 'right' },
        { off: [1.6, 1.8], align: 'left' },
        { off: [-1.6, 1.8], align: 'right' },
      ],
    });
    const side = place[1] > z ? 'over' : 'under';
    const said = clear < 0 ? `runs into the ${passing.name}` : `${side} the ${passing.name}, ${clear} clear`;
    told.push({ alongMm: place[0], words: said });
  }
  const chain = chainOf(pieces, x, options.chainZ, k);
  const words = told
    .map((t, i) => ({ ...t, i }))
    .sort((a, b) => a.alongMm - b.alongMm || a.i - b.i)
    .map((t) => `${metres(t.alongMm)}: ${t.words}`);
  return {
    ground: ground.items,
    items: [
      ...lines,
      ...dots,
      ...stood.items,
      ...chain.items,
      ...setFigures([...chain.figures, ...figures], k, options.within),
    ],
    parts,
    told: words.filter((w, i) => w !== words[i - 1]),
  };
}

const inkOf = (service: string): string => `service:${services.get(service)?.style ?? service}`;
