import tokens from '../../../shared/look/tokens.json';

/** The look, as data. Pens and drawing text in paper mm. */
export const PEN = tokens.pen;
export const SCREEN = tokens.screen;
export const SIZE = tokens.size;

export type ScreenTheme = 'day' | 'night';
export const themes = tokens.themes;

interface ServiceLook {
  readonly tag: string;
  readonly dashMm: readonly number[];
  readonly newMm: number;
  readonly thereMm: number;
  readonly stripMm: number;
}

const services: Readonly<Record<string, ServiceLook>> = tokens.service;

/** A service this version does not know is drawn unbroken and thin, with its own id as tag. */
const UNKNOWN: ServiceLook = { tag: '', dashMm: [], newMm: 0.7, thereMm: 0.4, stripMm: 0.3 };

/** Beat and pens of a service by its style key. */
export const serviceLook = (style: string): ServiceLook => services[style] ?? UNKNOWN;

const bankTagPx =
  tokens.type.scale.find((s) => s.name === 'bankTag')?.size ?? tokens.type.drawingMm.tag * tokens.screen.pxPerMm;

/** Text on the drawing in paper mm, by medium. A sheet is read from nearer than a tablet. */
export const TEXT_MM = {
  screen: { ...tokens.type.drawingMm, small: bankTagPx / tokens.screen.pxPerMm },
  sheet: {
    small: tokens.type.sheetMm.caption,
    tag: tokens.type.sheetMm.flag,
    room: tokens.type.sheetMm.room,
    flag: tokens.type.sheetMm.flag,
    flagSecond: tokens.type.sheetMm.body,
    dimension: tokens.type.sheetMm.dimension,
  },
} as const;
export type Medium = keyof typeof TEXT_MM;
