import { type ScreenTheme, themes } from './tokens.ts';

/** 'forced': the device gives every page its own few colours; then shapes, beats and letters alone tell things apart. */
export type Theme = ScreenTheme | 'print' | 'forced';

/** Colours by the semantic names that a display list uses. Unknown inks are ink 1, unknown fills are paper. */
export interface Look {
  readonly theme: Theme;
  ink(name: string): string;
  /** Null: not filled. */
  fill(name: string): string | null;
  readonly paper: string;
  readonly halo: string;
  readonly mark: (outcome: string) => MarkLook;
}

export interface MarkLook {
  readonly line: string;
  readonly fill: string;
  readonly letter: string;
}

const BLACK = '#000000';
const WHITE = '#FFFFFF';

function screenLook(theme: ScreenTheme): Look {
  const t = themes[theme];
  const services: Readonly<Record<string, string>> = t.service;
  const marks: Readonly<Record<string, MarkLook>> = t.finding;
  const inks: Readonly<Record<string, string>> = {
    ...t.ink,
    wallEdge: t.building.wallEdge,
    opening: t.building.wallEdge,
    doorLeaf: t.building.wallEdge,
    dimension: t.ink.ink3,
    leader: t.ink.ink3,
    hatch: t.building.hatch,
    batten: t.building.hatch,
    symbol: t.ink.ink1,
    symbolGone: t.ink.ink3,
    live: t.accent.accent,
    accent: t.accent.accent,
    chosen: t.accent.tint,
    paper: t.surface.paper,
    rule: t.surface.rule,
    hairline: t.surface.hairline,
    cantTell: t.finding.cantTell.line,
    onAccent: t.accent.onAccent,
    stop: t.finding.stop.line,
  };
  const fills: Readonly<Record<string, string | null>> = {
    wall: t.building.wallFill,
    slab: t.building.wallFill,
    void: t.building.voidWash,
    room: t.surface.raised,
    opening: t.building.openingFill,
    paper: t.surface.paper,
    panel: t.surface.panel,
    tint: t.accent.tint,
    accent: t.accent.accent,
    ink: t.ink.ink1,
    cantTell: t.finding.cantTell.tint,
    none: null,
  };
  return {
    theme,
    ink: (name) => (name.startsWith('service:') ? services[name.slice(8)] : inks[name]) ?? t.ink.ink1,
    fill: (name) => (name in fills ? (fills[name] ?? null) : t.surface.paper),
    paper: t.surface.paper,
    halo: t.text.halo,
    mark: (outcome) => marks[outcome] ?? t.finding.note,
  };
}

/** Black only: told apart by beat, weight and letters. Walls and voids are the two greys; nothing is tinted. */
const printLook: Look = {
  theme: 'print',
  ink: (name) => (name === 'paper' || name === 'onAccent' || name === 'chosen' ? WHITE : BLACK),
  fill: (name) => {
    if (name === 'wall' || name === 'slab') return '#C9C9C9';
    if (name === 'void') return '#EFEFEF';
    if (name === 'ink' || name === 'accent') return BLACK;
    return name === 'none' || name === 'tint' ? null : WHITE;
  },
  paper: WHITE,
  halo: WHITE,
  mark: (outcome) =>
    outcome === 'stop' ? { line: BLACK, fill: BLACK, letter: WHITE } : { line: BLACK, fill: WHITE, letter: BLACK },
};

const HIGHLIT = new Set(['live', 'accent', 'chosen']);
const FILLED: Readonly<Record<string, string | null>> = {
  ink: 'CanvasText',
  accent: 'Highlight',
  tint: null,
  none: null,
};

/** The device's own colours by the names every canvas knows; what they are is the user's affair. */
const forcedLook: Look = {
  theme: 'forced',
  ink: (name) => {
    if (name === 'paper') return 'Canvas';
    if (name === 'onAccent') return 'HighlightText';
    return HIGHLIT.has(name) ? 'Highlight' : 'CanvasText';
  },
  fill: (name) => (name in FILLED ? (FILLED[name] ?? null) : 'Canvas'),
  paper: 'Canvas',
  halo: 'Canvas',
  mark: (outcome) =>
    outcome === 'stop'
      ? { line: 'CanvasText', fill: 'CanvasText', letter: 'Canvas' }
      : { line: 'CanvasText', fill: 'Canvas', letter: 'CanvasText' },
};

const looks: Readonly<Record<Theme, Look>> = {
  day: screenLook('day'),
  night: screenLook('night'),
  print: printLook,
  forced: forcedLook,
};

export const styleOf = (theme: Theme): Look => looks[theme];
