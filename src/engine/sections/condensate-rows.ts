import { figure, word } from '../../reference/figure.ts';
import { againstLeast, between, exact, type Quantity, roundQuantity } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import type { CondensateDrain, CondensateStep } from '../drainage/condensate-drains.ts';
import { kindOf } from '../drainage/drains.ts';
import { condensateFalls } from '../drainage/falls-wanted.ts';
import { type VoidFall, voidFalls } from '../drainage/void-room.ts';
import type { Given } from '../given.ts';
import { limitFor } from '../limits.ts';
import { midSentence, sayPoint, sayRun } from '../say-names.ts';

/** How the fall of one drain stands: its flattest piece against what is wanted. */
export interface Condition {
  readonly state: State;
  /** Fall of its flattest piece, mm in a metre; null where it is pumped, upright throughout, or not known. */
  readonly least: Quantity | null;
  readonly say: string;
  readonly wanted: Quantity | null;
  readonly flattest: CondensateStep | null;
}

const RANK: readonly State[] = ['stop', 'check', 'cantTell', 'note', 'pass', 'none'];
export const worstOf = (all: readonly Condition[]): Condition | undefined =>
  [...all].sort((a, b) => RANK.indexOf(a.state) - RANK.indexOf(b.state))[0];

export function conditionOf(given: Given, drain: CondensateDrain): Condition {
  const falls = condensateFalls(given.plan.basis.editions);
  const limit = limitFor(given.plan, 'condensate-fall', drain.source?.point ?? null, falls.wanted);
  const wanted = limit?.figure ?? null;
  const none = { least: null, wanted, flattest: null };
  if (drain.pumped) return { ...none, state: 'none', say: 'pushed by a pump' };
  const sloping = drain.steps.flatMap((s) => (s.lie.is === 'slopes' ? [{ step: s, fall: s.lie.mmPerM }] : []));
  const [flattest] = [...sloping].sort((a, b) => a.fall.lo - b.fall.lo);
  if (drain.steps.some((s) => s.lie.is === 'up')) return { ...none, state: 'stop', say: 'climbs' };
  if (!flattest) {
    const unknown = drain.steps.some((s) => s.lie.is === 'unknown');
    return { ...none, state: unknown ? 'cantTell' : 'pass', say: unknown ? 'heights missing' : 'straight down' };
  }
  const { step, fall } = flattest;
  const at = { least: fall, wanted, flattest: step };
  if (!limit) return { ...at, state: 'cantTell', say: 'edition missing' };
  if (fall.hi !== null && fall.hi <= 0) return { ...at, state: 'stop', say: fall.hi < 0 ? 'climbs' : 'level' };
  const floor = limit.overridden || falls.least.is !== 'known' ? limit.figure.lo : falls.least.lo;
  if (againstLeast(fall, floor) === 'stop') return { ...at, state: 'stop', say: 'too flat' };
  if (againstLeast(fall, limit.figure.lo) === 'pass') return { ...at, state: 'pass', say: 'falls enough' };
  return { ...at, state: 'check', say: 'enough for older guides, short of newer ones' };
}

function answer(given: Given, drain: CondensateDrain, c: Condition): Row {
  const from = drain.source ? midSentence(sayPoint(given.plan, drain.source.point)) : 'where it is drawn from';
  const to = drain.end ? midSentence(sayPoint(given.plan, drain.end.point)) : 'where it is drawn to';
  const label = sayRun(given.plan, drain.runs[0] ?? '');
  const of = `${from} to ${to}`;
  if (!c.least) return { kind: 'fact', label, figure: null, say: `${of}: ${c.say}`, ids: [...drain.runs] };
  return {
    kind: 'answer',
    label,
    of: `fall of its flattest piece, ${of}`,
    figure: roundQuantity(c.least),
    bar: { figure: roundQuantity(c.least), limit: c.wanted?.lo ?? null, state: c.state },
    say: c.say,
    room: null,
    ids: [...drain.runs],
  };
}

function sums(drain: CondensateDrain): Row[] {
  return drain.steps.flatMap((s, i): Row[] => {
    if (s.lie.is !== 'slopes' || s.drop === null || s.flatMm === null) return [];
    return [
      {
        kind: 'sum',
        label: `Piece ${i + 1}`,
        how: `${Math.round(s.drop.mm)} mm in ${(s.flatMm / 1000).toFixed(2)} m`,
        result: roundQuantity(s.lie.mmPerM),
        cites: [],
        ids: [s.edge.run],
      },
    ];
  });
}

/** Both editions side by side, each with the drop it would want over the flattest piece. */
function editions(given: Given, c: Condition): Row[] {
  const { wanted, least } = condensateFalls(given.plan.basis.editions);
  const flat = c.flattest?.flatMm ?? null;
  if (flat === null || wanted.is !== 'known' || least.is !== 'known') return [];
  const both = wanted.lo === least.lo ? [wanted] : [wanted, least];
  return both.map((f, i) => ({
    kind: 'sum',
    label: i === 0 ? 'Wanted' : 'Older guides',
    how: `${f.lo.toFixed(1)} mm x ${(flat / 1000).toFixed(2)} m`,
    result: exact(Math.round((f.lo * flat) / 100) / 10, 'mm', 0, f.sureness),
    cites: [{ source: f.cite.source, clause: f.cite.clause, table: f.cite.table }],
    ids: [],
  }));
}

function depth(f: VoidFall): Row {
  const name = f.space.name === '' ? `${f.space.kind} void` : f.space.name;
  const pipe = f.odMm === null ? '' : ` and ${f.odMm.toFixed(1)} of pipe`;
  return {
    kind: 'fact',
    label: `Depth it eats in the ${midSentence(name)}`,
    figure: exact(f.dropMm + (f.odMm ?? 0), 'mm', 0),
    say: `${Math.round(f.dropMm)} of fall over ${(f.flatMm / 1000).toFixed(2)} m${pipe}, of ${Math.round(f.depthMm)} mm there`,
    ids: [f.step.edge.run, f.space.id],
  };
}

function outside(drain: CondensateDrain): Row[] {
  const ids = [...drain.runs];
  if (!drain.coldM)
    return [{ kind: 'assumed', say: 'no closed room is drawn, so all of it is taken to be inside', ids }];
  const { lo, hi } = drain.coldM;
  const most = figure('condensate-limits', 'outside length', 'm');
  if (hi <= 0) return [{ kind: 'fact', label: 'Outside or unheated', figure: null, say: 'nothing of it', ids }];
  const say = most.is === 'known' ? `the guide stops at ${most.lo.toFixed(0)} m` : '';
  return [{ kind: 'fact', label: 'Outside or unheated', figure: roundQuantity(between(lo, hi, 'm', 1)), say, ids }];
}

function end(given: Given, drain: CondensateDrain): Row[] {
  const kind = kindOf(given, drain.end);
  const wants = kind === null ? undefined : word('condensate-ends', kind, 'wants');
  if (wants?.is !== 'known' || drain.end === null) return [];
  return [
    {
      kind: 'fact',
      label: `Ends in: ${midSentence(sayPoint(given.plan, drain.end.point))}`,
      figure: null,
      say: `wanted: ${wants.word}`,
      ids: [drain.end.point],
    },
  ];
}

/** What a pump has to do: how high above itself its pipe rises, and how far it goes on the level. */
function pumping(drain: CondensateDrain): Row[] {
  const heights = drain.steps.flatMap((s) => [s.a?.at.z ?? null, s.b?.at.z ?? null]);
  const from = heights[0] ?? null;
  const known = heights.flatMap((z) => (z === null ? [] : [z]));
  const lift = from === null || known.length < heights.length ? null : (Math.max(...known) - from) / 1000;
  const mm = drain.steps.reduce((sum, s) => sum + s.edge.lengthMm.lo, 0);
  const level = drain.steps.reduce(
    (sum, { a, b }) => sum + (a && b ? Math.hypot(b.at.x - a.at.x, b.at.y - a.at.y) : Number.NaN),
    0,
  );
  const ids = [...drain.runs];
  return [
    {
      kind: 'fact',
      label: 'Pump lifts',
      figure: lift === null ? null : roundQuantity(exact(lift, 'm', 1)),
      say: lift === null ? 'heights missing' : '',
      ids,
    },
    {
      kind: 'fact',
      label: 'Pumps along',
      figure: Number.isNaN(level) ? null : roundQuantity(exact(level / 1000, 'm', 1)),
      say: `${(mm / 1000).toFixed(1)} m of pipe in all`,
      ids,
    },
  ];
}

/** Everything that is said of one drain. */
export function condensateRows(given: Given, drain: CondensateDrain, c: Condition): Row[] {
  const { lo, hi } = drain.bends;
  const bends = lo === hi ? `${lo}` : `${lo} to ${hi}`;
  return [
    answer(given, drain, c),
    ...(drain.pumped ? pumping(drain) : [...sums(drain), ...editions(given, c), ...voidFalls(given, drain).map(depth)]),
    {
      kind: 'fact',
      label: 'Bends',
      figure: null,
      say: `${bends}; as few as may be, no number is set`,
      ids: [...drain.runs],
    },
    ...outside(drain),
    ...end(given, drain),
  ];
}
