import type { Selected } from '../../editor/editor-api.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Leg } from '../../plan/records/pipework.ts';
import { useEditorState } from '../app/use-session.ts';
import { KickTurn } from '../look/kick.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { TubeKeys } from '../panels/inspect/tube-keys.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { serviceLabel } from '../panels/kind-labels.ts';

/** Legs that are chosen, by themselves or in their run, by service. */
function legsByService(plan: Plan, things: readonly Selected[]): ReadonlyMap<string, readonly Leg[]> {
  const ids = new Set(things.filter((t) => t.map === 'runs' || t.map === 'legs').map((t) => t.id));
  const found = new Map<string, Leg[]>();
  for (const leg of Object.values(plan.legs)) {
    if (!ids.has(leg.id) && !ids.has(leg.run)) continue;
    const service = plan.runs[leg.run]?.service ?? '';
    found.set(service, [...(found.get(service) ?? []), leg]);
  }
  return found;
}

const sentence = (s: string): string => s.charAt(0).toUpperCase() + s.slice(1);

function common<T>(values: readonly T[]): T | null {
  const [first] = values;
  return first !== undefined && values.every((v) => v === first) ? first : null;
}

/** Size and lagging of all chosen legs, each service by itself: one step for all of one. */
export function PipesPart({ things }: { readonly things: readonly Selected[] }) {
  const plan = useEditorState((s) => s.plan);
  const { disabled, run } = useChange();
  const groups = [...legsByService(plan, things)];
  if (groups.length === 0) return null;
  const count = groups.reduce((n, [, legs]) => n + legs.length, 0);
  return (
    <details className="field-group">
      <summary>
        <span className="group-name">Size and lagging</span>
        <span className="group-told">{count === 1 ? '1 leg' : `${count} legs`}</span>
        <KickTurn />
      </summary>
      <div className="group-fields">
        {groups.map(([service, legs]) => {
          const [first] = legs;
          if (!first) return null;
          const size = common(legs.map((l) => `${l.tube.kind} ${l.tube.size ?? ''}`)) === null ? null : first.tube.size;
          const lagging = common(legs.map((l) => l.insulation?.thicknessMm ?? 0));
          return (
            <div key={service} className="pipes-of">
              <TubeKeys
                service={service}
                tube={{ ...first.tube, size }}
                disabled={disabled}
                surveyed={legs.every((l) => l.option === null)}
                legend={`${sentence(serviceLabel(service))}, ${legs.length === 1 ? '1 leg' : `all ${legs.length} legs`}`}
                onChoose={(tube) => run('legs.size', { legs: legs.map((l) => ({ leg: l.id, tube })) })}
              />
              <NumberBox
                label="Lagging"
                value={lagging === 0 ? null : lagging}
                unit="mm"
                min={0}
                max={100}
                empty
                disabled={disabled}
                onSet={(mm) => {
                  const thicknessMm = typeof mm === 'number' ? mm : 0;
                  const insulation = thicknessMm > 0 ? { kind: first.insulation?.kind ?? 'foam', thicknessMm } : null;
                  return run('legs.insulate', { legs: legs.map((l) => l.id), insulation });
                }}
              />
            </div>
          );
        })}
      </div>
    </details>
  );
}
