import { useEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Selected } from '../../../editor/editor-api.ts';
import type { Finding } from '../../../report/finding.ts';
import { OUTCOMES } from '../../../report/finding.ts';
import { asked } from '../../a11y/asked.ts';
import { coveredPx } from '../../app/covered.ts';
import { lowerSheet, openChapter } from '../../app/screen.ts';
import { useEditor, useEditorState, useReport } from '../../app/use-session.ts';
import { FindField } from './find-field.tsx';
import { AT_ONCE, type ListedRow, rowsOf, type Unfolded, unfoldedTo } from './listed-rows.ts';
import { type ThingFindings, ThingLine } from './thing-line.tsx';
import { found, groupsOf, placeOf, type Thing, wordsOf } from './things-of.ts';

const NONE: readonly Finding[] = [];

/** Findings by the thing they are about. */
function byThing(findings: readonly Finding[]): ReadonlyMap<string, ThingFindings> {
  const all = new Map<string, ThingFindings>();
  for (const { ids, outcome } of findings) {
    for (const id of ids) {
      const was = all.get(id);
      const worse = !was || OUTCOMES.indexOf(outcome) < OUTCOMES.indexOf(was.worst);
      all.set(id, { worst: worse ? outcome : was.worst, count: (was?.count ?? 0) + 1 });
    }
  }
  return all;
}

const same = (a: Selected, b: Selected): boolean => a.map === b.map && a.id === b.id;

/** A leg or stretch that is chosen on the drawing is found in the list as its run. */
function listedAs(plan: Parameters<typeof placeOf>[0], { map, id }: Selected): string {
  if (map === 'legs') return plan.legs[id]?.run ?? id;
  return map === 'stretches' ? (plan.stretches[id]?.run ?? id) : id;
}

const keyOf = (thing: Thing | undefined): string => (thing ? `${thing.map}/${thing.id}` : '');

/** Lines of the list that the arrows go through, with where they are now. */
function useRows(typed: string) {
  const plan = useEditorState((s) => s.plan);
  const chosenCase = useEditorState((s) => s.chosen);
  const selection = useEditorState((s) => s.selection);
  const groups = useMemo(() => groupsOf(plan, chosenCase), [plan, chosenCase]);
  const lineOf = (of: readonly Selected[]): Thing | undefined => {
    const last = of.at(-1);
    const id = last && listedAs(plan, last);
    return groups.flatMap((g) => g.things).find((t) => t.id === id);
  };
  // What is chosen on the drawing is where the list stands.
  const [unfolded, setUnfolded] = useState<Unfolded>(() => {
    const all: Unfolded = { open: new Map(), shown: new Map() };
    const thing = lineOf(selection);
    return thing ? unfoldedTo(groups, all, thing.id) : all;
  });
  const [at, setAt] = useState(() => keyOf(lineOf(selection)));
  const followed = useRef(selection);
  useEffect(() => {
    if (followed.current === selection) return;
    followed.current = selection;
    const thing = lineOf(selection);
    if (!thing) return;
    setUnfolded((now) => unfoldedTo(groups, now, thing.id));
    setAt(keyOf(thing));
  });
  const looking = typed.trim() !== '';
  const words = useMemo(() => (looking ? wordsOf(plan) : null), [plan, looking]);
  const shown = useMemo(() => (words ? found(groups, typed, words) : groups), [groups, typed, words]);
  const rows = useMemo(() => rowsOf(shown, unfolded, looking), [shown, unfolded, looking]);
  const standing = rows.findIndex((r) => r.key === at);
  const firstThing = rows.findIndex((r) => r.is === 'thing');
  return {
    plan,
    rows,
    count: shown.reduce((n, g) => n + g.things.length, 0),
    first: shown[0]?.things[0],
    here: standing >= 0 ? standing : Math.max(0, firstThing),
    setAt,
    setUnfolded,
  };
}

/** The drawing as a list: one stop for the tab key, arrows within. Enter chooses and goes to the form, space adds to what is chosen. */
export function ThingsList() {
  const editor = useEditor();
  const [typed, setTyped] = useState('');
  const selection = useEditorState((s) => s.selection);
  const findings = useReport((s) => s.report?.findings ?? NONE);
  const foundAt = useMemo(() => byThing(findings), [findings]);
  const { plan, rows, count, first, here, setAt, setUnfolded } = useRows(typed);
  const list = useRef<HTMLUListElement>(null);
  const moved = useRef(false);
  const wanted = useStore(asked, (a) => a.things === 'list');
  useEffect(() => {
    const line = list.current?.querySelector<HTMLElement>(`[data-row="${here}"]`);
    if (wanted && typed !== '') setTyped('');
    else if (wanted) {
      asked.setState({ things: null });
      line?.focus();
    } else if (moved.current) line?.focus();
    else line?.scrollIntoView({ block: 'nearest' });
    moved.current = false;
  }, [here, wanted, typed]);

  const toDrawing = (): void => {
    const { active } = editor.store.getState().panes;
    document.querySelector<HTMLElement>(`[data-pane="${active}"]`)?.focus();
  };
  const go = (to: number): void => {
    const row = rows[(to + rows.length) % rows.length];
    if (!row) return;
    setAt(row.key);
    list.current?.querySelector<HTMLElement>(`[data-row="${rows.indexOf(row)}"]`)?.focus();
  };
  const fold = (key: string, open: boolean): void =>
    setUnfolded((now) => ({ ...now, open: new Map(now.open).set(key, open) }));
  const showMore = (row: Extract<ListedRow, { is: 'more' }>): void => {
    const now = row.group.things.length - row.left;
    const next = row.group.things[now];
    setUnfolded((u) => ({ ...u, shown: new Map(u.shown).set(row.group.key, now + AT_ONCE) }));
    moved.current = true;
    if (next) setAt(keyOf(next));
  };
  /** Added to what is chosen, the list stays; chosen alone, its form comes. */
  const choose = (thing: Thing, add: boolean): void => {
    const { map, id } = thing;
    const left = selection.filter((s) => !same(s, thing));
    const was = left.length < selection.length;
    asked.setState({ staying: add });
    if (add) editor.select(was ? left : [...selection, { map, id }]);
    else editor.select([{ map, id }]);
    if (!add && was) openChapter('inspect');
  };
  const show = (thing: Thing): void => {
    const { map, id } = thing;
    if (!selection.some((s) => same(s, thing))) {
      asked.setState({ staying: true });
      editor.select([{ map, id }]);
    }
    const place = placeOf(plan, thing);
    if (place) {
      lowerSheet();
      editor.showPlace(place.at, place.storey);
      const { camera } = editor.store.getState().panes.plan;
      const [x, y] = camera.centre;
      editor.setCamera('plan', { ...camera, centre: [x, y - (coveredPx() / 2) * camera.mmPerPx] });
      toDrawing();
      editor.pointAt(place.at);
    } else toDrawing();
  };

  const key = (e: React.KeyboardEvent): void => {
    const row = rows[here];
    if (!(e.target instanceof Element) || !e.target.matches('[data-row]')) return;
    const thing = row?.is === 'thing' ? row.thing : null;
    if (e.key === 'ArrowDown') go(here + 1);
    else if (e.key === 'ArrowUp') go(here - 1);
    else if (e.key === 'Home') go(0);
    else if (e.key === 'End') go(rows.length - 1);
    else if (e.key === 'ArrowLeft' && row) {
      if (row.is === 'head') fold(row.key, false);
      else go(rows.findIndex((r) => r.is === 'head' && r.group === row.group));
    } else if (e.key === 'ArrowRight' && row?.is === 'head') fold(row.key, true);
    else if (e.key === 'Escape') toDrawing();
    else if (e.key === ' ' && thing) choose(thing, true);
    else if (e.key === 'Enter' && (e.ctrlKey || e.metaKey) && thing) show(thing);
    else return;
    e.preventDefault();
    e.stopPropagation();
  };

  return (
    <>
      <FindField
        typed={typed}
        count={count}
        onType={setTyped}
        onEnterList={() => go(rows.findIndex((r) => r.is === 'thing'))}
        onTakeFirst={() => first && choose(first, false)}
        onLeave={toDrawing}
      />
      <p className="out-of-sight" id="things-how">
        Arrows go through the list. Enter opens the form of a thing, space adds it to what is chosen, Ctrl and Enter
        show it on the drawing, Escape goes back to the drawing.
      </p>
      <ul className="things" ref={list} aria-describedby="things-how" onKeyDown={key}>
        {rows.map((row, i) => {
          if (row.is === 'thing')
            return (
              <ThingLine
                key={row.key}
                plan={plan}
                thing={row.thing}
                at={i}
                current={i === here}
                chosen={selection.some((s) => same(s, row.thing))}
                findings={foundAt.get(row.thing.id)}
                onFocus={() => setAt(row.key)}
                onChoose={(add) => choose(row.thing, add)}
                onShow={() => show(row.thing)}
              />
            );
          return (
            <li key={row.key}>
              <Other row={row} at={i} current={i === here} onFold={fold} onMore={showMore} onFocus={setAt} />
            </li>
          );
        })}
      </ul>
    </>
  );
}

interface OtherProps {
  readonly row: Exclude<ListedRow, { is: 'thing' }>;
  readonly at: number;
  readonly current: boolean;
  readonly onFold: (key: string, open: boolean) => void;
  readonly onMore: (row: Extract<ListedRow, { is: 'more' }>) => void;
  readonly onFocus: (key: string) => void;
}

function Other({ row, at, current, onFold, onMore, onFocus }: OtherProps) {
  const shared = {
    type: 'button',
    'data-row': at,
    tabIndex: current ? 0 : -1,
    onFocus: () => onFocus(row.key),
  } as const;
  if (row.is === 'more')
    return (
      <button {...shared} className="thing things-more" onClick={() => onMore(row)}>
        {row.left} more
      </button>
    );
  return (
    <h3>
      <button {...shared} className="things-head" aria-expanded={row.open} onClick={() => onFold(row.key, !row.open)}>
        {row.group.title}
        <span className="things-count">{row.group.things.length}</span>
      </button>
    </h3>
  );
}
