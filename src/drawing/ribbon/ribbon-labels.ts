import type { Item } from '../display-list.ts';

/** Words at a height, left of the section. Higher rank is kept where two would touch. */
export interface LevelLabel {
  readonly z: number;
  readonly text: string;
  readonly rank: number;
  /** A figure of the house, or letters of a run. */
  readonly strong: boolean;
}

const LINE_EM = 1.15;
const TICK_MM = 1.4;
const OFF_MM = 2.2;

/** Runs nearer in height than a line of text are named together: "HF, HR". */
export function gatherRuns(
  bars: readonly { z: number; letters: string; level: string }[],
  lineMm: number,
): LevelLabel[] {
  const sorted = [...bars].sort((a, b) => b.z - a.z);
  const groups: { z: number; letters: string; level: string }[][] = [];
  for (const one of sorted) {
    const last = groups.at(-1);
    const first = last?.[0];
    if (last && first && first.z - one.z < lineMm) last.push(one);
    else groups.push([one]);
  }
  return groups.map((group): LevelLabel => {
    const [first] = group as [{ z: number; letters: string; level: string }];
    const z = group.reduce((sum, g) => sum + g.z, 0) / group.length;
    const text =
      group.length === 1 ? `${first.letters} ${first.level}` : [...new Set(group.map((g) => g.letters))].join(', ');
    return { z, text, rank: 1, strong: false };
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

export function labelItems(labels: readonly LevelLabel[], left: number): Item[] {
  return labels.flatMap(({ z, text, strong }): Item[] => [
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
    },
  ]);
}
