import { figure } from '../../reference/figure.ts';
import { exact, roundQuantity, sayFigures } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import { flueFalls } from '../flue/flue-falls.ts';
import { flueLength } from '../flue/flue-length.ts';
import { type FlueRoute, sheetOf } from '../flue/flue-routes.ts';
import { hiddenFlues } from '../flue/hatches.ts';
import type { TerminalDistances } from '../flue/terminal-distances.ts';
import type { Given } from '../given.ts';
import { supportEvery } from '../materials/clips.ts';
import { midSentence, sayPoint, sayRun, sentence } from '../say-names.ts';

const citeOf = (f: ReturnType<typeof figure>) => ({
  source: f.cite.source,
  clause: f.cite.clause,
  table: f.cite.table,
});

/** One terminal: what it serves, then every distance with its verdict, worst first. */
export function terminalRows(given: Given, of: TerminalDistances): Row[] {
  const { terminal: t, distances, missing, above } = of;
  const ids = [t.point.id];
  const serves = t.appliance
    ? `of the ${midSentence(sayPoint(given.plan, t.appliance.id))}`
    : 'of no appliance that is drawn';
  const rows: Row[] = [
    {
      kind: 'heading',
      label: sentence(sayPoint(given.plan, t.point.id)),
      say: t.isNew ? serves : `${serves}, there before: told, not judged`,
      ids,
    },
    ...distances.map(
      (d): Row => ({ kind: 'verdict', label: sentence(d.label), state: d.state, say: d.say, ids: [...ids, ...d.ids] }),
    ),
    ...missing.map((say): Row => ({ kind: 'assumed', say: `not known: ${say}`, ids })),
  ];
  const low = figure('flue-guard', 'guarded below', 'mm');
  if (above && t.isNew && !t.upright && low.is === 'known') {
    const wants = above.found.lo < low.lo;
    const state: State = wants && t.point.fields.guarded !== true ? 'check' : 'pass';
    const say = `${sayFigures(above.found)} above ${above.what}, guarded below ${low.lo}`;
    rows.push({ kind: 'verdict', label: 'Guard', state, say, ids });
  }
  return rows;
}

function lengthRows(route: FlueRoute, ids: readonly string[]): Row[] {
  const sheet = sheetOf(route.appliance);
  const working = flueLength(route, sheet);
  const steps = working.steps.map(
    (s): Row => ({
      kind: 'sum',
      label: s.label,
      how: s.how ?? '',
      result: s.result && roundQuantity(s.result),
      cites: s.cites,
      ids,
    }),
  );
  const most: Row = {
    kind: 'fact',
    label: 'Longest, by its sheet',
    figure: sheet.maxM === null ? null : exact(sheet.maxM, 'm', 2, 'page'),
    say: sheet.maxM === null ? 'not told' : '',
    ids,
  };
  return [
    ...steps,
    most,
    ...working.missing.map((say): Row => ({ kind: 'assumed', say: `not known: ${say}`, ids })),
    ...working.assumed.map((say): Row => ({ kind: 'assumed', say, ids })),
  ];
}

/** Both editions of the fall, each with the rise it wants over the level length. */
function fallRows(given: Given, route: FlueRoute, ids: readonly string[]): Row[] {
  const flatMm = route.way.steps.reduce((sum, s) => sum + (s.flatMm ?? 0), 0);
  const { wanted, least } = flueFalls(given.plan.basis.editions);
  if (wanted.is !== 'known' || least.is !== 'known' || flatMm < 1) return [];
  const both = wanted.lo === least.lo ? [wanted] : [wanted, least];
  return both.map((f, i) => ({
    kind: 'sum',
    label: i === 0 ? 'Rise wanted to the terminal' : 'By older guides',
    how: `${f.lo.toFixed(1)} mm x ${(flatMm / 1000).toFixed(2)} m`,
    result: exact(Math.round((f.lo * flatMm) / 100) / 10, 'mm', 0, f.sureness),
    cites: [citeOf(f)],
    ids,
  }));
}

function supports(given: Given, route: FlueRoute, ids: readonly string[]): Row[] {
  const [first] = route.way.steps;
  const every = first && supportEvery(first.edge, 'flue', given.plan.basis.editions);
  const metres = route.straightM.value ?? route.straightM.hi;
  if (!every || metres === null) return [];
  const along = Math.floor(metres / every.lo);
  const bends = route.bends90 + route.bends45;
  return [
    {
      kind: 'sum',
      label: 'Supports, about',
      how: `one each ${every.lo.toFixed(1)} m, and one at each of ${bends} bends`,
      result: exact(along + bends, '', 0, every.sureness),
      cites: [citeOf(every)],
      ids,
    },
  ];
}

function hidden(given: Given, route: FlueRoute, ids: readonly string[]): Row[] {
  const within = figure('flue-hidden', 'hatch within', 'mm');
  const side = figure('flue-hidden', 'hatch side', 'mm');
  if (within.is !== 'known' || side.is !== 'known') return [];
  const found = hiddenFlues(given, side.lo, within.lo).find((h) => h.route === route);
  if (!found) return [{ kind: 'fact', label: 'Hidden', figure: null, say: 'nothing but its way through a wall', ids }];
  const seen = found.joints.filter((j) => j.awayMm <= within.lo).length;
  const all = found.joints.length;
  return [
    {
      kind: 'fact',
      label: 'Hidden',
      figure: exact(route.hiddenM, 'm', 1),
      say: `${seen} of ${all} joints and supports there lie within ${(within.lo / 1000).toFixed(1)} m of a hatch, from memory`,
      ids: [...ids, ...new Set(route.hidden.map((h) => h.space.id))],
    },
  ];
}

/** One drawn flue: how long it counts, how it rises, where it is held, and what of it is hidden. */
export function routeRows(given: Given, route: FlueRoute): Row[] {
  const ids = [...route.way.runs];
  const label = sentence(sayRun(given.plan, ids[0] ?? ''));
  return [
    { kind: 'heading', label, say: route.isNew ? '' : 'there before', ids },
    ...lengthRows(route, ids),
    ...fallRows(given, route, ids),
    ...supports(given, route, ids),
    ...hidden(given, route, ids),
  ];
}
