import { pointKinds } from '../../catalogue/point-kinds.ts';
import { services } from '../../catalogue/services.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Assumptions } from '../editor-api.ts';
import type { Told, ToldStep } from './told-run.ts';
import { wordOfHeight } from './word-heights.ts';
import type { Chip, WordsState } from './words-api.ts';

const chip = (kind: Chip['kind'], value: string, more: Partial<Chip> = {}): Chip => ({
  id: kind,
  kind,
  label: '',
  value,
  assumed: false,
  stepIndex: null,
  pending: false,
  ...more,
});

/** "left 45": a turn that is no right angle is told with its degrees. A steep slope has only its length. */
function sayTurn(dir: string, turnDeg: number): string {
  if (dir !== 'own angle') return dir;
  const degrees = Math.round(Math.abs(turnDeg));
  return degrees === 0 ? 'sloping' : `${turnDeg > 0 ? 'left' : 'right'} ${degrees}`;
}

const kindLabel = (point: Point): string => pointKinds.get(point.kind)?.label ?? point.kind;

export function pointAt(plan: Plan, node: string | undefined): Point | undefined {
  const place = node === undefined ? undefined : plan.nodes[node]?.place;
  return place?.on === 'connection' ? plan.points[place.point] : undefined;
}

const sayPoint = (point: Point): string => (point.name === '' ? kindLabel(point) : point.name);

/** An upright is told by the height it goes to where a word fits, a level leg by its length. */
function stepChip(plan: Plan, step: ToldStep, index: number, a: Assumptions): Chip {
  const length = String(Math.round(step.lengthMm));
  const place = plan.nodes[step.to]?.place;
  const upright = step.dir === 'up' || step.dir === 'down';
  const more = { id: `step ${index}`, label: sayTurn(step.dir, step.turnDeg), stepIndex: index };
  if (!upright || !place) return chip('step', length, more);
  const point = pointAt(plan, step.to);
  if (place.on === 'connection') {
    const { height } = point?.place ?? {};
    const tail = point?.connections.find((c) => c.id === place.connection);
    const to =
      height && tail ? { ...height, mm: height.mm + tail.at.z, ...shifted(height.assumed, tail.at.z) } : undefined;
    const word = to && wordOfHeight(plan, to, point?.storey ?? '', a);
    return chip('step', word ?? length, { ...more, assumed: height?.assumed !== undefined });
  }
  const word = wordOfHeight(plan, place.height, place.storey, a);
  return chip('step', word ?? length, { ...more, assumed: place.height.assumed !== undefined });
}

const shifted = (range: { lo: number; hi: number } | undefined, by: number) =>
  range ? { assumed: { lo: range.lo + by, hi: range.hi + by } } : {};

function classChip(point: Point): Chip | undefined {
  const field = pointKinds.get(point.kind)?.fields.find((f) => f.key === 'class');
  const value = point.fields.class;
  const label = field?.choices?.find((c) => c.value === value)?.label;
  return label === undefined ? undefined : chip('class', label, { assumed: true });
}

/** Everything that has been told of a run, in order, with what is being told now at its end or in its place. */
export function chipsOf(
  plan: Plan,
  state: WordsState,
  start: Point | undefined,
  told: Told | undefined,
  a: Assumptions,
): Chip[] {
  const chips: Chip[] = [];
  const { service, pending, changing } = state;
  if (service !== null) chips.push(chip('service', services.get(service)?.label ?? service));
  const from = told ? pointAt(plan, told.start) : start;
  if (from) chips.push(chip('from', sayPoint(from), { assumed: from.place.height.assumed !== undefined }));
  else if (told) chips.push(chip('from', told.start === told.end ? 'pipe' : 'a pipe'));
  told?.steps.forEach((step, i) => {
    const shown = stepChip(plan, step, i, a);
    chips.push(
      changing?.step === i
        ? { ...shown, value: changing.typed === '' ? shown.value : changing.typed, pending: true }
        : shown,
    );
  });
  if (pending)
    chips.push(
      chip('step', pending.typed, {
        id: 'pending',
        label: pending.turnDeg === undefined ? pending.dir : `${pending.dir} ${pending.turnDeg}`,
        pending: true,
      }),
    );
  const to = told && pointAt(plan, told.end);
  if (to) {
    chips.push(chip('to', sayPoint(to)));
    const size = classChip(to);
    if (size) chips.push(size);
  }
  return chips;
}
