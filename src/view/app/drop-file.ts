import { openText } from './open-file.ts';

/** A file dropped on the page is opened like one that was picked; a picture is put under the plan, to be drawn over. */
export function takeDroppedFiles(): void {
  const isFile = (e: DragEvent): boolean => e.dataTransfer?.types.includes('Files') ?? false;
  window.addEventListener('dragover', (e) => {
    if (isFile(e)) e.preventDefault();
  });
  window.addEventListener('drop', (e) => {
    const file = e.dataTransfer?.files[0];
    if (!file) return;
    e.preventDefault();
    if (file.type.startsWith('image/')) void import('../traces/draw-over.ts').then(({ drawOver }) => drawOver(file));
    else void file.text().then(openText);
  });
}
