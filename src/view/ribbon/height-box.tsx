import { useEffect, useRef } from 'react';
import type { RibbonLevel } from '../../drawing/ribbon.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import { Icon } from '../look/icon.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { sameHeight } from './levels.ts';

interface Props {
  /** Where it stands on the page, px. */
  readonly at: { readonly left?: number; readonly right?: number; readonly top: number };
  readonly says: string;
  readonly offFloorMm: number;
  readonly floor: number;
  readonly levels: readonly RibbonLevel[];
  readonly now: HeightRef;
  readonly onType: (offFloorMm: number) => void;
  readonly onTake: (height: HeightRef) => void;
  readonly onClose: () => void;
}

/** The work height typed, or taken from one of the places in the house. */
export default function HeightBox(props: Props) {
  const { at, says, offFloorMm, floor, levels, now, onType, onTake, onClose } = props;
  const box = useRef<HTMLElement>(null);
  useEffect(() => {
    box.current?.querySelector('input')?.focus();
    const outside = (e: PointerEvent): void => {
      if (e.target instanceof Node && !box.current?.contains(e.target)) onClose();
    };
    document.addEventListener('pointerdown', outside, true);
    return () => document.removeEventListener('pointerdown', outside, true);
  }, [onClose]);
  return (
    <section
      ref={box}
      className="height-box"
      role="dialog"
      aria-label="Work height"
      style={at}
      onKeyDownCapture={(e) => {
        if (e.key !== 'Escape') return;
        e.stopPropagation();
        onClose();
      }}
      onKeyDown={(e) => {
        if (e.key === 'Enter' && e.target instanceof HTMLInputElement) onClose();
      }}
    >
      <div className="height-box-head">
        <h2>Work height</h2>
        <button type="button" className="bare-key" aria-label="Close" onClick={onClose}>
          <Icon name="close" size={20} />
        </button>
      </div>
      <p className="height-box-says">{says}</p>
      <NumberBox
        label="Off floor"
        value={offFloorMm}
        unit="mm"
        onSet={(mm) => {
          if (typeof mm !== 'number') return false;
          onType(mm);
          return true;
        }}
      />
      <ul>
        {[...levels].reverse().map((l) => (
          <li key={`${l.label}${l.z}`}>
            <button type="button" aria-pressed={sameHeight(l.height, now)} onClick={() => onTake(l.height)}>
              <span>{l.label}</span>
              <span>{Math.round(l.z - floor)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
