import { readingOf } from '../../catalogue/reading-kinds.ts';
import { exact, roundQuantity } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import { discharges } from '../drainage/discharges.ts';
import type { Given } from '../given.ts';
import type { Assessed, StateFound } from '../preheat/assess.ts';
import { contentOfPipes, type ExtraLoss, extraLoss, toldFlow } from '../preheat/extra-loss.ts';
import { kwAt } from '../preheat/heat-added.ts';
import { celsius as told } from '../preheat/temperatures.ts';
import { midSentence, sayAll, sayPoint, sentence } from '../say-names.ts';
import { coldWords, degrees, stateLabel, stateWords } from './preheat-words.ts';

const named = (given: Given, id: string): string => midSentence(sayPoint(given.plan, id));

function flowOf(given: Given, { preheat }: Assessed) {
  const { heater, outlets } = preheat;
  return toldFlow([
    told(outlets[0]?.point.fields.flowLPerMin),
    heater?.kind === 'boiler' ? told(heater.fields.hotLPerMin) : null,
    readingOf(given.plan, 'mains-flow')?.value ?? null,
  ]);
}

function stateRow(given: Given, a: Assessed, state: StateFound): Row {
  // Only at its worst is it held against what the next appliance takes.
  const verdict: State = state.id !== 'high' || a.inlet === 'none' ? 'none' : a.inlet;
  return {
    kind: 'verdict',
    label: stateLabel(state),
    state: verdict,
    say: stateWords(given, a, state),
    ids: [a.preheat.vessel.id, ...(a.preheat.outlets[0] ? [a.preheat.outlets[0].point.id] : [])],
  };
}

function heatRows(given: Given, a: Assessed): Row[] {
  const { set, preheat } = a;
  const { heater } = preheat;
  if (!heater || !set) return [];
  const flow = flowOf(given, a);
  return a.states.flatMap((state): Row[] => {
    const { addedKWhPerL: added, inletC } = state.trace;
    if (state.id === 'high' || added === null || inletC === null || added.hi === 0) return [];
    const kw = flow === null || heater.kind !== 'boiler' ? null : kwAt(flow.lo, inletC.lo, set.c);
    const from = `${degrees(inletC)} to ${set.c} °C`;
    return [
      {
        kind: 'sum',
        label: `Still added, vessel ${state.id}`,
        how:
          kw === null
            ? `${from}, a litre`
            : `${from} at ${flow?.lo} litres a minute: ${added.hi.toFixed(3)} kWh a litre`,
        result: kw === null ? exact(added.hi * 1000, 'Wh', 0) : exact(kw, 'kW', 1),
        cites: [{ source: 'own-sums', clause: 'flow x heat capacity x rise', table: 'preheat-temperatures' }],
        ids: [heater.id],
      },
    ];
  });
}

/** What is counted, and what comes on top because nobody read its sheet. */
function lossRow(given: Given, lPerMin: number, loss: ExtraLoss, ids: readonly string[]): Row {
  const counted = loss.counted.map((id) => `the ${named(given, id)}`);
  const gaps = [...loss.untold.map((id) => `the ${named(given, id)}, whose Kv is not told`), ...loss.missing];
  const top = gaps.length === 0 ? '' : `; on top comes ${gaps.join('; ')}`;
  return {
    kind: 'fact',
    label: 'Pressure lost on the way',
    figure: roundQuantity(loss.bar),
    say: `at ${lPerMin} litres a minute in ${sayAll([...counted, 'the pipes between and their fittings'])}${top}`,
    ids,
  };
}

function pipeRows(given: Given, a: Assessed): Row[] {
  const { pipes, vessel, heater } = a.preheat;
  if (!heater || pipes.length === 0) return [];
  const ids = [...new Set(pipes.flatMap((s) => s.runs))];
  const litres = told(vessel.fields.litres);
  const content = contentOfPipes(pipes);
  const rows: Row[] = [];
  if (content)
    rows.push({
      kind: 'fact',
      label: 'Water in the pipes between',
      figure: content,
      say: `${litres === null ? '' : `and ${litres} litres in the vessel; `}${heater.kind === 'boiler' ? 'it counts in the wait for hot water, so lag the pipe' : 'lag the pipe'}`,
      ids,
    });
  const flow = flowOf(given, a);
  const loss = flow && extraLoss(given, a.preheat, flow.lo, a.cold.c);
  if (flow && loss) rows.push(lossRow(given, flow.lo, loss, ids));
  return rows;
}

const SAID = { high: 'its high limit', hot: 'hot', lukewarm: 'lukewarm', cold: 'cold' } as const;

function assumedRow(given: Given, a: Assessed): Row[] {
  const { vessel } = a.preheat;
  const taken = [
    ...a.states.flatMap((s) => (s.vessel.told ? [] : [`${SAID[s.id]} ${s.vessel.c}`])),
    ...(a.cold.told ? [] : [`cold main ${a.cold.c}`]),
    ...(a.set && !a.set.told && a.preheat.heater ? [`${named(given, a.preheat.heater.id)} set to ${a.set.c}`] : []),
  ];
  if (taken.length === 0) return [];
  return [{ kind: 'assumed', say: `Nobody told, so taken as is usual, °C: ${taken.join(', ')}`, ids: [vessel.id] }];
}

function dischargeRow(given: Given, a: Assessed): Row[] {
  const { vessel } = a.preheat;
  const all = discharges(given);
  if (!all.vessels.some((v) => v.id === vessel.id)) return [];
  const tundishes = all.tundishesOf(vessel);
  const away = all.tundishPipes.filter((p) => p.vessels.some((v) => v.id === vessel.id));
  const say =
    tundishes.length === 0
      ? 'no tundish of its own drawn'
      : `lets out into the ${sayAll(tundishes.map((t) => named(given, t.id)))}${away.length > 0 ? `, and on by a pipe that is sized under relief and discharge` : ', and no pipe on from there is drawn'}`;
  return [{ kind: 'fact', label: 'Its own safety valve', figure: null, say, ids: [vessel.id] }];
}

/** Everything there is to say of one vessel and what heats on. */
export function preheatRows(given: Given, a: Assessed): Row[] {
  const { preheat } = a;
  const title = preheat.heater
    ? `${named(given, preheat.vessel.id)} ahead of the ${named(given, preheat.heater.id)}`
    : named(given, preheat.vessel.id);
  const ids = [preheat.vessel.id];
  const cold = coldWords(given, a);
  const heading: Row = { kind: 'heading', label: sentence(title), say: '', ids };
  if (preheat.heater === null && preheat.outlets.length === 0)
    return [
      heading,
      { kind: 'verdict', label: 'Where it goes', state: 'cantTell', say: 'What it feeds is not drawn.', ids },
      ...dischargeRow(given, a),
    ];
  return [
    heading,
    ...a.states.map((s) => stateRow(given, a, s)),
    ...(cold === null ? [] : [{ kind: 'fact' as const, label: 'Cold', figure: null, say: cold, ids }]),
    ...heatRows(given, a),
    ...pipeRows(given, a),
    ...dischargeRow(given, a),
    ...assumedRow(given, a),
  ];
}
