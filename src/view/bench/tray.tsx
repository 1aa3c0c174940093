import { Fragment, useEffect, useRef, useState } from 'react';
import { itemsFor } from '../../catalogue/items.ts';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { servicesInOrder } from '../../catalogue/services.ts';
import { tubeKindsFor } from '../../catalogue/tubes.ts';
import { resolveHeight } from '../../geometry/heights.ts';
import { screen } from '../app/screen.ts';
import { useFocusBack } from '../app/use-focus-back.ts';
import { useEditorState } from '../app/use-session.ts';
import { BankRows } from '../bank/bank-rows.tsx';
import { Icon } from '../look/icon.tsx';
import { OPENING_KINDS } from '../panels/inspect/inspect-opening.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { sizeLabel, sizesInRow } from '../panels/inspect/size-keys.tsx';
import { ServiceTag } from '../panels/service-tag.tsx';
import { sameHeight, storeyHeights } from '../ribbon/levels.ts';
import { useRibbon } from '../ribbon/use-ribbon.ts';
import { FollowRow } from '../steps/follow-row.tsx';
import { StepRows } from '../steps/step-rows.tsx';
import { ClassRow, hasClasses, ThingsRow } from '../things/things-row.tsx';
import { GroundRows, RoofRows, RoomRows, WallRows } from './house-rows.tsx';
import { closeTray, Pick, Row, useInHand } from './tray-row.tsx';
import { VoidRows } from './void-rows.tsx';

/** What the next touch makes, as rows of keys over the bench. */
export function Tray() {
  const tool = useEditorState((s) => s.tool);
  const box = useRef<HTMLElement>(null);
  useFocusBack();
  useEffect(() => box.current?.querySelector<HTMLElement>('button, input')?.focus(), []);
  return (
    <section className="tray" ref={box} aria-label="In hand">
      <button
        type="button"
        className="bare-key tray-close"
        aria-label="Close"
        onClick={() => screen.setState({ tray: false })}
      >
        <Icon name="close" size={20} />
      </button>
      <TrayFor tool={tool} />
    </section>
  );
}

function TrayFor({ tool }: { readonly tool: string }) {
  if (tool === 'point') return <PointRows />;
  if (tool === 'item') return <ItemRows />;
  if (tool === 'wall') return <WallRows />;
  if (tool === 'opening') return <OpeningRows />;
  if (tool === 'void') return <VoidRows />;
  if (tool === 'room') return <RoomRows />;
  if (tool === 'roof') return <RoofRows />;
  if (tool === 'ground') return <GroundRows />;
  if (tool === 'step') return <StepRows />;
  if (tool === 'bank')
    return (
      <>
        <BankRows />
        <HeightRow />
      </>
    );
  if (tool === 'tape' || tool === 'reroute') return <HeightRow />;
  return <PipeRows />;
}

/** Only the levels of the ribbon are wanted here, which do not hang on its scale. */
const MM_OF_SECTION = 1000;
const MM_PER_PAPER_MM = 50;

function PipeRows() {
  const [inHand, set] = useInHand();
  // Before the work everything that is drawn was found, and may be of a kind that is no longer laid.
  const surveyed = useEditorState((s) => s.chosen.when === 'before');
  return (
    <>
      <Row label="Service">
        {servicesInOrder().map((s) => (
          <Pick key={s.id} on={s.id === inHand.service} onPick={() => set({ service: s.id })}>
            <ServiceTag service={s.id} />
            {s.label}
          </Pick>
        ))}
      </Row>
      <SizeRow key={inHand.tube.kind} />
      <Row label="Made of">
        {tubeKindsFor(inHand.service, surveyed, inHand.tube.kind).map((k) => (
          <Pick
            key={k.id}
            on={k.id === inHand.tube.kind}
            onPick={() =>
              set({ tube: { kind: k.id, size: k.sizes()[0]?.size ?? null }, joining: k.joinings[0] ?? null })
            }
          >
            {k.label}
          </Pick>
        ))}
      </Row>
      <Row label="Turns">
        <Pick on={inHand.turns === 'elbow'} onPick={() => set({ turns: 'elbow' })}>
          elbows
        </Pick>
        <Pick on={inHand.turns === 'bend'} onPick={() => set({ turns: 'bend' })}>
          bends
        </Pick>
      </Row>
      <HeightRow />
      <FollowRow />
    </>
  );
}

/** The usual sizes; the others and "not known" behind one key, as in the panel. */
function SizeRow() {
  const [inHand, set] = useInHand();
  const [all, setAll] = useState(false);
  const { tube } = inHand;
  const { first, rest } = sizesInRow(tube);
  const shown = all ? [...first, ...rest].sort((a, b) => a.odMm - b.odMm) : first;
  return (
    <Row label="Size">
      {shown.map((s) => (
        <Pick key={s.size} on={s.size === tube.size} onPick={() => set({ tube: { kind: tube.kind, size: s.size } })}>
          {sizeLabel(s, shown)}
        </Pick>
      ))}
      {(all || tube.size === null) && (
        <Pick on={tube.size === null} onPick={() => set({ tube: { ...tube, size: null } })}>
          not known
        </Pick>
      )}
      {!all && (
        <button type="button" className="bare-key accent" onClick={() => setAll(true)}>
          other sizes
        </button>
      )}
    </Row>
  );
}

function HeightRow() {
  const [inHand, set] = useInHand();
  const plan = useEditorState((s) => s.plan);
  const storey = useEditorState((s) => (s.panes.plan.view.kind === 'plan' ? s.panes.plan.view.storey : ''));
  const { levels } = useRibbon(MM_OF_SECTION, MM_PER_PAPER_MM);
  const heights = storeyHeights(plan, storey);
  if (!heights) return null;
  const z = resolveHeight(plan, inHand.height)?.z;
  return (
    <Row label="Height">
      {levels.map((l) => (
        <Pick
          key={`${l.label}${l.z}`}
          on={sameHeight(l.height, inHand.height)}
          onPick={() => set({ height: l.height })}
        >
          {l.label} {Math.round(l.z - heights.floor)}
        </Pick>
      ))}
      <NumberBox
        label="Off floor"
        value={z === undefined ? null : z - heights.floor}
        unit="mm"
        onSet={(v) => {
          if (typeof v !== 'number') return false;
          set({ height: { from: 'floor', of: storey, mm: v } });
          return true;
        }}
      />
    </Row>
  );
}

const GROUPS = [
  { group: 'source', word: 'Sources' },
  { group: 'appliance', word: 'Appliances' },
  { group: 'tap', word: 'Taps' },
  { group: 'drain', word: 'Drains' },
  { group: 'electrical', word: 'Electric' },
  { group: 'other', word: 'Other' },
] as const;

function PointRows() {
  const [inHand, set] = useInHand();
  const kinds = GROUPS.map(({ group, word }) => (
    <Fragment key={group}>
      <Row label={word}>
        {[...pointKinds.values()]
          .filter((k) => k.group === group && k.retired !== true)
          .sort((a, b) => (a.label < b.label ? -1 : 1))
          .map((k) => (
            <Pick
              key={k.id}
              on={k.id === inHand.pointKind && inHand.thing === null}
              onPick={() => {
                set({ pointKind: k.id, thing: null });
                if (!hasClasses(k.id)) closeTray();
              }}
            >
              {k.label}
            </Pick>
          ))}
      </Row>
      {pointKinds.get(inHand.pointKind)?.group === group && <ClassRow />}
    </Fragment>
  ));
  return (
    <>
      <ThingsRow stands="first" />
      {kinds}
      <ThingsRow stands="last" />
    </>
  );
}

function ItemRows() {
  const [inHand, set] = useInHand();
  return (
    <>
      {(['inline', 'end'] as const).map((stands) => (
        <Row key={stands} label={stands === 'inline' ? 'In the pipe' : 'On an end'}>
          {itemsFor(inHand.service, stands).map((k) => (
            <Pick
              key={k.id}
              on={k.id === inHand.itemKind}
              onPick={() => {
                set({ itemKind: k.id });
                closeTray();
              }}
            >
              {k.label}
            </Pick>
          ))}
        </Row>
      ))}
    </>
  );
}

function OpeningRows() {
  const [inHand, set] = useInHand();
  return (
    <Row label="Opening">
      {OPENING_KINDS.map((k) => (
        <Pick
          key={k.value}
          on={k.value === inHand.openingKind}
          onPick={() => {
            set({ openingKind: k.value });
            closeTray();
          }}
        >
          {k.label}
        </Pick>
      ))}
    </Row>
  );
}
