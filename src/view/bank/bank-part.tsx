import { useMemo, useState } from 'react';
import { services } from '../../catalogue/services.ts';
import { levelLeg, levelPart } from '../../editor/bank/level-part.ts';
import type { Selected } from '../../editor/editor-api.ts';
import { floorZ } from '../../geometry/heights.ts';
import { readBank } from '../../network/bank/read-bank.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { RadioKeys } from '../look/radio-keys.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { ServiceTag } from '../panels/service-tag.tsx';
import { bankOf, type InBank } from './bank-of.ts';
import { SPACINGS } from './bank-rows.tsx';
import './bank.css';

/** The bank that a chosen run belongs to: order, spacing, height, and one taken out of it. Nothing where it is in none. */
export default function BankPart({ of }: { readonly of: Selected }) {
  const plan = useEditorState((s) => s.plan);
  const inBank = bankOf(plan, of);
  return inBank && <BankForm key={inBank.group.id} inBank={inBank} />;
}

function BankForm({ inBank }: { readonly inBank: InBank }) {
  const editor = useEditor();
  const { disabled, run: does } = useChange();
  const { group, leg } = inBank;
  const set = (change: object): boolean => does('bank.set', { group: group.id, leg, ...change });
  return (
    <section className="bank-part" aria-label={`Bank of ${group.members.length}`}>
      <h3>Bank of {group.members.length}</h3>
      <Order inBank={inBank} disabled={disabled} onSet={(order) => set({ order })} />
      <RadioKeys<number>
        legend="Spacing"
        choices={[...new Set([...SPACINGS, group.spacingMm])]
          .sort((a, b) => a - b)
          .map((mm) => ({ value: mm, label: mm }))}
        chosen={group.spacingMm}
        disabled={disabled}
        onChoose={(spacingMm) => set({ spacingMm })}
      />
      <div className="pair">
        <NumberBox
          label="Middle to middle"
          value={group.spacingMm}
          unit="mm"
          min={1}
          max={1000}
          disabled={disabled}
          onSet={(mm) => typeof mm === 'number' && set({ spacingMm: mm })}
        />
        <Height inBank={inBank} disabled={disabled} onSet={(height) => set({ height })} />
      </div>
      <TakeOut inBank={inBank} disabled={disabled} />
      <div className="key-row">
        <button
          type="button"
          className="key slight"
          onClick={() => editor.select(group.members.map((id) => ({ map: 'runs', id })))}
        >
          Choose all of it
        </button>
        <button
          type="button"
          className="key slight"
          aria-disabled={disabled}
          onClick={() => !disabled && does('group.delete', { group: group.id })}
        >
          Part the bank
        </button>
        <button
          type="button"
          className="key slight"
          aria-disabled={disabled}
          onClick={() => {
            if (!disabled && does('bank.delete', { group: group.id })) editor.select([]);
          }}
        >
          <Icon name="bin" size={20} />
          Delete bank
        </button>
      </div>
    </section>
  );
}

interface PartProps {
  readonly inBank: InBank;
  readonly disabled: boolean;
}

function sayRun(service: string, name: string): string {
  return name === '' ? (services.get(service)?.label ?? service) : name;
}

/** The runs of the row, each a place earlier or later by a key. */
function Order({ inBank, disabled, onSet }: PartProps & { readonly onSet: (order: string[]) => boolean }) {
  const runs = useEditorState((s) => s.plan.runs);
  const { members } = inBank.group;
  const move = (i: number, by: 1 | -1): void => {
    const order = [...members];
    const [one, other] = [order[i], order[i + by]];
    if (disabled || one === undefined || other === undefined) return;
    [order[i], order[i + by]] = [other, one];
    onSet(order);
  };
  return (
    <ol className="bank-order" aria-label="Order of the row">
      {members.map((id, i) => {
        const said = sayRun(runs[id]?.service ?? '', runs[id]?.name ?? '');
        return (
          <li key={id} data-chosen={id === inBank.run ? 'yes' : undefined}>
            <ServiceTag service={runs[id]?.service ?? ''} />
            <span className="bank-name">{said}</span>
            <button
              type="button"
              className="key slight"
              aria-label={`${said} earlier in the row`}
              aria-disabled={disabled || i === 0}
              onClick={() => move(i, -1)}
            >
              <Icon name="up" size={20} />
            </button>
            <button
              type="button"
              className="key slight"
              aria-label={`${said} later in the row`}
              aria-disabled={disabled || i === members.length - 1}
              onClick={() => move(i, 1)}
            >
              <Icon name="down" size={20} />
            </button>
          </li>
        );
      })}
    </ol>
  );
}

/** Height of the level part that is meant, its middle above the floor. */
function Height({ inBank, disabled, onSet }: PartProps & { readonly onSet: (height: object) => boolean }) {
  const plan = useEditorState((s) => s.plan);
  const { group, leg } = inBank;
  const level = useMemo(() => {
    const read = readBank(plan, group.id);
    const k = read && levelLeg(read, leg);
    const part = read && k != null ? levelPart(read.path, k) : null;
    const first = read?.members[0];
    const node = plan.nodes[first?.chain.nodes[first.corners[part?.[0] ?? 0] ?? 0] ?? ''];
    const storey = node?.place.on === 'storey' ? node.place.storey : undefined;
    const z = part && read?.path[part[0]]?.z;
    return z == null || storey === undefined ? null : { storey, mm: z - (floorZ(plan, storey) ?? 0) };
  }, [plan, group.id, leg]);
  if (!level) return null;
  return (
    <NumberBox
      label="Height off floor"
      value={level.mm}
      unit="mm"
      min={-10_000}
      max={20_000}
      disabled={disabled}
      onSet={(mm) => typeof mm === 'number' && onSet({ from: 'floor', of: level.storey, mm })}
    />
  );
}

const ASIDE_MM = 150;

/** Takes the chosen run out of the row: where it is, or a step aside. */
function TakeOut({ inBank, disabled }: PartProps) {
  const { run: does } = useChange();
  const runs = useEditorState((s) => s.plan.runs);
  const { group, run } = inBank;
  const [asideMm, setAside] = useState(ASIDE_MM);
  const said = sayRun(runs[run]?.service ?? '', runs[run]?.name ?? '').toLowerCase();
  const peel = (mm: number | null): void => {
    if (!disabled) does('bank.peel', { group: group.id, run, asideMm: mm });
  };
  const i = group.members.indexOf(run);
  const inner = i > 0 && i < group.members.length - 1;
  return (
    <fieldset className="plain-set">
      <legend className="field-label">Take {said} out of the bank</legend>
      <NumberBox
        label="Step aside"
        value={asideMm}
        unit="mm"
        min={-5000}
        max={5000}
        disabled={disabled}
        help={inner ? 'Out of the row; below zero to its other side.' : 'Away from the others.'}
        onSet={(mm) => {
          if (typeof mm !== 'number') return false;
          setAside(mm);
          return true;
        }}
      />
      <div className="key-row">
        <button type="button" className="key slight" aria-disabled={disabled} onClick={() => peel(asideMm)}>
          Step it aside
        </button>
        <button type="button" className="key slight" aria-disabled={disabled} onClick={() => peel(null)}>
          Leave it there
        </button>
      </div>
    </fieldset>
  );
}
