import { voidChoices } from '../../../../catalogue/void-choices.ts';
import { joistsFor, offFirst, sameWay, underside, wayOf, waysOf } from '../../../../editor/tools/void-joists.ts';
import type { Joists } from '../../../../plan/records/building.ts';
import { useEditor } from '../../../app/use-session.ts';
import { RadioKeys } from '../../../look/radio-keys.tsx';
import { ChoiceKeys } from '../choice-keys.tsx';
import { NumberBox } from '../number-box.tsx';
import { SelectBox } from '../select-box.tsx';
import { useChange } from '../use-change.ts';
import { VoidBearings } from './void-bearings.tsx';
import { VoidExceptions } from './void-exceptions.tsx';
import { HeightField } from './void-heights.tsx';
import { useVoidTask, type VoidPart } from './void-part.ts';

const KINDS = [
  { value: 'solid', label: 'solid timber' },
  { value: 'engineered', label: 'engineered' },
  { value: 'metalWeb', label: 'metal web' },
  { value: 'truss', label: 'truss' },
  { value: 'battens', label: 'battens' },
  { value: 'unknown', label: 'not known' },
  { value: 'none', label: 'no joists' },
] as const;

const WORDS: Readonly<Record<NonNullable<Joists['assumed']>[number], string>> = {
  kind: 'kind',
  centresMm: 'centres',
  first: 'first joist',
  depthMm: 'depth',
  breadthMm: 'breadth',
  bottom: 'underside',
};

const choices = voidChoices();
const keys = (sizes: readonly number[]) => sizes.map((value) => ({ value, label: String(value) }));

/** Joists of a floor or ceiling; where nobody told of any, their way is asked first. */
export function VoidJoists(part: VoidPart) {
  const { joists } = part.record;
  return joists === null ? <NoJoists {...part} /> : <ToldJoists {...part} joists={joists} />;
}

function useWays(record: VoidPart['record']) {
  return waysOf(record.outline, (way) => [way.x, way.y]);
}

function NoJoists({ record, disabled, set }: VoidPart) {
  const editor = useEditor();
  const ways = useWays(record);
  const usual = editor.assumptions.joists;
  const { kind, storey, outline } = record;
  if (!usual || (kind !== 'ceiling' && kind !== 'floor')) return null;
  const take = (wayDeg: number): void => {
    set({ joists: joistsFor({ kind, storey, outline, wayDeg, centresMm: null, depthMm: null }, usual) });
  };
  return (
    <fieldset className="plain-set void-part">
      <legend className="field-label">No joists are told. Which way do they run?</legend>
      <div className="key-row">
        <button
          type="button"
          className="key"
          aria-disabled={disabled}
          onClick={() => !disabled && take(ways.acrossDeg)}
        >
          across
        </button>
        <button type="button" className="key" aria-disabled={disabled} onClick={() => !disabled && take(ways.alongDeg)}>
          along
        </button>
      </div>
    </fieldset>
  );
}

function ToldJoists({ record, disabled, set, joists }: VoidPart & { readonly joists: Joists }) {
  const editor = useEditor();
  const { run } = useChange();
  const start = useVoidTask();
  const ways = useWays(record);
  const usual = editor.assumptions.joists;
  const assumed = joists.assumed ?? [];
  const isAssumed = (key: (typeof assumed)[number]): string | undefined =>
    assumed.includes(key) ? 'assumed, as usual' : undefined;
  const tell = (change: Partial<Joists>, more: readonly ('first' | 'bottom')[] = []): boolean =>
    run('void.joists', { void: record.id, change, assumed: more });
  const setDepth = (depthMm: number | null): boolean => {
    const { kind, storey } = record;
    // An underside nobody has seen follows the depth; one that was told stays.
    if (!usual || !assumed.includes('bottom') || (kind !== 'floor' && kind !== 'ceiling')) return tell({ depthMm });
    return tell({ depthMm, bottom: underside({ kind, storey, depthMm }, usual) }, ['bottom']);
  };
  const setWay = (deg: number): boolean => tell({ wayDeg: wayOf(deg) });
  const setKind = (kind: string | null): void => {
    if (kind === 'none') set({ joists: null });
    else if (kind !== null) tell({ kind: kind as Joists['kind'] });
  };
  return (
    <>
      {assumed.length > 0 && (
        <div className="void-part">
          <p className="row-assumed">
            Assumed until somebody looks: {assumed.map((key) => WORDS[key]).join(', ')}. Joists not placed are dashed.
          </p>
          <button
            type="button"
            className="key slight"
            aria-disabled={disabled}
            onClick={() => {
              const { assumed: _, ...seen } = joists;
              if (!disabled) set({ joists: seen });
            }}
          >
            It is all as drawn: seen
          </button>
        </div>
      )}
      <SelectBox
        label="Joists"
        choices={KINDS}
        chosen={joists.kind}
        help={isAssumed('kind')}
        disabled={disabled}
        onChoose={setKind}
      />
      <ChoiceKeys
        label="They run"
        choices={[
          { value: ways.acrossDeg, label: 'across' },
          { value: ways.alongDeg, label: 'along' },
        ]}
        chosen={[ways.acrossDeg, ways.alongDeg].find((deg) => sameWay(deg, joists.wayDeg)) ?? wayOf(joists.wayDeg)}
        disabled={disabled}
        onChoose={setWay}
      />
      <SizeRow
        label="Centres"
        sizes={choices.centresMm}
        value={joists.centresMm}
        help={isAssumed('centresMm')}
        disabled={disabled}
        onSet={(mm) => mm !== null && tell({ centresMm: mm })}
      />
      <SizeRow
        label="Depth"
        sizes={choices.depthMm}
        value={joists.depthMm}
        empty
        disabled={disabled}
        onSet={setDepth}
      />
      <div className="pair">
        <NumberBox
          label="Breadth"
          value={joists.breadthMm}
          unit="mm"
          min={1}
          empty
          help={isAssumed('breadthMm')}
          disabled={disabled}
          onSet={(v) => tell({ breadthMm: typeof v === 'number' ? v : null })}
        />
        <NumberBox
          label="Way, degrees"
          value={joists.wayDeg}
          disabled={disabled}
          onSet={(v) => typeof v === 'number' && setWay(v)}
        />
      </div>
      <HeightField
        label="Underside"
        storey={record.storey}
        height={joists.bottom}
        disabled={disabled}
        onSet={(bottom) => tell({ bottom })}
      />
      <fieldset className="plain-set void-part">
        <legend className="field-label">First joist</legend>
        <p className="inspect-says">
          Its middle is {Math.round(offFirst(record.outline, joists))} off the edge
          {assumed.includes('first') ? ', assumed' : ''}.
        </p>
        <button
          type="button"
          className="key slight"
          aria-disabled={disabled}
          onClick={() => !disabled && start('first')}
        >
          Place the first joist
        </button>
      </fieldset>
      <VoidBearings record={record} disabled={disabled} set={set} />
      <VoidExceptions record={record} disabled={disabled} set={set} />
    </>
  );
}

interface SizeProps {
  readonly label: string;
  readonly sizes: readonly number[];
  readonly value: number | null;
  readonly empty?: boolean;
  readonly help?: string | undefined;
  readonly disabled: boolean;
  readonly onSet: (mm: number | null) => boolean;
}

/** A size by a key, or typed. */
function SizeRow({ label, sizes, value, empty = false, help, disabled, onSet }: SizeProps) {
  return (
    <div className="void-size">
      <NumberBox
        label={label}
        value={value}
        unit="mm"
        min={1}
        empty={empty}
        help={help}
        disabled={disabled}
        onSet={(v) => onSet(typeof v === 'number' ? v : null)}
      />
      <RadioKeys
        legend={`${label}, as usual`}
        legendHidden
        choices={keys(sizes)}
        chosen={value ?? 0}
        disabled={disabled}
        onChoose={onSet}
      />
    </div>
  );
}
