/** "kept 10:12", in the device's own day; empty before anything was kept. */
export function sayKept(at: number | null): string {
  if (at === null) return '';
  const d = new Date(at);
  return `kept ${String(d.getHours()).padStart(2, '0')}:${String(d.getMinutes()).padStart(2, '0')}`;
}
