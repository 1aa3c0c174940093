import type { View } from '../../drawing/display-list.ts';
import { drawSvg } from '../../drawing/draw-svg.ts';
import type { Plan } from '../../plan/plan.ts';
import { BadCall, defineVerb, FINE } from '../define-verb.ts';
import { chosenCase, openFile } from '../open-file.ts';

const usage = 'draw FILE --view plan:STOREY|face:WALL:SIDE --out F.svg [--case OPTION:after] [--theme print|day|night]';

/** Storey by id or name; a wall face by the wall's id and the side it is seen from. */
function viewOf(plan: Plan, asked: string | true | undefined): View {
  const [kind = '', of = '', side = ''] = typeof asked === 'string' ? asked.split(':') : ['plan'];
  if (kind === 'plan') {
    const storeys = Object.values(plan.storeys);
    const found = of === '' ? storeys[0] : (plan.storeys[of] ?? storeys.find((s) => s.name === of));
    if (!found)
      throw new BadCall(`there is no storey "${of}"; there is ${storeys.map((s) => s.id).join(', ') || 'none'}`);
    return { kind: 'plan', storey: found.id };
  }
  if (kind === 'face') {
    if (!plan.walls[of]) throw new BadCall(`there is no wall "${of}"`);
    if (side !== 'left' && side !== 'right')
      throw new BadCall(`a wall is seen from its left or its right, not "${side}"`);
    return { kind: 'face', wall: of, side };
  }
  throw new BadCall(`--view is plan:STOREY or face:WALL:SIDE, not "${String(asked)}"`);
}

export default defineVerb({
  id: 'draw',
  usage,
  about: 'a storey or a wall face as SVG',
  flags: ['view', 'out', 'case', 'theme'],
  async run(call, terminal) {
    const plan = openFile(call, terminal, usage);
    const theme = call.flags.theme ?? 'print';
    if (theme !== 'print' && theme !== 'day' && theme !== 'night') throw new BadCall('--theme is print, day or night');
    const svg = drawSvg(plan, viewOf(plan, call.flags.view), chosenCase(plan, call.flags.case), theme);
    if (typeof call.flags.out === 'string') terminal.write(call.flags.out, svg);
    else terminal.out(svg);
    return FINE;
  },
});
