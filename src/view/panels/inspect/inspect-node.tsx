import { useMemo } from 'react';
import { nodePlace } from '../../../geometry/places.ts';
import { fittingAt } from '../../../network/fitting-at.ts';
import { buildNetwork } from '../../../network/graph.ts';
import { useEditorState } from '../../app/use-session.ts';
import { ChoiceKeys } from './choice-keys.tsx';
import { NumberBox } from './number-box.tsx';
import { sayFitting } from './say-fitting.ts';
import { useChange } from './use-change.ts';

type Turn = 'elbow' | 'bend' | null;
const TURNS = [
  { value: null, label: 'as the run' },
  { value: 'elbow', label: 'elbow' },
  { value: 'bend', label: 'bend' },
] as const;

/** A corner, tee or end: what stands there, how it turns, how high it is. */
export function InspectNode({ id }: { readonly id: string }) {
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const { disabled, run } = useChange();
  const says = useMemo(() => {
    const network = buildNetwork(plan, chosen);
    const vertex = network.vertexOf.get(id);
    return vertex === undefined ? '' : sayFitting(fittingAt(network, vertex));
  }, [plan, chosen, id]);
  const node = plan.nodes[id];
  if (!node) return null;
  const { place } = node;
  const z = nodePlace(plan, node)?.at.z;
  const floor = place.on === 'storey' ? (plan.storeys[place.storey]?.floorMm ?? 0) : 0;
  return (
    <>
      {says !== '' && <p className="inspect-says">{says}</p>}
      {place.on === 'storey' && (
        <NumberBox
          label="Height off floor"
          value={z === undefined ? null : z - floor}
          unit="mm"
          help={place.height.assumed ? 'Assumed: type it when it is measured.' : undefined}
          disabled={disabled}
          onSet={(mm) =>
            typeof mm === 'number' && run('node.height', { node: id, height: { from: 'floor', of: place.storey, mm } })
          }
        />
      )}
      <ChoiceKeys<Turn>
        label="Turns with"
        choices={TURNS}
        chosen={node.turn}
        disabled={disabled}
        onChoose={(turn) => run('node.set', { node: id, change: { turn } })}
      />
    </>
  );
}
