import type { EditorState } from '../../editor/editor-api.ts';
import { storeyOf } from '../../editor/panes.ts';
import type { Finding } from '../../report/finding.ts';
import type { Session } from '../app/session.ts';
import { inHandWords } from '../bench/in-hand-words.ts';
import { toolKeys } from '../bench/tools.ts';
import { sayCounts } from '../panels/chapters.ts';
import { nameOf } from '../panels/name-of.ts';
import { sayHeight } from '../ribbon/levels.ts';
import { sayAloud } from './aloud.tsx';
import { asked } from './asked.ts';
import { sayCursor } from './say-cursor.ts';
import { sayFindings } from './say-findings.ts';

/** A hand that goes on is not interrupted: only where it rests is said. */
const REST_MS = 350;

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** What has the focus speaks for itself when it is changed by its own keys. */
const isTold = (by: string): boolean => document.activeElement?.closest(by) != null;

function sayCase({ plan, chosen }: EditorState): string {
  if (chosen.when === 'before') return 'Before the work';
  const name = plan.options[chosen.option ?? '']?.name ?? '';
  return name === '' ? 'After the work' : `After the work, ${name}`;
}

/** Runs late, and only with what came last. */
function rested(say: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(say, REST_MS);
  };
}

function sayChosen({ plan, selection }: EditorState): string {
  const [first] = selection;
  if (!first) return 'Nothing chosen.';
  const more = selection.length - 1;
  return `Chosen: ${nameOf(plan, first)}${more > 0 ? ` and ${more} more` : ''}.`;
}

function toolWords(state: EditorState): string {
  const label = toolKeys().find((k) => k.id === state.tool)?.label ?? state.tool;
  const [inHand] = inHandWords({ ...state, typed: '', caught: null });
  return state.tool === 'select' ? `${label}.` : `${label}, ${inHand}.`;
}

/** Says what happens on the drawing, each thing once: steps, tools, heights, the cross, the case, and what findings came and went. */
export function announce({ editor, report }: Session): () => void {
  const { store } = editor;
  let lastCursor = '';
  const cursor = rested(() => {
    const text = sayCursor(store.getState());
    if (text === lastCursor) return;
    lastCursor = text;
    sayAloud(text);
  });
  const height = rested(() => {
    const { plan, inHand } = store.getState();
    if (!isTold('[role="slider"]')) sayAloud(`Work height: ${sayHeight(plan, inHand.height)}.`);
  });
  const typed = rested(() => {
    const { typed } = store.getState();
    if (typed !== '') sayAloud(`${typed} typed.`);
  });
  const chosen = rested(() => {
    if (!isTold('.things')) sayAloud(sayChosen(store.getState()));
  });

  const stopState = store.subscribe((s, was) => {
    if (s.tool !== was.tool) sayAloud(toolWords(s));
    if (s.inHand.height !== was.inHand.height && s.tool === was.tool) height();
    if (s.typed !== was.typed) typed();
    if (s.selection !== was.selection) chosen();
    if (s.cursor !== was.cursor && s.cursor !== null) cursor();
    if (s.cursor !== null && s.toolState === 'aiming' && was.toolState === 'starting')
      sayAloud(`Started${s.caught === null ? '' : ` at ${s.caught}`}. Arrows or figures go on, Enter twice ends.`);
    if (s.chosen !== was.chosen) sayAloud(`${sayCase(s)}.`);
    const floor = storeyOf(s.panes);
    if (floor !== storeyOf(was.panes)) sayAloud(sentence(s.plan.storeys[floor]?.name ?? 'another floor'));
    if ((s.panes.face === null) !== (was.panes.face === null))
      sayAloud(s.panes.face ? 'Wall folded up.' : 'Wall folded down.');
  });

  const stopSteps = editor.onCommit(({ label }, kind) => {
    // A step on another floor is told by the editor itself, right after.
    queueMicrotask(() => {
      if (store.getState().said !== null) return;
      sayAloud(sentence(kind === 'do' ? label : `${kind === 'undo' ? 'undone' : 'redone'}: ${label}`));
    });
  });

  let shown: { readonly findings: readonly Finding[]; readonly plan: string; readonly of: string } | null = null;
  const arrived = (): void => {
    const now = report.getState().report;
    if (!now) return;
    const of = `${now.case.when} ${now.case.option ?? ''}`;
    if (shown?.plan === now.plan && shown.findings !== now.findings)
      sayAloud(shown.of === of ? sayFindings(shown.findings, now.findings) : `Findings: ${sayCounts(now.counts)}.`);
    shown = { findings: now.findings, plan: now.plan, of };
  };
  arrived();
  const stopReport = report.subscribe(arrived);

  const stopAsked = asked.subscribe(({ where }, was) => {
    if (where === was.where) return;
    const text = sayCursor(store.getState());
    sayAloud(text === '' ? 'No cross is shown. An arrow on the drawing shows it.' : text);
  });

  return () => {
    stopState();
    stopSteps();
    stopReport();
    stopAsked();
  };
}
