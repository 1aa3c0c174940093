import { GROUND_KINDS } from '../../catalogue/ground-kinds.ts';
import { ROOM_USES } from '../../catalogue/room-uses.ts';
import type { Sizes } from '../../editor/editor-api.ts';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { Pick, Row, useInHand } from './tray-row.tsx';

const MADE_OF = ['block', 'brick', 'stud', 'cavity', 'stone', 'concrete'] as const;
const SIZES: readonly { readonly value: Sizes; readonly label: string }[] = [
  { value: 'inside', label: 'inside faces' },
  { value: 'outside', label: 'outside faces' },
  { value: 'middle', label: 'middle lines' },
];

function WallRow() {
  const [inHand, set] = useInHand();
  return (
    <Row label="Wall">
      <NumberBox
        label="Thickness"
        value={inHand.wallThicknessMm}
        unit="mm"
        min={1}
        max={2000}
        onSet={(v) => {
          if (typeof v !== 'number') return false;
          set({ wallThicknessMm: v });
          return true;
        }}
      />
      {MADE_OF.map((c) => (
        <Pick key={c} on={c === inHand.wallConstruction} onPick={() => set({ wallConstruction: c })}>
          {c}
        </Pick>
      ))}
    </Row>
  );
}

function SizesRow({ offered }: { readonly offered: readonly Sizes[] }) {
  const [inHand, set] = useInHand();
  return (
    <Row label="Typed lengths">
      {SIZES.filter((s) => offered.includes(s.value)).map(({ value, label }) => (
        <Pick key={value} on={value === inHand.sizes} onPick={() => set({ sizes: value })}>
          {label}
        </Pick>
      ))}
    </Row>
  );
}

/** The next wall: how thick, of what, and between what a typed length of it is taken. */
export function WallRows() {
  return (
    <>
      <WallRow />
      <SizesRow offered={['inside', 'outside', 'middle']} />
    </>
  );
}

/** The next room: what it is used for, and the walls that are drawn for it. */
export function RoomRows() {
  const [inHand, set] = useInHand();
  return (
    <>
      <Row label="Room">
        {ROOM_USES.map(({ id, label }) => (
          <Pick key={id} on={id === inHand.roomUse} onPick={() => set({ roomUse: id })}>
            {label.toLowerCase()}
          </Pick>
        ))}
      </Row>
      <WallRow />
      <SizesRow offered={['inside', 'outside']} />
    </>
  );
}

/** What the ground that is levelled next is made of. */
export function GroundRows() {
  const [inHand, set] = useInHand();
  return (
    <Row label="Ground">
      {GROUND_KINDS.map((kind) => (
        <Pick key={kind} on={kind === inHand.groundKind} onPick={() => set({ groundKind: kind })}>
          {kind}
        </Pick>
      ))}
    </Row>
  );
}

/** A roof has nothing to choose beforehand: it is asked for on the pad. */
export function RoofRows() {
  return (
    <Row label="Roof">
      <span>Tap both ends of its eaves and how far up it goes, then type eaves and pitch.</span>
    </Row>
  );
}
