import type { Context } from 'konva/lib/Context';
import { useCallback, useEffect, useMemo } from 'react';
import { Shape } from 'react-konva/lib/ReactKonvaCore';
import { useStore } from 'zustand';
import type { View } from '../../drawing/display-list.ts';
import type { Frame } from '../../drawing/paint/frame.ts';
import type { BlobRef } from '../../plan/records/statements.ts';
import { useEditorState } from '../app/use-session.ts';
import { laidPictures, nameOfLaid, wantLaid } from './laid-pictures.ts';
import { paintLaid } from './paint-laid.ts';
import type { Laid } from './rectify.ts';

/** What a picture lies under: a storey, or one side of a wall. */
export const traceKey = (view: View): string => (view.kind === 'plan' ? view.storey : `${view.wall}:${view.side}`);

export function tracesUnder(refs: Readonly<Record<string, BlobRef>>, view: View): readonly BlobRef[] {
  const on = traceKey(view);
  return Object.values(refs).filter((r) => r.kind === 'trace' && r.on === on && r.place !== null);
}

/** The pictures that lie under a pane, below everything that is drawn. */
export function TraceShapes({ view, frame }: { readonly view: View; readonly frame: Frame }) {
  const refs = useEditorState((s) => s.plan.blobRefs);
  const laid = useStore(laidPictures, (s) => s.laid);
  const under = useMemo(() => tracesUnder(refs, view), [refs, view]);
  useEffect(() => {
    for (const record of under) wantLaid(record);
  }, [under]);
  const turnDeg = view.kind === 'plan' ? (view.turnDeg ?? 0) : 0;
  return under.map((record) => (
    <OneTrace
      key={record.id}
      record={record}
      laid={laid.get(nameOfLaid(record)) ?? null}
      frame={frame}
      turnDeg={turnDeg}
    />
  ));
}

interface OneProps {
  readonly record: BlobRef;
  readonly laid: Laid | null;
  readonly frame: Frame;
  readonly turnDeg: number;
}

function OneTrace({ record, laid, frame, turnDeg }: OneProps) {
  const { place } = record;
  const draw = useCallback(
    (context: Context) => {
      if (laid && place) paintLaid(context._context, laid, place, frame, turnDeg);
    },
    [laid, place, frame, turnDeg],
  );
  return <Shape sceneFunc={draw} listening={false} perfectDrawEnabled={false} />;
}
