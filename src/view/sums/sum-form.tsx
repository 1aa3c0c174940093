import { useId, useRef } from 'react';
import type { SumCard, SumInput } from '../../report/sum-card.ts';
import { Icon } from '../look/icon.tsx';
import { RadioKeys } from '../look/radio-keys.tsx';
import { SumWorking } from './sum-working.tsx';
import { tell, useTold } from './told.ts';
import { useSum } from './use-sums.ts';

/** More than these do not fit a row of keys. */
const FEW = 7;

interface BoxProps {
  readonly input: SumInput;
  readonly value: string;
  readonly onTell: (text: string) => void;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const labelOf = ({ label, required }: SumInput): string => `${capital(label)}${required ? '' : ' (may be left out)'}`;

function Box({ input, value, onTell }: BoxProps) {
  const id = useId();
  const choices = input.choices ?? [];
  if (input.kind === 'choice' && choices.length <= FEW) {
    const unit = input.unit === '' ? '' : `, ${input.unit}`;
    const all = input.required ? choices : ['', ...choices];
    return (
      <RadioKeys
        legend={`${capital(input.label)}${unit}`}
        choices={all.map((c) => ({ value: c, label: c === '' ? 'not told' : (input.words?.[c] ?? c) }))}
        chosen={value}
        onChoose={onTell}
      />
    );
  }
  return (
    <label className="field" htmlFor={id}>
      <span className="field-label">{labelOf(input)}</span>
      <span className="field-box">
        {input.kind === 'choice' ? (
          <select id={id} value={value} onChange={(e) => onTell(e.target.value)}>
            <option value="">not told</option>
            {choices.map((c) => (
              <option key={c} value={c}>
                {input.words?.[c] ?? c}
              </option>
            ))}
          </select>
        ) : (
          <input
            id={id}
            autoComplete="off"
            inputMode="decimal"
            value={value}
            onChange={(e) => onTell(e.target.value.replace(',', '.'))}
          />
        )}
        {input.unit !== '' && <span className="unit">{input.unit}</span>}
      </span>
    </label>
  );
}

/** One sum: what it asks for, and its answer with the working as soon as all that is needed is told. */
export function SumForm({ card, onBack }: { readonly card: SumCard; readonly onBack: () => void }) {
  const told = useTold(card.id);
  const answer = useSum(card, told);
  const form = useRef<HTMLFormElement>(null);
  const missing = card.inputs.filter((i) => i.required && (told[i.key] ?? '').trim() === '');
  return (
    <>
      <button type="button" className="bare-key accent sums-back" onClick={onBack}>
        <Icon name="back" size={20} />
        All sums
      </button>
      <h3 className="sum-title">{card.title}</h3>
      <form ref={form} className="sum-form" aria-label={card.title} onSubmit={(e) => e.preventDefault()}>
        {card.inputs.map((input) => (
          <Box
            key={input.key}
            input={input}
            value={told[input.key] ?? ''}
            onTell={(text) => tell(card.id, { ...told, [input.key]: text })}
          />
        ))}
        <div className="key-row">
          <button
            type="button"
            className="key slight"
            onClick={() =>
              tell(
                card.id,
                Object.fromEntries(Object.entries(card.example.values).map(([key, value]) => [key, String(value)])),
              )
            }
          >
            A worked example
          </button>
          <button type="button" className="key slight" onClick={() => tell(card.id, {})}>
            Empty it
          </button>
        </div>
        <p className="field-help">The example: {card.example.from}.</p>
      </form>
      <output className="sum-answer" aria-live="polite">
        {answer === null ? (
          <p className="sum-wants">Still wanted: {missing.map((i) => i.label).join(', ')}.</p>
        ) : answer.ok ? (
          <SumWorking working={answer.working} sources={answer.sources} />
        ) : (
          <p className="field-wrong">{capital(answer.why).replace(/\.?$/, '.')}</p>
        )}
      </output>
    </>
  );
}
