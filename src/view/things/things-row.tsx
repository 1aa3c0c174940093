import { useEffect } from 'react';
import { useStore } from 'zustand';
import { genericThings } from '../../catalogue/generic-things.ts';
import { setOver } from '../app/screen.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { closeTray, Pick, Row } from '../bench/tray-row.tsx';
import { loadShelf, shelf } from './shelf.ts';

/** The user's own things and those the job carries: before all kinds where there are any, else only the way to them, last. */
export function ThingsRow({ stands }: { readonly stands: 'first' | 'last' }) {
  const editor = useEditor();
  const thing = useEditorState((s) => s.inHand.thing);
  const inJob = useEditorState((s) => s.plan.things);
  const mine = useStore(shelf, (s) => s.things) ?? [];
  useEffect(() => {
    void loadShelf();
  }, []);
  const others = Object.values(inJob).filter((t) => ![...mine, ...genericThings()].some((m) => m.id === t.id));
  const own = [...mine, ...others];
  if (own.length > 0 !== (stands === 'first')) return null;
  return (
    <Row label="My things">
      {own.map((t) => (
        <Pick
          key={t.id}
          on={thing?.id === t.id}
          onPick={() => {
            editor.setInHand({ pointKind: t.kind, thing: t });
            closeTray();
          }}
        >
          {t.name}
        </Pick>
      ))}
      <button type="button" className="bare-key accent" onClick={() => setOver('my-things')}>
        all my things
      </button>
    </Row>
  );
}

/** The next question after a kind is taken: the tray stays open for it. */
export const hasClasses = (kind: string): boolean => genericThings().some((t) => t.kind === kind);

/** Ordinary ones of the kind in hand, each of a class: beside the kinds they would push these out of sight. */
export function ClassRow() {
  const editor = useEditor();
  const { thing, pointKind } = useEditorState((s) => s.inHand);
  const classes = genericThings().filter((t) => t.kind === pointKind);
  if (classes.length === 0) return null;
  return (
    <Row label="Class, assumed">
      {classes.map((t) => (
        <Pick
          key={t.id}
          on={thing?.id === t.id}
          onPick={() => {
            editor.setInHand({ pointKind: t.kind, thing: t });
            closeTray();
          }}
        >
          {t.name.replace(/, assumed$/, '')}
        </Pick>
      ))}
    </Row>
  );
}
