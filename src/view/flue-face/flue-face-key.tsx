import { setOver } from '../app/screen.ts';

/** Opens the outside of the wall with the distances of its terminal. */
export function FlueFaceKey() {
  return (
    <button type="button" className="key slight block flue-face-key" onClick={() => setOver('flue-face')}>
      Show the flue face
    </button>
  );
}
