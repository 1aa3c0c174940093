import type { Box, TextItem, Vec } from '../display-list.ts';
import { boxAt, overlap } from '../labels/paper.ts';
import { TEXT_MM } from '../look/tokens.ts';
import { textWidth } from '../text/measure.ts';

/**
 * A name asked for on the elevation. `under`: below `at`, else over `top`. `along`: beside something tall.
 * `aside`: to either side of a place. `level`: over the left end of a line. `foot`: under the right end of the ground.
 */
export interface WordWish {
  readonly at: Vec;
  readonly text: string;
  readonly tries: 'under' | 'along' | 'aside' | 'level' | 'foot';
  /** Records it names. */
  readonly ids?: readonly string[];
  readonly top?: number;
  /** Always said, even over something else. */
  readonly strong?: boolean;
}

const SIZE = 'small';
const OFF_MM = 1.8;

type Try = readonly [at: Vec, align: TextItem['align']];

const EARTH_MM = 2.5;

/** Further and further about a place, to the side of which a name stands. */
const roundAbout = ([x, y]: Vec, off: number, high: number): Try[] =>
  [0, 1, 2, 3].flatMap((n) =>
    [1, -1].flatMap((way): Try[] => [
      [[x + OFF_MM + 1, y + way * (off + n * high)], 'left'],
      [[x - OFF_MM - 1, y + way * (off + n * high)], 'right'],
    ]),
  );

/** Places in paper mm, best first. */
function triesOf(wish: WordWish, k: number, high: number): readonly Try[] {
  const [x, y] = [wish.at[0] / k, wish.at[1] / k];
  const top = (wish.top ?? wish.at[1]) / k;
  const line = high / 2 + 1;
  switch (wish.tries) {
    case 'under':
      return [
        [[x, y - line], 'middle'],
        [[x, top + line], 'middle'],
        ...(wish.strong ? roundAbout([x, (y + top) / 2], (top - y) / 2 + line, high) : []),
      ];
    case 'along':
      return [0.5, 0.25, 0.75, 0.12, 0.88].flatMap((t): Try[] => [
        [[x + OFF_MM, y + (top - y) * t], 'left'],
        [[x - OFF_MM, y + (top - y) * t], 'right'],
      ]);
    case 'aside':
      return [line, -line].flatMap((dy): Try[] => [
        [[x + OFF_MM, y + dy], 'left'],
        [[x - OFF_MM, y + dy], 'right'],
      ]);
    case 'foot':
      return [-line - EARTH_MM, line].map((dy): Try => [[x, y + dy], 'right']);
    case 'level':
      return [
        [[x, y + line], 'left'],
        [[x, y - line], 'left'],
      ];
  }
}

const boxOf = ([x, y]: Vec, align: TextItem['align'], w: number, h: number): Box =>
  boxAt(align === 'left' ? x + w / 2 : align === 'right' ? x - w / 2 : x, y, w, h);

/**
 * Names laid where nothing is written yet, in the order they come, those that must be said first. One without room is left
 * out. `taken` in mm of paper; what is laid is added to it.
 */
export function placeWords(wishes: readonly WordWish[], k: number, taken: Box[]): TextItem[] {
  const high = TEXT_MM.screen[SIZE];
  const first = [...wishes.filter((w) => w.strong), ...wishes.filter((w) => !w.strong)];
  return first.flatMap((wish): TextItem[] => {
    const weight = wish.strong ? 600 : 400;
    const width = textWidth(wish.text, high, weight);
    const tries = triesOf(wish, k, high);
    const free = tries.find(([at, align]) => !taken.some((b) => overlap(b, boxOf(at, align, width, high))));
    const found = free ?? (wish.strong ? tries[0] : undefined);
    if (!found) return [];
    const [[x, y], align] = found;
    taken.push(boxOf([x, y], align, width + 2, high));
    const at: Vec = [x * k, y * k];
    const ink = wish.strong ? 'ink1' : 'ink2';
    return [{ t: 'text', at, text: wish.text, size: SIZE, weight, align, ink, turnDeg: 0, halo: true }];
  });
}
