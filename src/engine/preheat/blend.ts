/** Temperature of a blend, by the balance of heat: `share` of it is hot, the rest cold. Degrees. */
export const blendC = (share: number, hotC: number, coldC: number): number => share * hotC + (1 - share) * coldC;

/** Share of hot in a blend of a temperature; null where no blend of the two has it. */
export function hotShare(wantC: number, hotC: number, coldC: number): number | null {
  if (!(hotC > coldC)) return null;
  const share = (wantC - coldC) / (hotC - coldC);
  return share >= 0 && share <= 1 ? share : null;
}
