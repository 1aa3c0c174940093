import { ChoiceKeys } from './choice-keys.tsx';

type Sureness = 'seen' | 'assumed';
const SEEN = [
  { value: 'seen', label: 'seen' },
  { value: 'assumed', label: 'assumed' },
] as const;

interface Props {
  readonly sureness: Sureness;
  readonly disabled: boolean;
  readonly onChoose: (sureness: Sureness) => void;
}

export function SurenessKeys({ sureness, disabled, onChoose }: Props) {
  return (
    <ChoiceKeys<Sureness>
      label="Was it looked at?"
      choices={SEEN}
      chosen={sureness}
      disabled={disabled}
      onChoose={onChoose}
    />
  );
}
