import { services } from '../../src/catalogue/services.ts';
import { tubeOdMm } from '../../src/catalogue/tubes.ts';
import { chainOf } from '../../src/network/bank/chain.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';
import { blank, editorOf } from './hand.ts';

export const FIVE = ['gas', 'heatingFlow', 'heatingReturn', 'cold', 'hot'] as const;

/** Members as the tray tells them: each in its usual tube. */
export const membersOf = (ids: readonly string[]) =>
  ids.map((service) => {
    const kind = services.get(service);
    if (!kind) throw new Error(`no service ${service}`);
    return { service, tube: { ...kind.defaultTube }, joining: kind.defaultJoining, turns: 'elbow' as const };
  });

export const place = ({ x, y, z }: Xyz) => ({
  storey: 'ground',
  x,
  y,
  height: { from: 'floor' as const, of: 'ground', mm: z },
});

/** An empty house with a boiler that stands free. */
export function withBoiler(at: Xyz, angleDeg = 0) {
  const editor = editorOf(blank());
  editor.setCase({ option: 'A', when: 'after' });
  const height = { from: 'floor', of: 'ground', mm: at.z };
  const made = editor.run('point.add', {
    kind: 'boiler',
    storey: 'ground',
    place: { on: 'storey', x: at.x, y: at.y, angleDeg, height },
    fields: { type: 'combi' },
  });
  if (!made.ok) throw new Error(made.why);
  return { editor, boiler: made.made[0] as string };
}

export const planOf = (editor: ReturnType<typeof editorOf>): Plan => editor.store.getState().plan;

/** Middle line of a run from end to end. */
export function lineOf(plan: Plan, run: string): readonly Xyz[] {
  const chain = chainOf(plan, run);
  if (!chain) throw new Error(`run ${run} has no line`);
  return chain.places;
}

export function radiusOf(plan: Plan, run: string): number {
  const leg = Object.values(plan.legs).find((l) => l.run === run);
  return (leg ? (tubeOdMm(leg.tube) ?? 0) : 0) / 2;
}

/** What each run of a bank ends on: the id of the connection, or "open". */
export function endsOf(plan: Plan, run: string): readonly [string, string] {
  const chain = chainOf(plan, run);
  const say = (id: string | undefined): string => {
    const at = plan.nodes[id ?? '']?.place;
    return at?.on === 'connection' ? at.connection : 'open';
  };
  return [say(chain?.nodes[0]), say(chain?.nodes.at(-1))];
}

/** What a plan says, whatever order its records stand in: what was deleted and put back stands last. */
export const bytesOf = (plan: Plan): string =>
  JSON.stringify(plan, (_, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
