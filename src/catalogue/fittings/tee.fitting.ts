import { defineFitting, takes } from '../define-fitting.ts';
import { JOINING_WORDS } from '../joining-words.ts';

/**
 * Sizes in trade order: largest end, other end, branch. Continental lists put the branch in the middle, so the words
 * always stand beside the figures.
 */
function said(sizes: readonly string[]): string {
  const [a = '', b = '', branch = ''] = sizes;
  if (a === b && b === branch) return 'equal tee';
  if (a === b) return Number.parseFloat(branch) > Number.parseFloat(a) ? 'pendant tee' : 'reduced branch tee';
  return b === branch ? 'tee, end and branch reduced' : a === branch ? 'reduced end tee' : 'tee, all ends different';
}

export default defineFitting({
  id: 'tee',
  degrees: null,
  bought: true,
  label: (ask) => `${JOINING_WORDS[ask.joining]} ${said(ask.sizes)}`,
  size: (ask) => (new Set(ask.sizes).size === 1 ? (ask.sizes[0] ?? '') : ask.sizes.join(' x ')),
  ends: (ask) => ask.sizes.flatMap((size) => takes(ask, size)),
});
