import { resolveHeight } from '../../../../geometry/heights.ts';
import type { HeightRef } from '../../../../plan/records/parts.ts';
import { useEditorState } from '../../../app/use-session.ts';
import { NumberBox } from '../number-box.tsx';
import { SelectBox } from '../select-box.tsx';
import type { VoidPart } from './void-part.ts';

interface FieldProps {
  readonly label: string;
  readonly storey: string;
  readonly height: HeightRef | null;
  readonly disabled: boolean;
  /** True where it was taken. */
  readonly onSet: (height: HeightRef | null) => boolean;
}

const FROM = [
  { value: 'floor', label: 'off the floor' },
  { value: 'ceiling', label: 'off the ceiling' },
] as const;

/** A height with what it is told from. Told from something else the level stays, when the reference is changed. */
export function HeightField({ label, storey, height, disabled, onSet }: FieldProps) {
  const z = useEditorState((s) => (height ? (resolveHeight(s.plan, height)?.z ?? null) : null));
  const floor = useEditorState((s) => s.plan.storeys[storey]?.floorMm ?? 0);
  const high = useEditorState((s) => s.plan.storeys[storey]?.ceilingMm ?? 0);
  const plain = height === null || height.from === 'floor' || height.from === 'ceiling';
  const base = (from: string): number => (from === 'ceiling' ? floor + high : floor);
  const from = height?.from === 'ceiling' ? 'ceiling' : 'floor';
  const of = plain && height?.of ? height.of : storey;
  const assumed = height?.assumed;
  const help = assumed ? `assumed, ${Math.round(assumed.lo)} to ${Math.round(assumed.hi)}` : undefined;
  return (
    <div className="pair">
      <NumberBox
        label={label}
        value={height === null ? null : plain ? height.mm : z === null ? null : z - base(from)}
        unit="mm"
        min={-20_000}
        max={20_000}
        empty
        help={help}
        disabled={disabled}
        onSet={(v) => onSet(typeof v === 'number' ? { from, of, mm: v } : null)}
      />
      <SelectBox
        label="Told"
        choices={FROM}
        chosen={from}
        disabled={disabled || z === null}
        onChoose={(now) => {
          if (z !== null && (now === 'floor' || now === 'ceiling')) onSet({ from: now, of: storey, mm: z - base(now) });
        }}
      />
    </div>
  );
}

/** Where a void begins and ends in height. */
export function VoidHeights({ record, disabled, set }: VoidPart) {
  const { storey } = record;
  return (
    <>
      <HeightField label="Top" storey={storey} height={record.top} disabled={disabled} onSet={(top) => set({ top })} />
      <HeightField
        label="Bottom"
        storey={storey}
        height={record.bottom}
        disabled={disabled}
        onSet={(bottom) => set({ bottom })}
      />
    </>
  );
}
