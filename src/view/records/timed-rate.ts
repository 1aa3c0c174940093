const FT3 = 0.3048 ** 3;
const S_PER_H = 3600;

/** m3/h of what a meter passed in a time; null while one of the two is blank or nothing. */
export function timedM3PerH(m3: number | null, ft3: number | null, seconds: number | null): number | null {
  const passed = m3 ?? (ft3 === null ? null : ft3 * FT3);
  if (passed === null || seconds === null || !(passed > 0) || !(seconds > 0)) return null;
  return (S_PER_H * passed) / seconds;
}
