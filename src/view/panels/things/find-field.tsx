import { useEffect, useId, useRef } from 'react';
import { useStore } from 'zustand';
import { asked } from '../../a11y/asked.ts';

interface Props {
  readonly typed: string;
  readonly count: number;
  readonly onType: (text: string) => void;
  /** Down into the list. */
  readonly onEnterList: () => void;
  readonly onTakeFirst: () => void;
  readonly onLeave: () => void;
}

/** Filters the list by what is typed: a name, a service, a size, a room. */
export function FindField({ typed, count, onType, onEnterList, onTakeFirst, onLeave }: Props) {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const wanted = useStore(asked, (a) => a.things === 'find');
  useEffect(() => {
    if (!wanted) return;
    const early = asked.getState().typed;
    asked.setState({ things: null, typed: '' });
    field.current?.focus();
    if (early === '') field.current?.select();
    else onType(early);
  }, [wanted, onType]);
  return (
    <div className="field find-field">
      <label className="field-label" htmlFor={id}>
        Find by name, service, size or room
      </label>
      <span className="field-box">
        <input
          ref={field}
          id={id}
          type="search"
          autoComplete="off"
          spellCheck={false}
          value={typed}
          aria-describedby={`${id}-count`}
          onChange={(e) => onType(e.target.value)}
          onKeyDown={(e) => {
            if (e.key === 'ArrowDown') onEnterList();
            else if (e.key === 'Enter') onTakeFirst();
            else if (e.key === 'Escape') {
              if (typed !== '') onType('');
              else onLeave();
            } else return;
            e.preventDefault();
            e.stopPropagation();
          }}
        />
      </span>
      <p className="field-help" id={`${id}-count`} role="status">
        {typed.trim() === '' ? '' : count === 0 ? 'Nothing is called that.' : `${count} found`}
      </p>
    </div>
  );
}
