import type { Sheet } from '../../drawing/sheet/sheet.ts';
import { pictureOf } from './sheet-picture.tsx';

/**
 * Puts sheets on the page for the printer alone, each on paper of its own size, and takes everything else off it while
 * it prints. Gives back how to put it all as it was.
 */
export function layOutToPrint(sheets: readonly Sheet[]): () => void {
  const pages = document.createElement('div');
  pages.className = 'print-pages';
  for (const sheet of sheets) {
    const page = document.createElement('div');
    page.className = `print-page on-${sheet.paper.id}`;
    page.append(pictureOf(sheet));
    pages.append(page);
  }
  document.body.append(pages);
  document.documentElement.dataset.printing = 'true';
  return () => {
    pages.remove();
    delete document.documentElement.dataset.printing;
  };
}

/**
 * As long as it holds, the browser prints these sheets, by our key or by its own. `sheets` is asked when it is printed.
 * Ends when the returned function is called.
 */
export function printsSheets(sheets: () => readonly Sheet[]): () => void {
  let back: (() => void) | undefined;
  const before = (): void => {
    back?.();
    back = layOutToPrint(sheets());
  };
  const after = (): void => {
    back?.();
    back = undefined;
  };
  window.addEventListener('beforeprint', before);
  window.addEventListener('afterprint', after);
  return () => {
    window.removeEventListener('beforeprint', before);
    window.removeEventListener('afterprint', after);
    after();
  };
}
