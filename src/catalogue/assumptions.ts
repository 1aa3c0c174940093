import { figure } from '../reference/figure.ts';
import { assumedJoists, voidChoices } from './void-choices.ts';

export interface AssumedHeight {
  readonly mm: number;
  readonly lo: number;
  readonly hi: number;
}

/** Height above the floor taken where none was measured, with its bounds. Throws on a row the table does not have. */
export function assumed(thing: string): AssumedHeight {
  const found = figure('assumed-heights', thing, 'mm');
  if (found.is !== 'known' || found.hi === null) throw new Error(`no assumed height for "${thing}"`);
  return { mm: found.value ?? (found.lo + found.hi) / 2, lo: found.lo, hi: found.hi };
}

function openingSize(kind: string) {
  const read = (column: string): number => {
    const found = figure('assumed-openings', kind, column);
    if (found.is !== 'known') throw new Error(`no assumed ${column} for "${kind}"`);
    return found.value ?? found.lo;
  };
  return { widthMm: read('width'), sillMm: read('sill'), headMm: read('head') };
}

/** Everything the editor takes for granted on an empty page. */
export function assumptions() {
  const room = (key: string): number => {
    const found = figure('assumed-room', key, 'mm');
    if (found.is !== 'known') throw new Error(`no figure for "${key}"`);
    return found.value ?? found.lo;
  };
  return {
    ceilingMm: assumed('ceiling').mm,
    buildUpMm: room('floor build-up'),
    inVoid: assumed('void'),
    boilerTail: assumed('boilerTail'),
    meter: assumed('meter'),
    skirting: assumed('floorRun'),
    worktop: assumed('worktop'),
    offFloorMm: assumed('floorRun').mm,
    wallThicknessMm: room('partition'),
    standOffMm: room('pipe off wall'),
    underTailMm: {
      condensate: room('under tail, condensate'),
      boilerRelief: room('under tail, boilerRelief'),
      discharge: room('under tail, discharge'),
    },
    joists: assumedJoists(),
    voidChoices: voidChoices(),
    openings: {
      door: openingSize('door'),
      window: openingSize('window'),
      vent: openingSize('vent'),
      archway: openingSize('archway'),
    },
  };
}
