import { useCallback, useMemo } from 'react';
import type { Item } from '../../drawing/display-list.ts';
import { longSection } from '../../drawing/ribbon/long-section.ts';
import type { Plan } from '../../plan/plan.ts';
import { useEditorState } from '../app/use-session.ts';
import { Painted } from '../look/painted.tsx';
import Bars from './bars.tsx';
import { barGrips, partGrips } from './grips.ts';

type BarsProps = Parameters<typeof Bars>[0];

interface Props extends Omit<BarsProps, 'grips' | 'acrossMm' | 'chosenItems'> {
  readonly run: string;
  readonly held: string | null;
  /** px that the tab of the work height takes up. */
  readonly off: readonly [number, number] | null;
  /** The chosen run is drawn in its moved place for now. */
  readonly lifted: boolean;
  readonly across: { readonly left: number; readonly px: number };
}

/** Where the run starts and ends across the section, parts of its width: the other runs keep to its edge. */
const FROM = 0.12;
const UP_TO = 0.95;
/** The chain of distances over the lower edge, px. */
const CHAIN_PX = 14;
/** The heading over the section, px. */
const HEAD_PX = 52;
const AT_EDGE = 0.07;

/** The chosen run at its whole length, with what it passes; its level parts are taken hold of where they lie. */
export default function LongSection(props: Props) {
  const { run, held, off, across, scale, network, heights, storey, frame, width, height, bars } = props;
  const plan = useEditorState((s) => s.plan);
  const widthMm = across.px / scale.perMm;
  const make = useCallback(
    (of: Plan) =>
      longSection(of, network, run, {
        storey,
        left: widthMm * FROM,
        right: widthMm * UP_TO,
        within: {
          minX: widthMm * AT_EDGE,
          maxX: widthMm,
          minY: scale.z(height - 2),
          maxY: scale.z(HEAD_PX),
        },
        mmPerPaperMm: frame.perPaperMm / frame.perMm,
        pxMm: 1 / scale.perMm,
        chainZ: scale.z(height - CHAIN_PX),
        floor: heights.floor,
        ceiling: heights.ceiling,
      }),
    [network, run, storey, widthMm, scale, height, frame, heights],
  );
  const drawn = useMemo(() => make(plan), [make, plan]);
  const chosenItems = useCallback((of: Plan): readonly Item[] => make(of).items, [make]);
  const others = useMemo(() => bars.filter((b) => !b.chosen), [bars]);
  const grips = useMemo(
    () => [
      ...barGrips(others, scale, held, 0, across.left, off),
      ...partGrips(plan, network, drawn.parts, storey, scale, across.left),
    ],
    [others, scale, held, off, across.left, plan, network, drawn.parts, storey],
  );
  const parts = useMemo(
    () => [{ items: drawn.ground }, { items: props.lifted ? [] : drawn.items }],
    [drawn, props.lifted],
  );
  const name = bars.find((b) => b.chosen)?.name ?? 'the chosen run';
  return (
    <>
      <Painted parts={parts} frame={frame} width={width} height={height} />
      <ol className="out-of-sight" aria-label={`Along the ${name}`}>
        {drawn.told.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
      <Bars {...props} grips={grips} acrossMm={widthMm * AT_EDGE} chosenItems={chosenItems} />
    </>
  );
}
