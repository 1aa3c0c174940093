import { useState } from 'react';
import type { TubeChoice } from '../../../catalogue/define-tube.ts';
import { tubeKinds } from '../../../catalogue/tubes.ts';
import { usualSizes } from '../../../catalogue/usual-sizes.ts';
import type { Tube } from '../../../plan/records/pipework.ts';
import { ChoiceKeys } from './choice-keys.tsx';

/** "35"; with its wall where two tubes among these are said alike: "35 x 1.5". */
export function sizeLabel(size: TubeChoice, among: readonly TubeChoice[]): string {
  const alike = among.filter((s) => s.nominal === size.nominal).length > 1;
  return alike ? size.size.replace('x', ' x ') : size.nominal;
}

/** Sizes that stand in the first row, and those behind one more key. What is chosen is always among the first. */
export function sizesInRow(tube: Tube): {
  readonly first: readonly TubeChoice[];
  readonly rest: readonly TubeChoice[];
} {
  const all = tubeKinds.get(tube.kind)?.sizes() ?? [];
  const usual = usualSizes(tube.kind);
  const isFirst = (s: TubeChoice): boolean => usual.length === 0 || usual.includes(s.size) || s.size === tube.size;
  return { first: all.filter(isFirst), rest: all.filter((s) => !isFirst(s)) };
}

interface Props {
  readonly tube: Tube;
  readonly disabled: boolean;
  /** Old pipe may be of a size nobody read: then that stands in the first row too. */
  readonly mayBeUnknown: boolean;
  readonly legend?: string;
  readonly onChoose: (size: string | null) => void;
}

/** Sizes of a tube as large keys: the usual ones first, the rest behind one key. */
export function SizeKeys({ tube, disabled, mayBeUnknown, legend = 'Size', onChoose }: Props) {
  const [all, setAll] = useState(false);
  const { first, rest } = sizesInRow(tube);
  const shown = all ? [...first, ...rest].sort((a, b) => a.odMm - b.odMm || (a.size < b.size ? -1 : 1)) : first;
  const known = tube.size === null || shown.some((s) => s.size === tube.size);
  const unknown = { value: null as string | null, label: 'not known' };
  const choices = [
    ...shown.map((s) => ({ value: s.size as string | null, label: sizeLabel(s, shown) })),
    ...(known ? [] : [{ value: tube.size, label: tube.size ?? '' }]),
    ...(mayBeUnknown || all || tube.size === null ? [unknown] : []),
  ];
  return (
    <div className="size-keys">
      <ChoiceKeys label={legend} choices={choices} chosen={tube.size} disabled={disabled} onChoose={onChoose} />
      {(rest.length > 0 || !mayBeUnknown) && !all && (
        <button type="button" className="bare-key accent other-sizes" onClick={() => setAll(true)}>
          other sizes
        </button>
      )}
    </div>
  );
}
