import { evaluate } from '../../engine/evaluate.ts';
import type { Finding } from '../../report/finding.ts';
import { sayQuantity } from '../../report/quantity.ts';
import { defineVerb, FINE, SOME_STOP } from '../define-verb.ts';
import { chosenCase, openFile } from '../open-file.ts';

const WORD = { stop: 'stop', check: 'check', note: 'note', cantTell: "can't tell" } as const;
const usage = 'check FILE [--case OPTION:after] [--json]';

function say(f: Finding): string {
  const found = f.found ? `found ${sayQuantity(f.found)}` : '';
  const wanted = f.wanted ? `wanted ${f.wantedIs === 'atLeast' ? 'at least' : 'at most'} ${sayQuantity(f.wanted)}` : '';
  const figures = [found, wanted].filter(Boolean).join(', ');
  const where = f.at ? ` at (${Math.round(f.at.x)}, ${Math.round(f.at.y)}, ${Math.round(f.at.z)})` : '';
  const unverified = f.unverified ? ' (a figure in this is unverified)' : '';
  return [
    `${WORD[f.outcome]}: ${f.title}${where}${figures ? `: ${figures}` : ''}${unverified}`,
    `    ${f.why} ${f.todo}`,
    `    ${f.rule}; ${f.cites.map((c) => `${c.source}, ${c.clause}`).join('; ')}`,
  ].join('\n');
}

export default defineVerb({
  id: 'check',
  usage,
  about: 'findings, worst first; exit 1 when some of them are stops',
  flags: ['case', 'json'],
  async run(call, terminal) {
    const plan = openFile(call, terminal, usage);
    const report = evaluate(plan, chosenCase(plan, call.flags.case));
    if (call.flags.json) {
      terminal.out(
        `${JSON.stringify({ case: report.case, counts: report.counts, findings: report.findings }, null, 2)}\n`,
      );
    } else {
      const { stop, check, note, cantTell } = report.counts;
      const answers = report.sections.map((s) => `${s.title}: ${s.answer}`);
      const text = [
        ...answers,
        '',
        ...report.findings.map(say),
        '',
        `${stop} stop, ${check} check, ${cantTell} can't tell, ${note} note`,
      ];
      terminal.out(`${text.join('\n')}\n`);
    }
    return report.counts.stop > 0 ? SOME_STOP : FINE;
  },
});
