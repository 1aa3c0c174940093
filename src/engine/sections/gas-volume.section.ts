import { type Quantity, roundQuantity, sayFigures } from '../../report/quantity.ts';
import type { Row } from '../../report/section.ts';
import type { Working } from '../../report/working.ts';
import { defineSection } from '../define-section.ts';
import { installationVolume } from '../gas/installation-volume.ts';

const last = (w: Working): Quantity | null => w.steps[w.steps.length - 1]?.result ?? null;

const rowsOf = (w: Working): Row[] =>
  w.steps.map((s) => ({
    kind: 'sum',
    label: s.label,
    how: s.how ?? '',
    result: s.result && roundQuantity(s.result),
    cites: s.cites,
    ids: [],
  }));

export default defineSection({
  id: 'gas-volume',
  order: 30,
  write(given) {
    const sections = [...given.gas.sections.values()].filter((s) => s.section.sound);
    if (sections.length === 0 || !given.gas.meter) return null;
    const volume = installationVolume(
      sections.map(({ ask }) => ({ label: ask.label, tubeKind: ask.tubeKind, size: ask.size, lengthM: ask.lengthM })),
      given.gas.meter.kind,
    );
    const byBore = last(volume.byBore);
    const missing = [...new Set([...volume.byTable.missing, ...volume.byBore.missing])];
    return {
      title: 'Installation volume',
      answer: byBore ? `${sayFigures(byBore)} m3` : "can't tell",
      state: missing.length > 0 ? 'cantTell' : 'none',
      rows: [
        { kind: 'heading', label: 'By the true bore', say: '', ids: [] },
        ...rowsOf(volume.byBore),
        { kind: 'heading', label: 'By the tabulated volume per metre', say: '', ids: [] },
        ...rowsOf(volume.byTable),
        ...missing.map((m): Row => ({ kind: 'note', say: `Not known: ${m}.`, unverified: false, cites: [] })),
      ],
    };
  },
});
