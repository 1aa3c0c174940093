import { useStore } from 'zustand';
import type { Beside } from '../app/screen.ts';
import { Icon } from '../look/icon.tsx';
import { closeBeside, showBeside } from '../stage/beside.ts';
import { isoView, turnIso } from './iso-view.ts';

const SCOPES = [
  { scope: 'run', label: 'One run' },
  { scope: 'system', label: 'System' },
  { scope: 'all', label: 'All' },
] as const;

/** How much of the house is drawn. */
export function ScopeKeys({ beside }: { readonly beside: Beside }) {
  return (
    <fieldset className="plain-set iso-scopes">
      <legend className="out-of-sight">Drawn in isometric</legend>
      {SCOPES.map(({ scope, label }) => (
        <button
          key={scope}
          type="button"
          className="key slight"
          aria-pressed={beside.scope === scope}
          onClick={() => showBeside({ ...beside, scope })}
        >
          {label}
        </button>
      ))}
    </fieldset>
  );
}

/** How it is looked at. */
export function LookKeys({ onFit }: { readonly onFit: () => void }) {
  const { lengths, rooms } = useStore(isoView);
  return (
    <div className="iso-look">
      <button type="button" className="key slight" onClick={turnIso}>
        Turn
      </button>
      <button
        type="button"
        className="key slight"
        aria-pressed={lengths}
        onClick={() => isoView.setState({ lengths: !lengths })}
      >
        Lengths
      </button>
      <button
        type="button"
        className="key slight"
        aria-pressed={rooms}
        onClick={() => isoView.setState({ rooms: !rooms })}
      >
        Rooms
      </button>
      <button type="button" className="key slight" aria-label="Show all of the isometric" onClick={onFit}>
        <Icon name="fit" size={22} />
      </button>
    </div>
  );
}

export function CloseKey() {
  return (
    <button type="button" className="key slight iso-close" aria-label="Close the isometric" onClick={closeBeside}>
      <Icon name="close" size={20} />
    </button>
  );
}
