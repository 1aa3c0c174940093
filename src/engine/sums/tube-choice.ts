import { type TubeSize, tube, tubeKinds } from '../../reference/tubes.ts';
import type { SumInput } from '../../report/sum-card.ts';
import type { SumValues } from '../define-sum.ts';
import { roughnessOf } from '../hydraulics/tube-loss.ts';

/** Kinds water runs full in, with a bore that was read. */
const KINDS = tubeKinds().filter((k) => roughnessOf(k.kind) !== null && k.sizes.some((s) => s.boreMm !== null));
const SIZES = [
  ...new Set(
    KINDS.flatMap((k) => k.sizes)
      .sort((a, b) => a.odMm - b.odMm)
      .map((s) => s.label),
  ),
];
const USUAL = 'copper';

/** Kind and size, as every sum of one water pipe asks for them. */
export const TUBE_INPUTS: readonly SumInput[] = [
  {
    key: 'kind',
    label: 'kind of tube, copper if not told',
    kind: 'choice',
    unit: '',
    required: false,
    choices: KINDS.map((k) => k.kind),
    words: Object.fromEntries(KINDS.map((k) => [k.kind, k.title])),
  },
  { key: 'size', label: 'size', kind: 'choice', unit: '', required: true, choices: SIZES },
];

/** The tube that was chosen; null for a size the kind does not have. */
export const chosenTube = ({ kind, size }: SumValues): TubeSize | null =>
  tube(String(kind ?? USUAL), String(size)) ?? null;

/** "copper 15": for what is missing of it. */
export const sayChosen = ({ kind, size }: SumValues): string => `${kind ?? USUAL} ${size}`;
