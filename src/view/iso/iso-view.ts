import { createStore } from 'zustand/vanilla';
import { nextQuarter, type Quarter } from '../../drawing/iso/iso-plane.ts';

/** How the isometric is looked at: kept while the page is open, never in the document. */
export interface IsoView {
  readonly quarter: Quarter;
  readonly lengths: boolean;
  readonly rooms: boolean;
}

export const isoView = createStore<IsoView>(() => ({ quarter: 0, lengths: true, rooms: true }));

export const turnIso = (): void => isoView.setState(({ quarter }) => ({ quarter: nextQuarter(quarter) }));
