import { useEffect, useRef, useState } from 'react';
import type { SumCard } from '../../report/sum-card.ts';
import { Dialog } from '../app/dialog.tsx';
import { isFocusLost } from '../app/use-focus-back.ts';
import { SumForm } from './sum-form.tsx';
import { useSumCards } from './use-sums.ts';
import './sums.css';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function byTopic(cards: readonly SumCard[]): readonly (readonly [topic: string, cards: readonly SumCard[]])[] {
  const topics = new Map<string, SumCard[]>();
  for (const card of [...cards].sort((a, b) => (a.title < b.title ? -1 : 1)))
    topics.set(card.topic, [...(topics.get(card.topic) ?? []), card]);
  return [...topics].sort(([a], [b]) => (a < b ? -1 : 1));
}

interface ListProps {
  readonly cards: readonly SumCard[];
  readonly last: string | null;
  readonly onOpen: (card: SumCard) => void;
}

function SumList({ cards, last, onOpen }: ListProps) {
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // Back among the others, it is the one that was just looked at.
    if (last !== null && isFocusLost())
      list.current?.querySelector<HTMLElement>(`[data-sum="${CSS.escape(last)}"]`)?.focus();
  }, [last]);
  return (
    <div ref={list}>
      <p>Each with its working and where its figures are from. Nothing has to be drawn.</p>
      {byTopic(cards).map(([topic, of]) => (
        <section key={topic} aria-label={capital(topic)}>
          <h3 className="sum-topic">{capital(topic)}</h3>
          <div className="sum-keys">
            {of.map((card) => (
              <button key={card.id} type="button" className="key" data-sum={card.id} onClick={() => onOpen(card)}>
                {card.title}
              </button>
            ))}
          </div>
        </section>
      ))}
    </div>
  );
}

/** Sums without a drawing. */
export default function SumsScreen() {
  const cards = useSumCards();
  const [open, setOpen] = useState<string | null>(null);
  const [last, setLast] = useState<string | null>(null);
  const card = typeof cards === 'string' ? undefined : cards?.find((c) => c.id === open);
  return (
    <Dialog title="Sums">
      {cards === null && <p>Fetching them.</p>}
      {typeof cards === 'string' && <p className="field-wrong">The sums did not come: {cards}</p>}
      {card !== undefined && <SumForm key={card.id} card={card} onBack={() => setOpen(null)} />}
      {card === undefined && cards !== null && typeof cards !== 'string' && (
        <SumList
          cards={cards}
          last={last}
          onOpen={({ id }) => {
            setLast(id);
            setOpen(id);
          }}
        />
      )}
    </Dialog>
  );
}
