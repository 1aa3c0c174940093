import { useEffect, useMemo, useRef } from 'react';
import type { RibbonBar } from '../../drawing/ribbon/ribbon-bars.ts';
import type { RibbonLevel } from '../../drawing/ribbon.ts';
import type { Network } from '../../network/network.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { holdRun, sayHeld, setAim } from './held-run.ts';
import type { StoreyHeights } from './levels.ts';
import { capital, sayBar } from './say-height.ts';

interface Props {
  readonly at: { readonly left?: number; readonly right?: number; readonly top: number };
  /** Everything that lies where the hand touched. */
  readonly bars: readonly RibbonBar[];
  /** The one whose height is told; null: it has to be chosen first. */
  readonly bar: RibbonBar | null;
  readonly levels: readonly RibbonLevel[];
  readonly network: Network;
  readonly heights: StoreyHeights;
  readonly storey: string;
  readonly onPick: (bar: RibbonBar) => void;
  readonly onClose: () => void;
}

const STEPS = [-100, -10, 10, 100];

/** Heights of pipes without a drag: choose which, then step it, type it, or take the height of a place. */
export default function RunHeightBox(props: Props) {
  const { at, bars, bar, onPick, onClose } = props;
  const box = useRef<HTMLElement>(null);
  const run = bar?.run;
  useEffect(() => {
    box.current?.querySelector<HTMLElement>(run === undefined ? 'li button' : 'input')?.focus();
  }, [run]);
  useEffect(() => {
    const outside = (e: PointerEvent): void => {
      if (e.target instanceof Node && !box.current?.contains(e.target)) onClose();
    };
    document.addEventListener('pointerdown', outside, true);
    return () => document.removeEventListener('pointerdown', outside, true);
  }, [onClose]);
  const others = bars.filter((b) => b.run !== run);
  return (
    <section
      ref={box}
      className="height-box"
      role="dialog"
      aria-label={bar ? `Height of ${bar.name}` : 'Pipes here'}
      style={at}
      onKeyDownCapture={(e) => {
        if (e.key !== 'Escape') return;
        e.stopPropagation();
        onClose();
      }}
    >
      <header>
        <h2>{bar ? capital(bar.name) : `${bars.length} pipes here`}</h2>
        <button type="button" className="bare-key" aria-label="Close" onClick={onClose}>
          <Icon name="close" size={20} />
        </button>
      </header>
      {bar && <Told {...props} bar={bar} />}
      {others.length > 0 && <Others {...props} bars={others} beside={bar !== null} onPick={onPick} />}
    </section>
  );
}

function Told({ bar, levels, network, heights, storey }: Props & { readonly bar: RibbonBar }) {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const { floor } = heights;
  const held = useMemo(() => holdRun(plan, network, bar, levels, floor), [plan, network, bar, levels, floor]);
  const clear = held && sayHeld(held, bar.z);
  return (
    <>
      <p className="height-box-says">{sayBar(plan, bar, storey, floor)}</p>
      {clear !== null && <p className="height-box-clear">{capital(clear)}</p>}
      <fieldset className="plain-set height-steps">
        <legend className="out-of-sight">Steps</legend>
        {STEPS.map((mm) => (
          <button
            key={mm}
            type="button"
            className="key slight"
            aria-label={`${mm > 0 ? 'up' : 'down'} ${Math.abs(mm)}`}
            onClick={() => setAim(editor, bar, { z: bar.z + mm, height: null })}
          >
            {mm > 0 ? `+${mm}` : mm}
          </button>
        ))}
      </fieldset>
      <NumberBox
        label="Off floor"
        value={Math.round((bar.z - floor) * 10) / 10}
        unit="mm"
        onSet={(mm) => {
          if (typeof mm !== 'number') return false;
          return setAim(editor, bar, { z: floor + mm, height: { from: 'floor', of: storey, mm } })?.ok ?? true;
        }}
      />
      {bar.fallMm === 0 && (
        <ul>
          {[...levels].reverse().map((l) => (
            <li key={`${l.label}${l.z}`}>
              <button type="button" onClick={() => setAim(editor, bar, { z: l.z, height: l.height })}>
                <span>{l.label}</span>
                <span>{Math.round(l.z - floor)}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function Others({ bars, storey, heights, onPick, beside }: Props & { readonly beside: boolean }) {
  const plan = useEditorState((s) => s.plan);
  return (
    <>
      {beside && <h3 className="height-box-more">Also here</h3>}
      <ul>
        {[...bars].reverse().map((b) => (
          <li key={b.run}>
            <button type="button" onClick={() => onPick(b)}>
              <span>{capital(b.name)}</span>
              <span>{sayBar(plan, b, storey, heights.floor)}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
