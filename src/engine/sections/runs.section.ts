import type { Row } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { runFacts } from '../run-facts.ts';

export default defineSection({
  id: 'runs',
  order: 40,
  write(given) {
    const runs = runFacts(given);
    if (runs.length === 0) return null;
    const rows = runs.map((r): Row => ({ kind: 'fact', label: r.name, figure: r.lengthM, say: r.bends, ids: [r.run] }));
    return {
      title: 'Lengths and bends',
      answer: `${runs.length} ${runs.length === 1 ? 'run' : 'runs'}`,
      state: 'none',
      rows,
    };
  },
});
