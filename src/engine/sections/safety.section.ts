import type { Row, State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { watched } from '../space/alarm-place.ts';
import { bondsOf } from '../space/bonds.ts';
import { emergencyControls } from '../space/emergency-control.ts';
import { note } from '../tests-due/row-makers.ts';
import { alarmRows, bondRows, controlRows } from './safety-rows.ts';

const ORDER: readonly State[] = ['stop', 'check', 'cantTell', 'pass'];
const plural = (n: number): string => (n === 1 ? '1 to look at' : `${n} to look at`);

export default defineSection({
  id: 'safety',
  order: 35,
  write(given) {
    const alarms = watched(given);
    const controls = emergencyControls(given);
    // What was there before is told where this job comes to it, or where it was surveyed.
    const bonds = bondsOf(given).filter((b) => b.touched || b.clamp || b.told);
    const rows: Row[] = [
      ...alarms.flatMap((w) => alarmRows(given, w)),
      ...bonds.flatMap((b) => bondRows(given, b)),
      ...controls.flatMap((c) => controlRows(given, c)),
    ];
    if (rows.length === 0) return null;
    const states = rows.flatMap((r) => (r.kind === 'verdict' ? [r.state] : []));
    const bad = states.filter((s) => s === 'stop' || s === 'check').length;
    return {
      title: 'Alarm, bonding, shutting off',
      answer: bad === 0 ? 'nothing found wrong' : plural(bad),
      state: ORDER.find((s) => states.includes(s)) ?? 'none',
      rows: [
        ...rows,
        note("An electrician decides on bonding. The alarm's own instructions go first; local rules too.", [
          {
            source: 'alarm-consultation-article',
            clause: 'position, wording before the 2022 edition',
            table: 'alarm-place',
          },
          { source: 'bonding-quotation', clause: 'regulation 544.1.2', table: 'bonding' },
        ]),
      ],
    };
  },
});
