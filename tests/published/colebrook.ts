/** The exact Colebrook-White factor, Darcy form, by Newton on 1 / sqrt f: what published tables hold. */
export function colebrook(re: number, relRoughness: number): number {
  let x = 7;
  for (let turn = 0; turn < 60; turn++) {
    const inner = relRoughness / 3.7 + (2.51 * x) / re;
    const miss = x + 2 * Math.log10(inner);
    const next = x - miss / (1 + ((2 / Math.LN10) * (2.51 / re)) / inner);
    if (Math.abs(next - x) < 1e-14) break;
    x = next;
  }
  return 1 / x ** 2;
}
