import { addQuantities, exact, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { figures, step } from './said.ts';
import type { SectionDrop } from './section-drop.ts';

export interface PathDrop {
  /** mbar from meter outlet to the end; open above as soon as one section is. */
  readonly drop: Quantity;
  readonly working: Working;
}

/** Loss along a path, mbar: its sections one after the other, added end with end. An empty path loses nothing. */
export function pathDrop(title: string, sections: readonly SectionDrop[]): PathDrop {
  const drop = sections.length === 0 ? exact(0, 'mbar', 2) : addQuantities(sections.map((s) => s.drop));
  const missing = [...new Set(sections.flatMap((s) => s.working.missing))];
  return {
    drop,
    working: {
      title,
      steps: [
        ...sections.map((s) =>
          step(
            s.working.title,
            `${figures(s.effectiveLength)} m in all`,
            s.drop,
            s.working.steps.flatMap((w) => w.cites),
          ),
        ),
        step('Gas drop', 'all sections together', drop),
      ],
      result: drop.hi === null ? null : drop,
      missing,
      assumed: [...new Set(sections.flatMap((s) => s.working.assumed))],
    },
  };
}
