import { useStore } from 'zustand';
import { defaultKeys } from '../../editor/keys.ts';
import { Dialog } from '../app/dialog.tsx';
import { chooseHand } from '../app/screen.ts';
import { useScreen } from '../app/use-session.ts';
import { RadioKeys } from '../look/radio-keys.tsx';
import { chooseTheme, theme } from '../look/theme.ts';
import { GloveKeys } from './glove-keys.tsx';
import { sayKey } from './say-key.ts';

const GESTURES = [
  { what: 'Draw, choose, drag', how: 'one finger, the pen, or the main button' },
  { what: 'Move the paper', how: 'two fingers; the middle button; or the space bar held with the main button' },
  { what: 'Nearer, further', how: 'two fingers apart or together; the wheel' },
  { what: 'End a run', how: 'tap a tail or a pipe; tap the last place again; or Enter' },
  { what: 'A length', how: 'type the figures while a leg follows the pointer, then Enter' },
  { what: 'Work height', how: 'drag the tab on the heights, or tap it and type' },
  { what: 'Fold a wall up', how: 'choose the wall, then one of its faces' },
] as const;

/** Keys, gestures, how the page looks, and the cautions that go before everything on it. */
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
      <Settings />
      <h3>Gestures</h3>
      <table className="key-table">
        <tbody>
          {GESTURES.map((g) => (
            <tr key={g.what}>
              <th scope="row">{g.what}</th>
              <td>{g.how}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <h3>Keys</h3>
      <table className="key-table">
        <tbody>
          {defaultKeys().map((k) => (
            <tr key={sayKey(k)}>
              <th scope="row">{k.label}</th>
              <td>
                <kbd>{sayKey(k)}</kbd>
              </td>
            </tr>
          ))}
          <tr>
            <th scope="row">print</th>
            <td>
              <kbd>Ctrl P</kbd>
            </td>
          </tr>
          <tr>
            <th scope="row">this page</th>
            <td>
              <kbd>?</kbd>
            </td>
          </tr>
        </tbody>
      </table>
    </Dialog>
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
      <h3>How it is held</h3>
      <RadioKeys legend="The tablet lies in the" choices={HANDS} chosen={hand} onChoose={chooseHand} />
      <GloveKeys />
    </>
  );
}
