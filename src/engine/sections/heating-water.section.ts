import type { Row, State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { drainDowns } from '../heating-system/drain-down.ts';
import { vesselChecks } from '../heating-system/vessel-check.ts';
import { waterContents } from '../heating-system/water-content.ts';
import { sayAll, sayPoint } from '../say-names.ts';
import {
  contentRows,
  drainRows,
  partRows,
  sayLitres,
  treatmentRows,
  vesselRows,
  vesselState,
} from './heating-water-rows.ts';

export default defineSection({
  id: 'heating-water',
  order: 28,
  write(given) {
    const all = waterContents(given);
    // Pieces that hang on no boiler are old pipe that was left, or a drawing half done.
    const joined = all.filter((c) => c.system.boilers.length > 0);
    const shown = joined.length > 0 ? joined : all.slice(0, 1);
    const [main] = shown;
    if (!main) return null;
    const vessels = vesselChecks(given);
    const drains = drainDowns(given);
    const rows = shown.flatMap((content): Row[] => {
      const vessel = vessels.find((v) => v.content === content);
      const drain = drains.find((d) => d.content === content);
      const names = sayAll(content.system.boilers.map((b) => sayPoint(given.plan, b.id)));
      return [
        ...(shown.length > 1 ? [{ kind: 'heading' as const, label: names, say: '', ids: [] }] : []),
        ...contentRows(content),
        ...(vessel ? vesselRows(given, vessel) : []),
        ...treatmentRows(content),
        ...(drain ? drainRows(given, drain) : []),
        ...partRows(given, content.system),
      ];
    });
    const states = vessels.map(vesselState);
    const worst = (['check', 'cantTell', 'pass'] as const).find((s) => states.includes(s));
    const state: State = worst ?? 'none';
    return { title: 'Heating water', answer: sayLitres(main.litres), state, rows };
  },
});
