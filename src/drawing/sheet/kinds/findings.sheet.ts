import { byWorst } from '../../../report/finding.ts';
import { nameFindings } from '../../labels/finding-names.ts';
import { textBlock } from '../blocks.ts';
import { findingBlock } from '../finding-block.ts';
import { flowPages } from '../flow.ts';
import { sayCase } from '../say.ts';
import type { SheetKind } from '../sheet.ts';

const findings: SheetKind = {
  id: 'findings',
  order: 40,
  choices: () => [{ key: 'findings', label: 'Findings, with what was said of them', usual: true, scales: [] }],
  pages({ plan, chosen, report }, key, layout) {
    const { stop, check, cantTell, note } = report.counts;
    const names = nameFindings(report.findings);
    const sheet = {
      key,
      title: 'Findings',
      under: `${sayCase(plan, chosen)}: ${stop} stop, ${check} check, ${cantTell} can't tell, ${note} note. Letters as on the drawings.`,
      documentType: 'findings',
      blocks: (w: number) =>
        report.findings.length === 0
          ? [
              textBlock(
                'Nothing was found. That is no proof: only what the rules of this tool look at was looked at.',
                w,
              ),
            ]
          : [...report.findings].sort(byWorst).map((f) => findingBlock(plan, report, f, names.get(f.key) ?? '', w)),
    };
    return flowPages(sheet, layout);
  },
};

export default findings;
