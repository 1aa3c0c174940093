import { figure } from '../../../reference/figure.ts';
import type { Table } from '../../../reference/schema/table-schema.ts';
import { sayFigures } from '../../../report/quantity.ts';
import { joistEnds, sayBands } from '../../building/joist-ends.ts';
import { allJoistFaults, type FaultAt, joistTable, limitsAt } from '../../building/joist-reading.ts';
import { sayVoid } from '../../building/void-parts.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayAll, sayRun } from '../../say-names.ts';
import { JOIST_FAULTS, type JoistFault } from '../../structure/joist-faults.ts';
import { bandsFromOneEnd } from '../../structure/joist-limits.ts';
import { joistExamples } from './joist-examples.ts';
import { ALSO, JOIST_SENTENCES } from './joist-sentences.ts';

const RANK = ['stop', 'check', 'cantTell', 'note'] as const;
const rank = (f: JoistFault): number => RANK.indexOf(f.outcome) * 100 + JOIST_FAULTS.indexOf(f.kind);
/** How far past its limit: the worse of two of a kind. */
const past = ({ found, wanted }: JoistFault): number => Math.abs((found?.lo ?? 0) - (wanted?.hi ?? wanted?.lo ?? 0));

const byWorst = (a: FaultAt, b: FaultAt): number =>
  rank(a.fault) - rank(b.fault) || past(b.fault) - past(a.fault) || a.meeting.met.index - b.meeting.met.index;

/** "1100 to 1760 from either end (x 3400 to 4060 or x 4940 to 5600)". */
function saidBands(table: Table, { meeting, fault }: FaultAt): string {
  const { hole, notch } = limitsAt(table, meeting);
  const limits = fault.kind === 'notchPlace' ? notch : hole;
  if (limits.fromMm === null || limits.toMm === null) return 'a band that has not been read';
  const ends = joistEnds(meeting.space, meeting.joists, meeting.met);
  const bands = sayBands(meeting.joists, ends, bandsFromOneEnd(limits, meeting.met.spanMm));
  const from = `${Math.round(limits.fromMm)} to ${Math.round(limits.toMm)} from either end`;
  return bands === '' ? from : `${from} (${bands})`;
}

function toFault(given: Given, table: Table, all: readonly FaultAt[]): Fault[] {
  const sorted = [...all].sort(byWorst);
  const worst = sorted[0];
  if (!worst) return [];
  const { fault, meeting } = worst;
  const joists = new Set(sorted.map((f) => f.meeting.met.index));
  const others = [...new Set(sorted.map((f) => f.fault.kind))].filter((k) => k !== fault.kind && k !== 'deep');
  const also = others.flatMap((k) => ALSO[k] ?? []);
  const outcome = fault.outcome === 'stop' && meeting.pipe.heightAssumed ? 'check' : fault.outcome;
  const { hole, notch } = limitsAt(table, meeting);
  return [
    {
      outcome,
      say: fault.outcome === 'cantTell' ? 'cantTell' : fault.kind,
      ids: [meeting.run, meeting.space.id],
      legs: sorted.map((f) => f.meeting.pipe.edge.id),
      words: {
        run: sayRun(given.plan, meeting.run),
        space: sayVoid(meeting.space),
        other:
          worst.other === null
            ? ''
            : worst.other === meeting.run
              ? 'itself'
              : midSentence(sayRun(given.plan, worst.other)),
        found: fault.found ? sayFigures(fault.found) : '',
        wanted: fault.wanted ? sayFigures(fault.wanted) : '',
        joist: meeting.met.what === '' ? 'joist' : `joist (${meeting.met.what})`,
        bands: saidBands(table, worst),
        also: also.length === 0 ? '' : ` Also: ${sayAll(also)}.`,
      },
      found: fault.found,
      wanted: fault.wanted,
      wantedIs: fault.wantedIs,
      at: atPlace(meeting.pipe.storey, meeting.met.at),
      more: joists.size - 1,
      missing: outcome === 'cantTell' ? [...new Set(sorted.flatMap((f) => f.fault.missing))] : [],
      unverified: hole.unverified || notch.unverified,
      cites: [...(fault.kind === 'notchPlace' || fault.kind === 'notchDepth' ? notch : hole).cites, ...GENERAL],
    },
  ];
}

const GENERAL = (['shallow', 'deep', 'hole to notch'] as const).map((row) => figure('joist-general', row, 'mm').cite);

function lostEdition(given: Given): Fault[] {
  const met = given.joistMeetings;
  if (met.length === 0) return [];
  return [
    {
      outcome: 'cantTell',
      ids: [...new Set(met.map((m) => m.space.id))],
      missing: ['the edition of notches and holes this job has pinned'],
      say: 'edition',
    },
  ];
}

export default defineRule({
  id: 'structure/joists',
  topic: 'structure',
  since: '1',
  basis: 'recommendation',
  lifeSafety: false,
  cites: [
    { source: 'joist-notching-page', clause: 'notches and holes', table: 'joist-limits' },
    { source: 'standard-specification', clause: 'clause 670', table: 'joist-general' },
  ],
  needs: ['kind, depth, span and height of the joists', 'size and height of the pipe'],
  params: (given) => {
    const table = joistTable(given);
    return {
      shallow: figure('joist-general', 'shallow', 'mm'),
      deep: figure('joist-general', 'deep', 'mm'),
      toNotch: figure('joist-general', 'hole to notch', 'mm'),
      room: figure('joist-judgement', 'hole room', 'mm'),
      ...(table ? { hole: figure(table, 'hole', 'from'), notch: figure(table, 'notch', 'from') } : {}),
    };
  },
  judge(given) {
    const table = joistTable(given);
    if (!table) return lostEdition(given);
    const groups = new Map<string, FaultAt[]>();
    for (const f of allJoistFaults(given, table)) {
      const key = `${f.meeting.run}|${f.meeting.space.id}`;
      groups.set(key, [...(groups.get(key) ?? []), f]);
    }
    return [...groups.values()].flatMap((all) => toFault(given, table, all));
  },
  say: JOIST_SENTENCES,
  examples: joistExamples,
});
