import { useStore } from 'zustand';
import { Dialog } from '../app/dialog.tsx';
import { chooseHand } from '../app/screen.ts';
import { useScreen } from '../app/use-session.ts';
import { HandKeys } from '../hands/hand-keys.tsx';
import { RadioKeys } from '../look/radio-keys.tsx';
import { chooseTheme, theme } from '../look/theme.ts';
import { FIRST_STEPS } from './first-steps.ts';
import { GloveKeys } from './glove-keys.tsx';
import { KeySettings } from './key-settings.tsx';
import { MarkWords } from './mark-words.tsx';
import { SaidTable } from './said-table.tsx';
import { PAGE_WORDS, TRADE_WORDS, type TradeWord } from './trade-words.ts';

const GESTURES = [
  { what: 'Draw, choose, drag', how: 'one finger, the pen, or the main button' },
  { what: 'Move the paper', how: 'two fingers; the middle button; or the space bar held with the main button' },
  { what: 'With a pen', how: 'as told under "How it is held"; a hand that rests on the glass counts for nothing' },
  { what: 'Several in one place', how: 'tap again for the next, or choose in the list beside the tap' },
  { what: 'Nearer, further', how: 'two fingers apart or together; the wheel' },
  { what: 'End a run', how: 'tap a tail or a pipe; tap the last place again; or Enter' },
  { what: 'A length', how: 'type the figures while a leg follows the pointer, then Enter' },
  { what: 'Work height', how: 'drag the tab on the heights, or tap it and type' },
  { what: 'Fold a wall up', how: 'choose the wall, then one of its faces' },
] as const;

const BY_KEYS = [
  { what: 'A cross', how: 'an arrow shows it and moves it; what it catches is said' },
  { what: 'Longer, shorter', how: 'shift with an arrow, alt with an arrow; [ and ] change its step' },
  { what: 'Next thing that way', how: 'Ctrl with an arrow' },
  { what: 'Tap', how: 'Enter or space; with alt nothing is caught, with shift it is added to what is chosen' },
  { what: 'Hold and drag', how: 'Ctrl and Enter holds, arrows drag, Enter lets go' },
  { what: 'A length', how: 'type the figures, an arrow says which way, Enter lays it; Enter again ends the run' },
  {
    what: 'A rise or drop',
    how: 'type another work height: the next place is at it; Enter at once makes only the upright',
  },
  { what: 'What is chosen', how: 'arrows move it, Delete takes it away, Escape lets go of it' },
  { what: 'While walls are told', how: 'an arrow alone turns the wall; with shift, alt or Ctrl it moves the cross' },
  {
    what: 'The list of things',
    how: 'arrows and Enter; space chooses several; Ctrl and Enter shows one on the drawing',
  },
] as const;

const told = (rows: readonly { readonly what: string; readonly how: string }[]) =>
  rows.map(({ what, how }) => [what, how] as const);
const meant = (words: readonly TradeWord[]) => words.map(({ word, says }) => [word, says] as const);

const PARTS = [
  { id: 'help-first', title: 'First steps' },
  { id: 'help-held', title: 'How it is held' },
  { id: 'help-gestures', title: 'Gestures' },
  { id: 'help-words', title: 'Words' },
  { id: 'help-keys', title: 'Keys' },
] as const;

/** Brings a part up and the focus with it, so that a screen reader reads on from there. */
function goTo(id: string): void {
  const heading = document.getElementById(id);
  heading?.scrollIntoView({ block: 'start' });
  heading?.focus({ preventScroll: true });
}

/** First steps, words, how it is held, gestures and keys, and the cautions that go before everything. */
export default function HelpSheet() {
  return (
    <Dialog title="Help">
      <h3>Before anything else</h3>
      <p>Gas work is for registered engineers only.</p>
      <p>
        Local rules and the appliance's own instructions go first. Figures here are compared with limits, not signed
        off: the registered engineer decides.
      </p>
      <p>
        A figure that was not read on its page is marked <em className="unverified">unverified</em>. What was taken for
        granted has a dotted line.
      </p>
      <nav className="key-row help-parts" aria-label="Parts of the help">
        {PARTS.map(({ id, title }) => (
          <button key={id} type="button" className="key slight" onClick={() => goTo(id)}>
            {title}
          </button>
        ))}
      </nav>
      <Part id="help-first" title="First steps" />
      <SaidTable rows={told(FIRST_STEPS)} />
      <h3>Marks</h3>
      <MarkWords />
      <Settings />
      <Part id="help-gestures" title="Gestures" />
      <SaidTable rows={told(GESTURES)} />
      <h3>On the drawing, without a pointer</h3>
      <SaidTable rows={told(BY_KEYS)} />
      <Part id="help-words" title="Words of this page" />
      <SaidTable rows={meant(PAGE_WORDS)} />
      <h3>Words of the trade</h3>
      <SaidTable rows={meant(TRADE_WORDS)} />
      <Part id="help-keys" title="Keys" />
      <KeySettings />
    </Dialog>
  );
}

function Part({ id, title }: { readonly id: string; readonly title: string }) {
  return (
    <h3 id={id} tabIndex={-1}>
      {title}
    </h3>
  );
}

const THEMES = [
  { value: 'system', label: 'as the device' },
  { value: 'day', label: 'day' },
  { value: 'night', label: 'night' },
] as const;

const HANDS = [
  { value: 'right', label: 'left hand' },
  { value: 'left', label: 'right hand' },
] as const;

export function Settings() {
  const choice = useStore(theme, (t) => t.choice);
  const hand = useScreen((s) => s.hand);
  return (
    <>
      <h3>How it looks</h3>
      <RadioKeys legend="Light" choices={THEMES} chosen={choice} onChoose={chooseTheme} />
      <Part id="help-held" title="How it is held" />
      <RadioKeys legend="The tablet lies in the" choices={HANDS} chosen={hand} onChoose={chooseHand} />
      <GloveKeys />
      <HandKeys />
    </>
  );
}
