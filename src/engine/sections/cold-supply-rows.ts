import { figure } from '../../reference/figure.ts';
import type { Row, State } from '../../report/section.ts';
import type { Given } from '../given.ts';
import { midSentence, sayAll, sayPoint, sentence } from '../say-names.ts';
import { growthLitres, usualGrowth } from '../supply/expansion.ts';
import { inletMaxBar } from '../supply/inlet-limits.ts';
import { arrivingBar, type Inlet, PARTS, type Part } from '../supply/inlets.ts';
import { type Mixer, wantsBalance } from '../supply/mixers.ts';
import { bar, type PressureFrom } from '../supply/reducers.ts';
import { pointsOn } from '../supply/way-back.ts';

const named = (given: Given, id: string): string => midSentence(sayPoint(given.plan, id));
const sayBar = (from: PressureFrom): string => (from.setBar === null ? from.say : `${from.say}, ${from.setBar} bar`);

function balanceWords(given: Given, m: Mixer): { state: State; say: string } | null {
  const { balance } = m;
  switch (balance.is) {
    case 'balanced': {
      const via = pointsOn(m.hot).filter(
        (p) => p.kind === 'preheat-vessel' || p.kind === 'cylinder' || p.kind === 'boiler',
      );
      const hot = sayAll(via.map((p) => `the ${named(given, p.id)}`));
      const behind = m.behindCheck ? ' It comes off behind the check valve: before it is better.' : '';
      return balance.by.id === null
        ? { state: 'pass', say: `balanced: cold and hot both straight from the main, the hot through ${hot}.` }
        : {
            state: m.behindCheck ? 'note' : 'pass',
            say: `balanced: cold from ${sayBar(balance.by)}, which also feeds ${hot}; it comes off before them.${behind}`,
          };
    }
    case 'unlike': {
      const say = `cold from ${sayBar(balance.cold)}, hot from behind ${sayBar(balance.hot)}`;
      return wantsBalance(m.point)
        ? { state: m.isNew ? 'check' : 'note', say: `not balanced: ${say}.` }
        : { state: 'none', say: `${say}: usual at a sink or basin.` };
    }
    case 'afterHeater':
      return { state: 'stop', say: `its cold comes off after the ${named(given, balance.heater.id)}.` };
    case 'vented':
      return {
        state: 'none',
        say: `hot from the ${named(given, balance.vessel.id)} by the head of its cistern: cold wants the same cistern.`,
      };
    case 'unseen':
      return null;
  }
}

/** One row for each mixer, and one for all whose way back is not drawn. */
export function mixerRows(given: Given, mixers: readonly Mixer[]): Row[] {
  const unseen: Mixer[] = [];
  const rows = mixers.flatMap((m): Row[] => {
    const words = balanceWords(given, m);
    if (words === null) {
      // At a sink or basin the main's own cold is usual, wherever it comes from.
      if (wantsBalance(m.point)) unseen.push(m);
      return [];
    }
    return [
      {
        kind: 'verdict',
        label: sayPoint(given.plan, m.point.id),
        ...words,
        say: sentence(words.say),
        ids: [m.point.id],
      },
    ];
  });
  if (unseen.length === 0) return rows;
  const names = sayAll(unseen.map((m) => named(given, m.point.id)));
  const say = `Hot and cold of the ${names} are not drawn back to where they part, so whether the cold is balanced is not told.`;
  return [...rows, { kind: 'verdict', label: 'Not drawn', state: 'cantTell', say, ids: unseen.map((m) => m.point.id) }];
}

const PART: Readonly<Record<Part, string>> = {
  strainer: 'strainer',
  reducer: 'reducer',
  check: 'check valve',
  relief: 'expansion relief',
};
const EXPANDS: Readonly<Record<string, string>> = {
  vessel: 'an expansion vessel',
  inside: 'air held inside it',
  none: 'none found',
};

function passes(given: Given, { way, has }: Inlet): string {
  const through = pointsOn(way).filter(
    (p) => p.kind === 'inlet-group' || p.kind === 'preheat-vessel' || p.kind === 'cylinder',
  );
  const by = through.length === 0 ? '' : `Through ${sayAll(through.map((p) => `the ${named(given, p.id)}`))}. `;
  const of = (had: 'there' | 'missing' | 'unseen') => PARTS.filter((p) => has[p] === had).map((p) => PART[p]);
  const there = of('there');
  const asUsual = through.some(
    (p) =>
      p.kind === 'inlet-group' &&
      ['hasStrainer', 'hasCheck', 'hasRelief'].every((key) => typeof p.fields[key] !== 'boolean'),
  );
  const parts = [
    there.length > 0 ? `In order: ${there.join(', ')}.` : '',
    of('missing').length > 0 ? `Not drawn: ${sayAll(of('missing'))}.` : '',
    of('unseen').length > 0 ? `Nobody saw: ${sayAll(of('unseen'))}.` : '',
    asUsual ? 'Nobody told what the group holds: taken as such a group usually is.' : '',
  ];
  return by + parts.filter((p) => p !== '').join(' ');
}

function expansionRow(inlet: Inlet): Row[] {
  const { vessel } = inlet;
  const { fromC, toC, percent } = usualGrowth();
  if (percent === null) return [];
  const litres = bar(vessel.fields.litres);
  const told = typeof vessel.fields.expansion === 'string' ? EXPANDS[vessel.fields.expansion] : undefined;
  return [
    {
      kind: 'sum',
      label: 'Expansion',
      how: `${percent.lo.toFixed(2)} % from ${fromC} to ${toC} °C, ${litres === null ? 'content not told' : `of ${litres} litres`}; room for it: ${told ?? 'not told'}`,
      result: litres === null ? null : (growthLitres(litres, fromC, toC) ?? null),
      cites: [{ source: 'own-sums', clause: 'growth from the densities of water', table: 'unvented-inlet' }],
      ids: [vessel.id],
    },
  ];
}

/** What the cold of a vessel passes, at what pressure it arrives, and what it grows by. */
export function inletRows(given: Given, inlet: Inlet): Row[] {
  const ids = [inlet.vessel.id];
  const lacks = PARTS.some((p) => inlet.has[p] === 'missing');
  const most = inletMaxBar(given.plan, inlet.vessel);
  const arrives = arrivingBar(given, inlet.way);
  const rows: Row[] = [
    { kind: 'heading', label: sentence(`cold to the ${named(given, inlet.vessel.id)}`), say: '', ids },
  ];
  rows.push({
    kind: 'verdict',
    label: 'On its way',
    state: inlet.way.steps.length === 0 ? 'cantTell' : lacks ? (inlet.isNew ? 'check' : 'note') : 'pass',
    say: inlet.way.steps.length === 0 ? 'Its cold is not drawn.' : passes(given, inlet),
    ids,
  });
  if (arrives !== null && inlet.way.steps.length > 0)
    rows.push({
      kind: 'verdict',
      label: 'Highest standing pressure',
      state: most === null ? 'none' : arrives.bar <= most ? 'pass' : 'stop',
      say: `${arrives.bar} bar by ${arrives.by}${most === null ? '; what its sheet allows is not told' : ` of at most ${most}`}.`,
      ids,
    });
  return [...rows, ...expansionRow(inlet)];
}

/** What a filling point counts as, told where one is drawn. */
export function backflowRows(given: Given): Row[] {
  const loops = Object.values(given.plan.items).filter(
    (i) => i.kind === 'filling-loop' && given.network.alive.has('items', i.id),
  );
  const [house, other] = [figure('backflow', 'house'), figure('backflow', 'other')];
  if (loops.length === 0 || house.is !== 'known' || other.is !== 'known') return [];
  return [
    {
      kind: 'fact',
      label: 'Filling loop',
      figure: null,
      say: `heating water with inhibitor is category ${house.lo} in a house: a double check valve, and better taken off; category ${other.lo} in another building`,
      ids: [],
    },
    { kind: 'note', say: house.note ?? '', unverified: false, cites: [house.cite, other.cite] },
  ];
}
