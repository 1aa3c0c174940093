import type { State } from '../../../report/section.ts';
import { FindingMark, Vial } from '../../look/mark.tsx';

/** How a row stands against its limit: the vial where it passes, else the finding's mark. */
export function StateMark({ state, small = false }: { readonly state: State; readonly small?: boolean }) {
  if (state === 'none') return null;
  if (state === 'pass') return <Vial width={small ? 22 : 38} />;
  return <FindingMark outcome={state} size={small ? 18 : 24} hidden />;
}
