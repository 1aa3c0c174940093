import { distance3 } from '../../geometry/vec.ts';
import type { ReadBank } from '../../network/bank/read-bank.ts';
import type { Xyz } from '../../plan/records/parts.ts';

const LEVEL_MM = 0.2;

/** Corners of the level part about one leg of a bank's path: the first and the last of them; null where that leg is not level. */
export function levelPart(path: readonly Xyz[], leg: number): readonly [number, number] | null {
  const z = path[leg]?.z;
  const isLevel = (k: number): boolean => {
    const [a, b] = [path[k], path[k + 1]];
    if (!a || !b || z === undefined) return false;
    return Math.max(Math.abs(a.z - z), Math.abs(b.z - z)) < LEVEL_MM;
  };
  if (!isLevel(leg)) return null;
  let [from, to] = [leg, leg];
  while (isLevel(from - 1)) from--;
  while (isLevel(to + 1)) to++;
  return [from, to + 1];
}

/** The level leg of the path that is meant: the one a member's leg lies in, else the longest. Null where none is level. */
export function levelLeg(read: ReadBank, leg: string | null): number | null {
  const { path } = read;
  for (const { chain, corners } of leg === null ? [] : read.members) {
    const i = chain.legs.indexOf(leg as string);
    const k = i < 0 ? -1 : corners.findIndex((c, n) => c <= i && i < (corners[n + 1] ?? 0));
    if (k >= 0 && levelPart(path, k)) return k;
  }
  const level = path.slice(1).flatMap((b, k) => {
    const a = path[k] as Xyz;
    return Math.abs(a.z - b.z) < LEVEL_MM ? [{ k, mm: distance3(a, b) }] : [];
  });
  return level.sort((a, b) => b.mm - a.mm)[0]?.k ?? null;
}
