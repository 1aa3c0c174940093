import { exact, type Quantity } from '../../report/quantity.ts';

/** How a drawn pipe is read; shares are of the joist's depth. */
export interface CutJudgement {
  /** A hole is wider than its bare pipe by, and a notch deeper than the pipe's underside by. */
  readonly holeRoom: { readonly lo: number; readonly hi: number };
  readonly notchRoomMm: number;
  readonly edgeShare: number;
}

/**
 * What a pipe does to a joist. `clear`: it passes over or under without touching. `top`: a notch from above, `bottom`:
 * one from below, `hole`: through the middle. `mm`: depth of the notch or width of the hole.
 */
export interface JoistCutAs {
  readonly as: 'clear' | 'top' | 'bottom' | 'hole';
  readonly mm: Quantity | null;
  /** Off the centre line of the timber. */
  readonly offCentreMm: number;
}

/**
 * Reads a pipe of an outside diameter (null: nobody read it) whose middle is `aboveBottomMm` above the underside of a
 * joist. Near an edge it can only be let in from that edge; between it is a hole. All in mm.
 */
export function joistCut(aboveBottomMm: number, depthMm: number, odMm: number | null, judge: CutJudgement): JoistCutAs {
  const r = (odMm ?? 0) / 2;
  const offCentreMm = aboveBottomMm - depthMm / 2;
  if (aboveBottomMm - r >= depthMm || aboveBottomMm + r <= 0) return { as: 'clear', mm: null, offCentreMm };
  const edge = depthMm * judge.edgeShare;
  if (aboveBottomMm > depthMm - edge) {
    const deep = depthMm - (aboveBottomMm - r) + judge.notchRoomMm;
    return { as: 'top', mm: odMm === null ? null : exact(Math.min(deep, depthMm), 'mm', 0, 'practice'), offCentreMm };
  }
  if (aboveBottomMm < edge) {
    const deep = aboveBottomMm + r + judge.notchRoomMm;
    return {
      as: 'bottom',
      mm: odMm === null ? null : exact(Math.min(deep, depthMm), 'mm', 0, 'practice'),
      offCentreMm,
    };
  }
  return { as: 'hole', mm: odMm === null ? null : holeFor(odMm, judge), offCentreMm };
}

/** Width of the hole a bare pipe goes through, mm. Lagging stops at the timber, so it widens nothing. */
export function holeFor(odMm: number, judge: CutJudgement): Quantity {
  const { lo, hi } = judge.holeRoom;
  return { lo: odMm + lo, hi: odMm + hi, value: null, unit: 'mm', digits: 0, sureness: 'practice' };
}

/** Widest hole that two places along a joist leave room for: `diameters` of the larger between their centres. */
export const widestAt = (centresMm: number, diameters: number): number => centresMm / diameters;

/** From edge to edge of a hole and a notch along a joist; below zero where they run into each other. */
export const betweenCuts = (centresMm: number, firstMm: number, secondMm: number): number =>
  Math.abs(centresMm) - firstMm / 2 - secondMm / 2;
