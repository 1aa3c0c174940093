import { useEffect, useState } from 'react';

/** Under this nobody is told that something is being worked out: the last figures stand, in a paler ink. */
const LATE_MS = 400;

/** True once a wait has lasted so long that it has to be said. */
export function useLate(waiting: boolean): boolean {
  const [late, setLate] = useState(false);
  useEffect(() => {
    if (!waiting) {
      setLate(false);
      return;
    }
    const timer = setTimeout(() => setLate(true), LATE_MS);
    return () => clearTimeout(timer);
  }, [waiting]);
  return late;
}
