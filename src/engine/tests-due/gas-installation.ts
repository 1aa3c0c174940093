import { tube } from '../../reference/tubes.ts';
import { addQuantities, type Quantity } from '../../report/quantity.ts';
import { installationVolume } from '../gas/installation-volume.ts';
import type { GasSection } from '../gas-system/solve-gas.ts';
import type { Given } from '../given.ts';
import { midSentence } from '../say-names.ts';

/** What a tightness test and a purge ask of the drawing. */
export interface GasInstallation {
  /** Row of the tables of meters; null where it is not told. */
  readonly meter: string | null;
  readonly anyNew: boolean;
  /** Nominal size of the largest pipe, mm; null where the size of one is not known. */
  readonly largestMm: number | null;
  /** By the tabulated volume per metre, m3; null where it is not bounded. */
  readonly volumeM3: Quantity | null;
  /** Of it, pipe whose length nobody saw; null where there is none. */
  readonly assumedM3: Quantity | null;
  readonly missing: readonly string[];
}

function nominalMm({ ask }: GasSection): number | null {
  const found = tube(ask.tubeKind, ask.size);
  if (!found) return null;
  const nominal = Number(found.label);
  return Number.isFinite(nominal) ? nominal : found.odMm;
}

const isSeen = ({ section, ask }: GasSection): boolean =>
  section.kind === 'leg' && ask.lengthM.hi !== null && ask.lengthM.hi - ask.lengthM.lo < 0.001;

/** The gas pipe from the meter on; null where there is none, or no single meter. */
export function gasInstallation(given: Given): GasInstallation | null {
  const sound = [...given.gas.sections.values()].filter((s) => s.section.sound);
  if (sound.length === 0 || !given.gas.meter) return null;
  const { kind } = given.gas.meter;
  const pipes = sound.map((s, i) => ({
    label: `${i}`,
    tubeKind: s.ask.tubeKind,
    size: s.ask.size,
    lengthM: s.ask.lengthM,
    name: s.ask.label,
  }));
  const { byTable } = installationVolume(pipes, kind);
  const unseen = new Set(sound.flatMap((s, i) => (isSeen(s) ? [] : [`${i}`])));
  const assumed = byTable.steps.flatMap((s) => (unseen.has(s.label) && s.result ? [s.result] : []));
  const sizes = sound.map(nominalMm);
  const known = sizes.flatMap((s) => (s === null ? [] : [s]));
  return {
    meter: kind,
    anyNew: sound.some((s) => !s.ask.kept),
    largestMm: known.length < sizes.length ? null : Math.max(...known),
    volumeM3: byTable.result,
    assumedM3: assumed.length === 0 ? null : addQuantities(assumed),
    missing: byTable.missing.map((m) =>
      m
        .replace(/\((\d+)\)$/, (_, i: string) => `(${midSentence(pipes[Number(i)]?.name ?? i)})`)
        .replace(/ of (\d+)$/, (_, i: string) => ` of ${midSentence(pipes[Number(i)]?.name ?? i)}`),
    ),
  };
}
