import type { TubeChoice } from '../../../catalogue/define-tube.ts';
import { tubeKinds } from '../../../catalogue/tubes.ts';
import type { Tube } from '../../../plan/records/pipework.ts';
import { ChoiceKeys } from './choice-keys.tsx';
import { SelectBox } from './select-box.tsx';

interface Props {
  readonly service: string;
  readonly tube: Tube;
  readonly disabled: boolean;
  readonly onChoose: (tube: Tube) => void;
}

/** Kinds of tube that a service may be laid in; the one it is laid in even where it may not. */
function kindsFor(service: string, now: string): readonly { readonly value: string; readonly label: string }[] {
  return [...tubeKinds.values()]
    .filter((k) => k.services.length === 0 || k.services.includes(service) || k.id === now)
    .map((k) => ({ value: k.id, label: k.label }));
}

/** "35"; with its wall where two tubes are said alike: "35 x 1.5". */
export function sizeLabel(size: TubeChoice, all: readonly TubeChoice[]): string {
  const alike = all.filter((s) => s.nominal === size.nominal).length > 1;
  return alike ? size.size.replace('x', ' x ') : size.nominal;
}

/** Sizes of a tube as large keys: 15 22 28 35; and what it is made of. */
export function TubeKeys({ service, tube, disabled, onChoose }: Props) {
  const sizes = tubeKinds.get(tube.kind)?.sizes() ?? [];
  const known = sizes.some((s) => s.size === tube.size);
  const choices = [
    ...sizes.map((s) => ({ value: s.size as string | null, label: sizeLabel(s, sizes) })),
    ...(tube.size !== null && !known ? [{ value: tube.size as string | null, label: tube.size }] : []),
    { value: null as string | null, label: 'not known' },
  ];
  return (
    <div className="sizes">
      <ChoiceKeys
        label="Size"
        choices={choices}
        chosen={tube.size}
        disabled={disabled}
        onChoose={(size) => onChoose({ ...tube, size })}
      />
      <SelectBox
        label="Made of"
        choices={kindsFor(service, tube.kind)}
        chosen={tube.kind}
        disabled={disabled}
        onChoose={(kind) => {
          if (kind === null) return;
          const next = tubeKinds.get(kind)?.sizes() ?? [];
          const nominal = sizes.find((s) => s.size === tube.size)?.nominal;
          onChoose({ kind, size: (next.find((s) => s.nominal === nominal) ?? next[0])?.size ?? null });
        }}
      />
    </div>
  );
}
