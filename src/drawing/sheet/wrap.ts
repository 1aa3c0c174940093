import { textWidth, type Weight } from '../text/measure.ts';

/** A word that is longer than the line, cut where it has to be. */
function pieces(word: string, size: number, weight: Weight, width: number): string[] {
  const found: string[] = [];
  let piece = '';
  for (const char of word) {
    if (piece !== '' && textWidth(piece + char, size, weight) > width) {
      found.push(piece);
      piece = char;
    } else piece += char;
  }
  return piece === '' ? found : [...found, piece];
}

/** Lines of a text no wider than `width`, in the unit of `size`. Breaks of its own are kept. */
export function wrap(text: string, size: number, weight: Weight, width: number): string[] {
  const lines: string[] = [];
  for (const paragraph of text.split('\n')) {
    let line = '';
    const words = paragraph.split(/\s+/).filter((w) => w !== '');
    for (const word of words.flatMap((w) =>
      textWidth(w, size, weight) > width ? pieces(w, size, weight, width) : [w],
    )) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (line !== '' && textWidth(longer, size, weight) > width) {
        lines.push(line);
        line = word;
      } else line = longer;
    }
    if (line !== '') lines.push(line);
  }
  return lines;
}

/** The first lines of a text; what is left out is told by three dots. */
export function wrapTo(text: string, size: number, weight: Weight, width: number, most: number): string[] {
  const all = wrap(text, size, weight, width);
  if (all.length <= most) return all;
  const kept = all.slice(0, most);
  let last = kept[most - 1] ?? '';
  while (last !== '' && textWidth(`${last}...`, size, weight) > width) last = last.slice(0, -1);
  return [...kept.slice(0, -1), `${last.trimEnd()}...`];
}
