/**
 * Branded numbers. A brand costs nothing at run time and stops a length from being added to a pressure.
 * Plain arithmetic drops the brand; put it back with the maker of the unit you mean.
 */
declare const unit: unique symbol;
type Branded<U extends string> = number & { readonly [unit]?: U };

export type Mm = Branded<'mm'>;
export type Metres = Branded<'m'>;
export type Pa = Branded<'Pa'>;
export type Mbar = Branded<'mbar'>;
export type Kw = Branded<'kW'>;
export type M3PerH = Branded<'m3/h'>;
export type LPerS = Branded<'l/s'>;
export type MjPerM3 = Branded<'MJ/m3'>;
export type M3 = Branded<'m3'>;
export type Degrees = Branded<'deg'>;

/** Resolution of every stored length: a tenth of a millimetre, applied once when a command commits. */
export const LENGTH_STEP_MM = 0.1;
/** Two places nearer than this are the same place. */
export const COINCIDENT_MM = 0.2;

/** Nearest tenth of a millimetre; never gives minus zero. Throws on a number that is not finite. */
export function quantise(mm: number): Mm {
  if (!Number.isFinite(mm)) throw new RangeError(`a length must be a finite number, not ${mm}`);
  return Math.round(mm * 10) / 10 + 0;
}

export const metresFromMm = (mm: Mm): Metres => mm / 1000;
export const mmFromMetres = (m: Metres): Mm => m * 1000;
/** 1 mbar is 100 Pa by definition (SI). */
export const paFromMbar = (mbar: Mbar): Pa => mbar * 100;
export const mbarFromPa = (pa: Pa): Mbar => pa / 100;
/** 1 h is 3600 s; 1 m3 is 1000 l (SI). */
export const lPerSFromM3PerH = (q: M3PerH): LPerS => q / 3.6;
export const m3PerHFromLPerS = (q: LPerS): M3PerH => q * 3.6;
