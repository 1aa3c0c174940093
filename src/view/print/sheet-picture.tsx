import { useEffect, useRef } from 'react';
import type { Sheet } from '../../drawing/sheet/sheet.ts';
import { sheetSvg } from '../../drawing/sheet/sheet-svg.ts';

const parser = new DOMParser();

/** A sheet as a picture of this page. Its text is text: it can be found and read out. */
export function pictureOf(sheet: Sheet): Element {
  return document.importNode(parser.parseFromString(sheetSvg(sheet, false), 'image/svg+xml').documentElement, true);
}

/** A page as it will come out, as large as there is room for it. */
export function SheetPicture({ sheet }: { readonly sheet: Sheet }) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.replaceChildren(pictureOf(sheet));
  }, [sheet]);
  return <div ref={box} className="print-sheet" style={{ aspectRatio: `${sheet.paper.wMm} / ${sheet.paper.hMm}` }} />;
}
