import type { Row, State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { newBoilers } from '../space/sited.ts';
import { note } from '../tests-due/row-makers.ts';
import { boilerRoom, newVessels, roomAnswer, vesselRows } from './working-room-rows.ts';

const ORDER: readonly State[] = ['stop', 'check', 'cantTell', 'pass'];

export default defineSection({
  id: 'working-room',
  order: 34,
  write(given) {
    const rooms = newBoilers(given).map((b) => boilerRoom(given, b));
    const vessels = newVessels(given).flatMap((v) => vesselRows(given, v));
    if (rooms.length === 0 && vessels.length === 0) return null;
    const rows: Row[] = [
      ...rooms.flatMap((r) => r.rows),
      ...vessels,
      note(
        'Its own sheet goes first in every one of these. Furniture is not known to the drawing unless it is drawn.',
        [{ source: 'trade-practice', clause: 'room to fit and look after a boiler', table: 'working-room' }],
      ),
    ];
    const states = rows.flatMap((r) => (r.kind === 'verdict' ? [r.state] : []));
    return {
      title: 'Room to work',
      answer: roomAnswer(rooms.flatMap((r) => r.sides)),
      state: ORDER.find((s) => states.includes(s)) ?? 'none',
      rows,
    };
  },
});
