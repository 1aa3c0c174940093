import { tubeKinds, tubeKindsFor } from '../../../catalogue/tubes.ts';
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
        choices={tubeKindsFor(service, surveyed, tube.kind).map((k) => ({ value: k.id, label: k.label }))}
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
