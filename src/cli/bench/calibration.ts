const SIDE = 48;

/**
 * A fixed piece of work of the kind the engine does: arithmetic on plain objects, maps by string, a sort. A figure
 * against it says how much work something is, whatever the machine.
 */
export function calibration(): number {
  const places = new Map<string, { x: number; y: number; at: number }>();
  for (let i = 0; i < SIDE * SIDE; i++) {
    places.set(`n${i}`, { x: (i * 7919) % 1009, y: (i * 104729) % 997, at: i });
  }
  const sorted = [...places.values()].sort((a, b) => a.x - b.x || a.y - b.y);
  let sum = 0;
  for (let i = 1; i < sorted.length; i++) {
    const [a, b] = [sorted[i - 1], sorted[i]];
    if (a && b) sum += Math.hypot(a.x - b.x, a.y - b.y) + (places.get(`n${b.at}`)?.x ?? 0) ** 1.5;
  }
  return sum;
}
