import { useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Vec } from '../../drawing/display-list.ts';
import type { FlueFaceDrawing } from '../../drawing/flue-face/flue-face-drawing.ts';
import { flueFaceDrawing, isDrawnFor } from '../../drawing/flue-face/flue-face-drawing.ts';
import { worstFirst } from '../../drawing/flue-face/worst-first.ts';
import { boxAround } from '../../drawing/fragments/fragment.ts';
import type { Camera } from '../../editor/editor-api.ts';
import type { FlueFace } from '../../report/flue-face.ts';
import { usePhone } from '../app/use-phone.ts';
import { useEditorState, useReport } from '../app/use-session.ts';
import { useSize } from '../app/use-size.ts';
import { RadioKeys } from '../look/radio-keys.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { DistanceList } from './distance-list.tsx';
import { broughtInto, cameraOn, zoomed } from './face-camera.ts';
import { photosUnder, useLaidPhotos } from './face-photos.ts';
import { FaceStage } from './face-stage.tsx';
import { NudgeTerminal } from './nudge-terminal.tsx';
import { sayDistance } from './say-distance.ts';
import { StageKeys } from './stage-keys.tsx';

/** Free round a drawing that is fitted, px: room for names and figures at its edge. */
const MARGIN_PX = { tablet: [84, 48], phone: [36, 30] } as const;
const ZOOM = 1.4;
/** A wall of which a px is more than this cannot be read whole: the terminal comes first. */
const READABLE_MM_PER_PX = 22;

interface Props {
  readonly face: FlueFace;
  readonly faces: readonly FlueFace[];
  readonly onTerminal: (id: string) => void;
}

/** What is looked at first: the whole face where it can be read, else the terminal and what it is measured to. */
export function firstCamera(drawing: FlueFaceDrawing, width: number, height: number, margin: Vec): Camera {
  const whole = cameraOn(drawing.box, width, height, margin);
  return whole.mmPerPx <= READABLE_MM_PER_PX ? whole : cameraOn(drawing.near, width, height, margin);
}

export function FaceBody({ face, faces, onTerminal }: Props) {
  const phone = usePhone();
  const plan = useEditorState((s) => s.plan);
  const chosenCase = useEditorState((s) => s.chosen);
  const waiting = useReport((s) => s.waiting);
  const { disabled, run } = useChange();
  const box = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(box);
  const [camera, setCamera] = useState<Camera | null>(null);
  const [chosen, setChosen] = useState<string | null>(null);
  const [step, setStep] = useState<number>(50);
  const [photoOn, setPhotoOn] = useState(true);
  const [fade, setFade] = useState<number | null>(null);

  const plain = useMemo(() => flueFaceDrawing(plan, chosenCase, face), [plan, chosenCase, face]);
  const photos = useMemo(() => (plain ? photosUnder(plan, plain.elevation) : []), [plan, plain]);
  const laid = useLaidPhotos(photos);
  const clear = photoOn && laid.length > 0;
  const drawing = useMemo(
    () => (clear ? flueFaceDrawing(plan, chosenCase, face, true) : plain),
    [clear, plain, plan, chosenCase, face],
  );
  const distances = useMemo(() => worstFirst(face), [face]);
  const margin = phone ? MARGIN_PX.phone : MARGIN_PX.tablet;

  useLayoutEffect(() => {
    if (plain && camera === null && width > 0 && height > 0) setCamera(firstCamera(plain, width, height, margin));
  }, [plain, camera, width, height, margin]);

  const lit = distances.find((d) => d.key === chosen);
  const choose = (key: string | null): void => {
    setChosen(key);
    const drawn = drawing?.distances.find((d) => isDrawnFor(d, key));
    if (drawn) setCamera((c) => c && broughtInto(c, boxAround([drawn.a, drawn.b]), width, height));
  };
  const change = (next: (c: Camera) => Camera): void => setCamera((c) => c && next(c));
  const nudge = (across: number, up: number): void => {
    if (disabled || !plain) return;
    const { right } = plain.elevation;
    const by = { x: right.x * across * step, y: right.y * across * step, z: up * step };
    run('point.move', { point: face.terminal, by });
  };
  const fitTo = (b: FlueFaceDrawing['box'] | undefined): void => {
    if (b) setCamera(cameraOn(b, width, height, margin));
  };
  const name = plan.points[face.terminal]?.name ?? 'Flue terminal';

  return (
    <div className="flue-body">
      <div className="flue-left">
        <div className="flue-pane" ref={box}>
          {drawing && camera && width > 0 ? (
            <FaceStage
              drawing={drawing}
              photos={clear ? laid : []}
              fade={fade}
              camera={camera}
              width={width}
              height={height}
              chosen={chosen}
              label={`Drawing: outside of the wall of ${name}. Arrows move it, plus and minus zoom, shift and arrows nudge the terminal`}
              onCamera={change}
              onChoose={choose}
              onFit={() => fitTo(drawing.box)}
              onNudge={nudge}
            />
          ) : (
            !drawing && <p className="flue-none">There is no wall to be looked at: the distances stand in the list.</p>
          )}
        </div>
        <StageKeys
          onWhole={() => fitTo(drawing?.box)}
          onNear={() => fitTo(drawing?.near)}
          onZoom={(nearer) => change((c) => zoomed(c, nearer ? ZOOM : 1 / ZOOM))}
          photo={laid.length === 0 ? null : { on: photoOn, fade: fade ?? laid[0]?.record.place?.opacity ?? 1 }}
          onPhoto={setPhotoOn}
          onFade={setFade}
        />
      </div>
      <section className="flue-side" aria-label="Distances of the terminal">
        <div className="flue-scroll">
          {faces.length > 1 ? (
            <RadioKeys
              legend="Terminal"
              className="choices flue-terminals"
              choices={faces.map((f) => ({ value: f.terminal, label: plan.points[f.terminal]?.name ?? f.terminal }))}
              chosen={face.terminal}
              onChoose={onTerminal}
            />
          ) : (
            <h3 className="flue-name">{name}</h3>
          )}
          {distances.length === 0 && (
            <p className="flue-none">
              Nothing near it is drawn. Openings, pipes, eaves, the ground and the boundary are measured once they are.
            </p>
          )}
          <DistanceList plan={plan} distances={distances} chosen={chosen} paler={waiting} onChoose={choose} />
          {face.missing.length > 0 && (
            <div className="flue-missing">
              <h3>Not told</h3>
              <ul>
                {face.missing.map((m) => (
                  <li key={m}>{m}</li>
                ))}
              </ul>
            </div>
          )}
          <p className="flue-caution">
            Dashed lines in a window: it opens. A question mark: nobody looked. Limits are compared, not approved: the
            registered engineer decides, and the sheet of the appliance goes first.
          </p>
          <p className="out-of-sight" role="status">
            {lit ? sayDistance(lit.distance) : ''}
          </p>
        </div>
        <NudgeTerminal step={step} disabled={disabled} onStep={setStep} onNudge={nudge} />
      </section>
    </div>
  );
}
