import { tubeKinds } from '../../../catalogue/tubes.ts';
import type { Tube } from '../../../plan/records/pipework.ts';
import { SelectBox } from './select-box.tsx';
import { SizeKeys } from './size-keys.tsx';

interface Props {
  readonly service: string;
  readonly tube: Tube;
  readonly disabled: boolean;
  /** It was there before: its size may be one that nobody could read. */
  readonly surveyed: boolean;
  readonly legend?: string;
  readonly onChoose: (tube: Tube) => void;
}

/** Kinds of tube that a service may be laid in; the one it is laid in even where it may not. */
function kindsFor(service: string, now: string): readonly { readonly value: string; readonly label: string }[] {
  return [...tubeKinds.values()]
    .filter((k) => k.services.length === 0 || k.services.includes(service) || k.id === now)
    .map((k) => ({ value: k.id, label: k.label }));
}

/** Sizes of a tube as large keys: 15 22 28 35; and what it is made of. */
export function TubeKeys({ service, tube, disabled, surveyed, legend, onChoose }: Props) {
  const sizes = tubeKinds.get(tube.kind)?.sizes() ?? [];
  return (
    <div className="sizes">
      <SizeKeys
        key={tube.kind}
        tube={tube}
        disabled={disabled}
        mayBeUnknown={surveyed}
        {...(legend === undefined ? {} : { legend })}
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
