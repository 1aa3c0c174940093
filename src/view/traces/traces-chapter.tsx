import { useState } from 'react';
import type { View } from '../../drawing/display-list.ts';
import type { Plan } from '../../plan/plan.ts';
import type { BlobRef } from '../../plan/records/statements.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { putPicture } from './put-picture.ts';
import { TraceForm } from './trace-form.tsx';
import { traceKey } from './trace-shapes.tsx';
import '../panels/inspect/inspect.css';
import './traces.css';

/** "under Ground floor", "under the brick wall, left side". */
export function sayUnder(plan: Plan, on: string | null): string {
  if (on === null) return 'under nothing';
  const storey = plan.storeys[on];
  if (storey) return `under ${storey.name}`;
  const [wall = '', side = ''] = on.split(':');
  const body = plan.walls[wall];
  return body ? `under the face of the ${body.construction || 'wall'}, ${side} side` : 'its wall is gone';
}

/** Plans and photos that are drawn over: put under a floor or a wall face, scaled, squared, faded, locked. */
export function TracesChapter() {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const active = useEditorState((s) =>
    s.panes.active === 'face' && s.panes.face ? s.panes.face.view : s.panes.plan.view,
  );
  const chosen = useEditorState((s) => s.inHand.trace?.blobRef ?? null);
  const { disabled } = useChange();
  const [wrong, setWrong] = useState<string | null>(null);
  const traces = Object.values(plan.blobRefs).filter((b) => b.kind === 'trace');
  const put = async (view: View): Promise<void> => setWrong(await putPicture(editor, view));
  const take = (record: BlobRef): void => {
    editor.setInHand({ trace: { blobRef: record.id, doing: 'move', taps: [] } });
    editor.setTool('trace');
  };
  return (
    <div className="inspect">
      <p className="field-help">
        An agent's plan, a scan or a photo to draw over. It stays on this device and travels in the job's file.
      </p>
      <div className="key-row">
        <button type="button" className="key" aria-disabled={disabled} onClick={() => !disabled && void put(active)}>
          <Icon name="plus" size={22} />
          {active.kind === 'plan' ? 'Put one under this floor' : 'Put one under this wall face'}
        </button>
      </div>
      {wrong !== null && (
        <p className="field-wrong" role="alert">
          {wrong}
        </p>
      )}
      {traces.map((record) => (
        <section key={record.id} className="trace" data-chosen={record.id === chosen}>
          <button type="button" className="trace-name" aria-pressed={record.id === chosen} onClick={() => take(record)}>
            <span>{record.name === '' ? 'picture' : record.name}</span>
            <span className="trace-under">{sayUnder(plan, record.on)}</span>
          </button>
          {record.id === chosen && (
            <TraceForm record={record} disabled={disabled} here={record.on === traceKey(active)} />
          )}
        </section>
      ))}
    </div>
  );
}
