import { CandidateList } from './candidate-list.tsx';
import { Loupe } from './loupe.tsx';
import './hands.css';

/** What comes beside a hand on the drawing: the lens, and the list of what lies under a tap. */
export default function Hands() {
  return (
    <>
      <Loupe />
      <CandidateList />
    </>
  );
}
