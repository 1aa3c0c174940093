import { partOf, pointKinds } from '../../catalogue/point-kinds.ts';
import { servicesInOrder } from '../../catalogue/services.ts';
import { aliveIn } from '../../network/cases.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Assumptions } from '../editor-api.ts';
import { HEIGHT_WORDS } from './word-heights.ts';
import type { WordKey, WordsState } from './words-api.ts';

export const DIRECTIONS = ['up', 'ahead', 'down', 'left', 'right'] as const;
const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '0'];

const key = (group: WordKey['group'], id: string, label = id): WordKey => ({ id, label, group });

export interface FreeTail {
  readonly point: string;
  readonly connection: string;
  readonly name: string;
}

/**
 * Tails in the plan that nothing meets yet, at which a run of this service may start or end. Where a tail may be either,
 * it is offered for both.
 */
export function freeTails(plan: Plan, chosen: Case, service: string, part: 'source' | 'end' = 'source'): FreeTail[] {
  const not = part === 'source' ? 'end' : 'source';
  const alive = aliveIn(plan, chosen);
  const met = new Set<string>();
  for (const n of Object.values(plan.nodes)) {
    if (n.place.on === 'connection' && alive.has('nodes', n.id)) met.add(`${n.place.point}/${n.place.connection}`);
  }
  return Object.values(plan.points).flatMap((p) =>
    alive.has('points', p.id)
      ? p.connections
          .filter((c) => c.service === service && partOf(p, c.id) !== not && !met.has(`${p.id}/${c.id}`))
          .map((c) => ({ point: p.id, connection: c.id, name: p.name }))
      : [],
  );
}

/** The tail that a key names; undefined for other keys. */
export function tailOfKey(key: string): { readonly point: string; readonly connection: string } | undefined {
  const [, point, connection] = /^(?:at|to) (.+)\/([^/]+)$/.exec(key) ?? [];
  return point === undefined || connection === undefined ? undefined : { point, connection };
}

/** Tails a run may be taken to, with words that are not those of a key that makes a new thing. */
function endsThere(plan: Plan, chosen: Case, { service, tail }: WordsState): WordKey[] {
  if (service === null) return [];
  const fresh = new Set(kindsFor(service, 'end').map((k) => k.label));
  return freeTails(plan, chosen, service, 'end')
    .filter((t) => t.point !== tail?.point)
    .map((t) => key('end', `to ${t.point}/${t.connection}`, fresh.has(t.name) ? `${t.name}, drawn` : t.name));
}

/** Kinds at which a service starts, or where it is used. */
export function kindsFor(service: string, part: 'source' | 'end') {
  const order = ['source', 'appliance', 'tap', 'drain', 'electrical', 'other'];
  return [...pointKinds.values()]
    .filter(
      (k) =>
        !k.retired &&
        k
          .connections(k.size, k.defaults)
          .some((c) => c.service === service && (k.role[c.id] ?? k.role[service]) === part),
    )
    .sort((a, b) => order.indexOf(a.group) - order.indexOf(b.group));
}

export function classesOf(kind: string | undefined): readonly { readonly value: string; readonly label: string }[] {
  return pointKinds.get(kind ?? '')?.fields.find((f) => f.key === 'class')?.choices ?? [];
}

/** Whether it has still to be told how big a thing is: it has classes, and neither one of them nor its heat input is told. */
export function wantsClass(point: Point): boolean {
  const inputs = pointKinds.get(point.kind)?.gasInputs ?? [];
  const told = (f: string): boolean => point.fields[f] !== null && point.fields[f] !== undefined;
  return classesOf(point.kind).length > 0 && !['class', ...inputs].some(told);
}

const digits = (): WordKey[] => [...DIGITS.map((d) => key('digit', `digit ${d}`, d)), key('digit', '00')];

function heights(a: Assumptions): WordKey[] {
  return HEIGHT_WORDS.map((word) => key('height', word, word === 'off floor' ? `${a.offFloorMm} off floor` : word));
}

/** Digits after left or right may be a turn in degrees: more than none, less than straight back. */
export function tellsAngle({ dir, typed, turnDeg }: NonNullable<WordsState['pending']>): boolean {
  const degrees = Number(typed);
  return (dir === 'left' || dir === 'right') && turnDeg === undefined && degrees > 0 && degrees < 180;
}

/** What the pad offers in a state of the telling. */
export function padOf(
  plan: Plan,
  chosen: Case,
  state: WordsState,
  endKind: string | undefined,
  a: Assumptions,
): WordKey[] {
  const { phase, service, pending, changing, waiting } = state;
  const edit = [key('edit', 'rub'), key('edit', 'back'), key('edit', 'keep')];
  if (changing) return [...heights(a), ...digits(), ...edit];
  if (phase === 'service') return servicesInOrder().map((s) => key('service', s.id, s.label));
  if (phase === 'class') return [...classesOf(endKind).map((c) => key('class', `class ${c.value}`, c.label)), ...edit];
  if (service === null || phase === 'told')
    return [...servicesInOrder().map((s) => key('service', s.id, s.label)), ...edit.slice(1)];
  if (phase === 'from') {
    const there = freeTails(plan, chosen, service).map((t) => key('from', `at ${t.point}/${t.connection}`, t.name));
    return [...there, ...kindsFor(service, 'source').map((k) => key('from', k.id, k.label)), ...edit.slice(1)];
  }
  const upright = pending?.dir === 'up' || pending?.dir === 'down';
  return [
    ...DIRECTIONS.map((d) => key('direction', d)),
    ...(waiting.length === 0 ? [key('direction', 'tee')] : []),
    ...(upright ? heights(a) : pending ? [key('height', 'repeat')] : []),
    ...(pending ? digits() : []),
    ...endsThere(plan, chosen, state),
    ...kindsFor(service, 'end').map((k) => key('end', k.id, k.label)),
    ...edit,
    ...(pending && tellsAngle(pending) ? [key('height', 'own angle', `turn ${pending.typed} degrees`)] : []),
  ];
}
