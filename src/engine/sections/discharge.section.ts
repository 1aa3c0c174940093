import { sayFigures } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { discharges } from '../drainage/discharges.ts';
import { pipeSize } from '../drainage/tundish-pipe-size.ts';
import { reliefRows, tundishPipeRows, vesselRows } from './discharge-rows.ts';

const RANK: readonly State[] = ['stop', 'check', 'cantTell', 'note', 'pass', 'none'];

const howMany = (n: number): string => (n === 1 ? '1 pipe' : `${n} pipes`);

export default defineSection({
  id: 'discharge',
  order: 30,
  write(given) {
    const { tundishPipes, vessels, reliefs } = discharges(given);
    const sized = tundishPipes
      .filter((p) => !p.boilersOnly && p.vessels.length > 0)
      .map((pipe) => ({ pipe, size: pipeSize(pipe) }));
    if (tundishPipes.length + vessels.length + reliefs.length === 0) return null;
    const [worst] = [...sized].sort((a, b) => RANK.indexOf(a.size.verdict) - RANK.indexOf(b.size.verdict));
    const rows: Row[] = [
      ...tundishPipes.flatMap((p) => tundishPipeRows(given, p)),
      ...vessels.flatMap((v) => vesselRows(given, v)),
      ...reliefs.flatMap((r) => reliefRows(given, r)),
      {
        kind: 'note',
        say: "Work on unvented vessels is for people qualified for it, and is notified. The vessel's own instructions go first.",
        unverified: false,
        cites: [],
      },
    ];
    const total = worst?.size.own?.total;
    return {
      title: 'Relief and discharge',
      answer: total
        ? `${sayFigures(total)} m of ${worst.size.own?.most.lo.toFixed(0)}`
        : howMany(reliefs.length + sized.length),
      state: worst?.size.verdict ?? 'none',
      rows,
    };
  },
});
