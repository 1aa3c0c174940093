import type { Fate } from '../../../plan/records/statements.ts';
import { useEditorState } from '../../app/use-session.ts';
import { ChoiceKeys } from './choice-keys.tsx';
import { useChange } from './use-change.ts';

const FATES = [
  { value: 'keep', label: 'keep' },
  { value: 'strip', label: 'strip out' },
  { value: 'cap', label: 'cut off, cap' },
] as const;

/** What becomes of a surveyed thing in the option that is looked at. Nothing for new things, or before the work. */
export function FateKeys({ id, surveyed }: { readonly id: string; readonly surveyed: boolean }) {
  const option = useEditorState((s) =>
    s.chosen.when === 'after' && s.chosen.option !== null ? s.plan.options[s.chosen.option] : undefined,
  );
  const { disabled, run } = useChange();
  if (!surveyed || !option) return null;
  return (
    <ChoiceKeys<Fate>
      label={`After the work (${option.name})`}
      choices={FATES}
      chosen={option.fates[id] ?? 'keep'}
      disabled={disabled}
      onChoose={(fate) => run('fate.set', { option: option.id, ids: [id], fate })}
    />
  );
}
