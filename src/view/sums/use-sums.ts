import { useEffect, useState } from 'react';
import type { SumAnswer, SumCard, Sums } from '../../report/sum-card.ts';
import { startSums } from '../../worker/sums.ts';

let port: Sums | null = null;
/** Started with the first sum that is asked for. */
const sums = (): Sums => {
  port ??= startSums();
  return port;
};

const why = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Every sum there is; null while they come, a sentence where they do not. */
export function useSumCards(): readonly SumCard[] | string | null {
  const [cards, setCards] = useState<readonly SumCard[] | string | null>(null);
  useEffect(() => {
    let gone = false;
    sums()
      .list()
      .then((list) => !gone && setCards(list))
      .catch((error) => !gone && setCards(why(error)));
    return () => {
      gone = true;
    };
  }, []);
  return cards;
}

/** The answer to what is told now; null until all that is needed is told. An older answer never comes over a newer one. */
export function useSum(card: SumCard, told: Readonly<Record<string, string>>): SumAnswer | null {
  const [answer, setAnswer] = useState<SumAnswer | null>(null);
  const key = JSON.stringify(told);
  useEffect(() => {
    let gone = false;
    const filled = Object.fromEntries(
      Object.entries(JSON.parse(key) as Record<string, string>).filter(([, text]) => text.trim() !== ''),
    );
    if (card.inputs.some((i) => i.required && filled[i.key] === undefined)) {
      setAnswer(null);
      return;
    }
    sums()
      .work(card.id, filled)
      .then((got) => !gone && setAnswer(got))
      .catch((error) => !gone && setAnswer({ ok: false, why: why(error) }));
    return () => {
      gone = true;
    };
  }, [card, key]);
  return answer;
}
