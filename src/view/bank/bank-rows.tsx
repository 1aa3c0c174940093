import { useState } from 'react';
import { services, servicesInOrder } from '../../catalogue/services.ts';
import { sayTubeSize } from '../../catalogue/tubes.ts';
import type { BankInHand, BankPipeInHand } from '../../editor/editor-api.ts';
import { bankPipe } from '../../editor/in-hand.ts';
import { Pick, Row, useInHand } from '../bench/tray-row.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { sizeLabel, sizesInRow } from '../panels/inspect/size-keys.tsx';
import { ServiceTag } from '../panels/service-tag.tsx';
import './bank.css';

export const SPACINGS: readonly number[] = [50, 75, 100, 150];

/** Two of a service are told apart by their number. */
function sayMember(members: readonly BankPipeInHand[], i: number): string {
  const { service, tube } = members[i] as BankPipeInHand;
  const label = services.get(service)?.label ?? service;
  const alike = members.filter((m) => m.service === service);
  const nth = members.slice(0, i + 1).filter((m) => m.service === service).length;
  return `${label}${alike.length > 1 ? ` ${nth}` : ''} ${sayTubeSize(tube)}`;
}

/** What the next bank is made of: its runs in their order, their sizes, how far apart and which way the row stands. */
export function BankRows() {
  const [inHand, set] = useInHand();
  const [at, setAt] = useState<number | null>(null);
  const { bank } = inHand;
  const tell = (change: Partial<BankInHand>): void => set({ bank: { ...bank, ...change } });
  const chosen = at === null ? undefined : bank.members[at];
  return (
    <>
      <Row label="Runs">
        {bank.members.map((m, i) => (
          <button
            key={sayMember(bank.members, i)}
            type="button"
            className="key"
            aria-pressed={i === at}
            onClick={() => setAt(i === at ? null : i)}
          >
            <ServiceTag service={m.service} />
            {sayTubeSize(m.tube)}
            <span className="out-of-sight">{sayMember(bank.members, i)}</span>
          </button>
        ))}
        {bank.members.length < 2 && <span className="tray-says">A bank has two runs or more.</span>}
      </Row>
      {chosen && at !== null && <MemberRows bank={bank} at={at} tell={tell} onMove={setAt} />}
      <Row label="Add">
        {servicesInOrder()
          .filter((s) => !s.runsDownhill && s.system !== 'flue')
          .map((s) => (
            <button
              key={s.id}
              type="button"
              className="key"
              aria-disabled={bank.members.length >= 12}
              onClick={() => bank.members.length < 12 && tell({ members: [...bank.members, bankPipe(s.id)] })}
            >
              <ServiceTag service={s.id} />
              {s.label}
            </button>
          ))}
      </Row>
      <Row label="Spacing">
        {SPACINGS.map((mm) => (
          <Pick key={mm} on={mm === bank.spacingMm} onPick={() => tell({ spacingMm: mm })}>
            {mm}
          </Pick>
        ))}
        <NumberBox
          label="Middle to middle"
          value={bank.spacingMm}
          unit="mm"
          min={1}
          max={1000}
          onSet={(mm) => {
            if (typeof mm !== 'number') return false;
            tell({ spacingMm: mm });
            return true;
          }}
        />
      </Row>
      <Row label="Row">
        <Pick on={bank.row === 'level'} onPick={() => tell({ row: 'level' })}>
          beside each other
        </Pick>
        <Pick on={bank.row === 'upright'} onPick={() => tell({ row: 'upright' })}>
          over each other
        </Pick>
      </Row>
    </>
  );
}

interface MemberProps {
  readonly bank: BankInHand;
  readonly at: number;
  readonly tell: (change: Partial<BankInHand>) => void;
  readonly onMove: (to: number | null) => void;
}

/** The run that is chosen in the row: its size, its place, and out of the bank. */
function MemberRows({ bank, at, tell, onMove }: MemberProps) {
  const pipe = bank.members[at] as BankPipeInHand;
  const put = (next: BankPipeInHand): void => tell({ members: bank.members.map((m, i) => (i === at ? next : m)) });
  const move = (to: number): void => {
    const members = [...bank.members];
    members.splice(at, 1);
    members.splice(to, 0, pipe);
    tell({ members });
    onMove(to);
  };
  const { first } = sizesInRow(pipe.tube);
  const word = (services.get(pipe.service)?.label ?? pipe.service).toLowerCase();
  const [isFirst, isLast] = [at === 0, at === bank.members.length - 1];
  return (
    <Row label={services.get(pipe.service)?.label ?? pipe.service}>
      {first.map((s) => (
        <Pick
          key={s.size}
          on={s.size === pipe.tube.size}
          onPick={() => put({ ...pipe, tube: { kind: pipe.tube.kind, size: s.size } })}
        >
          {sizeLabel(s, first)}
        </Pick>
      ))}
      <button type="button" className="key" aria-disabled={isFirst} onClick={() => !isFirst && move(at - 1)}>
        earlier
      </button>
      <button type="button" className="key" aria-disabled={isLast} onClick={() => !isLast && move(at + 1)}>
        later
      </button>
      <button
        type="button"
        className="key"
        aria-label={`Take ${word} out`}
        onClick={() => {
          tell({ members: bank.members.filter((_, i) => i !== at) });
          onMove(null);
        }}
      >
        take out
      </button>
    </Row>
  );
}
