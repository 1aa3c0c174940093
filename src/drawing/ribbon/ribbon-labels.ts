import type { Item } from '../display-list.ts';
import { textWidth } from '../text/measure.ts';

/** Words at a height, left of the section. Higher rank is kept where two would touch. */
export interface LevelLabel {
  readonly z: number;
  readonly text: string;
  readonly rank: number;
  /** A figure of the house, or letters of a run. */
  readonly strong: boolean;
  /** Its height, or one of those it gathers, was taken for granted: it is underlined. */
  readonly unsure?: boolean;
}

const LINE_EM = 1.15;
const TICK_MM = 1.4;
const OFF_MM = 2.2;
/** Between the edge of the ribbon and a text. */
const EDGE_MM = 0.6;

/** What a run says at its height: letters and level, or as much of it as has room. */
const sayOne = (run: { letters: string; level: string }, fits: (text: string) => boolean): string => {
  const both = `${run.letters} ${run.level}`;
  return fits(both) ? both : run.letters;
};

/** "HF, HR"; where that is too long, the first of them and how many more: "HF +2". */
function sayAll(letters: readonly string[], fits: (text: string) => boolean): string {
  for (let n = letters.length; n > 1; n--) {
    const more = letters.length - n;
    const text = `${letters.slice(0, n).join(', ')}${more > 0 ? ` +${more}` : ''}`;
    if (fits(text)) return text;
  }
  return letters.length > 1 ? `${letters[0]} +${letters.length - 1}` : (letters[0] ?? '');
}

interface RunBar {
  readonly z: number;
  readonly letters: string;
  readonly level: string;
  readonly unsure?: boolean;
}

const middleOf = (group: readonly RunBar[]): number => group.reduce((sum, g) => sum + g.z, 0) / group.length;

/** From above: a run joins the group over it while the middles of the two are nearer than a line of text. */
function grouped(bars: readonly RunBar[], lineMm: number): RunBar[][] {
  const groups: RunBar[][] = [];
  for (const one of [...bars].sort((a, b) => b.z - a.z)) {
    let next = [one];
    for (let over = groups.at(-1); over && middleOf(over) - middleOf(next) < lineMm; over = groups.at(-1)) {
      next = [...over, ...next];
      groups.pop();
    }
    groups.push(next);
  }
  return groups;
}

/** Runs nearer in height than a line of text are named together: "HF, HR". `fits`: is there room for a text? */
export function gatherRuns(bars: readonly RunBar[], lineMm: number, fits: (text: string) => boolean): LevelLabel[] {
  return grouped(bars, lineMm).map((group): LevelLabel => {
    const [first] = group as [RunBar];
    const z = middleOf(group);
    const alike = group.every((g) => g.letters === first.letters && g.level === first.level);
    const text = alike ? sayOne(first, fits) : sayAll([...new Set(group.map((g) => g.letters))], fits);
    return { z, text, rank: 1, strong: false, unsure: group.some((g) => g.unsure === true) };
  });
}

/** Labels that do not touch: those of higher rank first, then from below. */
export function fitLabels(labels: readonly LevelLabel[], textMm: number, mmPerPaperMm: number): LevelLabel[] {
  const line = textMm * LINE_EM * mmPerPaperMm;
  const kept: LevelLabel[] = [];
  for (const label of [...labels].sort((a, b) => b.rank - a.rank || a.z - b.z)) {
    if (kept.every((k) => Math.abs(k.z - label.z) >= line)) kept.push(label);
  }
  return kept.sort((a, b) => a.z - b.z);
}

/** Is there room for a text between the edge of the ribbon and its tick? Both in mm of paper. */
export const fitsLeft =
  (roomMm: number, textMm: number) =>
  (text: string): boolean =>
    EDGE_MM + textWidth(text, textMm, 400) + OFF_MM <= roomMm;

export function labelItems(labels: readonly LevelLabel[], left: number): Item[] {
  return labels.flatMap(({ z, text, strong, unsure }): Item[] => [
    {
      t: 'line',
      pts: [
        [left, z],
        [left, z],
      ],
      offsetsMm: [
        [-TICK_MM, 0],
        [0, 0],
      ],
      style: { ink: 'rule', pen: 0.25, dash: [], fit: false },
    },
    {
      t: 'text',
      at: [left, z],
      text,
      size: 'dimension',
      weight: strong ? 600 : 400,
      align: 'right',
      ink: strong ? 'ink1' : 'ink2',
      turnDeg: 0,
      halo: false,
      offsetMm: [-OFF_MM, 0],
      ...(unsure ? { underline: 'dotted' as const } : {}),
    },
  ]);
}
