import { resolveHeight } from '../geometry/heights.ts';
import type { Network } from '../network/network.ts';
import type { Plan } from '../plan/plan.ts';
import type { HeightRef, Xy } from '../plan/records/parts.ts';
import type { DisplayList, Item } from './display-list.ts';
import { boxAround, pointsOf } from './fragments/fragment.ts';
import { type Medium, TEXT_MM } from './look/tokens.ts';
import { type RibbonBar, ribbonBars } from './ribbon/ribbon-bars.ts';
import { fitLabels, fitsLeft, gatherRuns, type LevelLabel, labelItems } from './ribbon/ribbon-labels.ts';
import { unroll } from './ribbon/ribbon-run.ts';
import { bar, sectionItems, voidsAtPlace } from './ribbon/ribbon-section.ts';
import { levelMark } from './text/say-level.ts';

/** A height that can be taken up: a line of the ribbon to tap. */
export interface RibbonLevel {
  readonly z: number;
  readonly label: string;
  readonly height: HeightRef;
}

export interface RibbonOptions {
  readonly storey: string;
  /** Where the work is in plan: the voids over it are cut. Null: none are. */
  readonly at: Xy | null;
  /** The chosen run, unrolled. */
  readonly run: string | null;
  /** The chosen leg of it, where one is. */
  readonly leg?: string | null;
  /** Width of the section in mm of the plane: it starts at x = 0, figures stand left of it. */
  readonly widthMm: number;
  readonly mmPerPaperMm: number;
  /** Room for figures left of the section, in mm of paper: what is longer says less. Left out: as much as they want. */
  readonly labelRoomMm?: number;
  /** It is pulled out: the chosen run is drawn elsewhere, at its length. */
  readonly long?: boolean;
  /** Left out: a screen. */
  readonly medium?: Medium;
  /** Usual heights in this storey, from the table of assumed heights: skirting, worktop… */
  readonly levels: readonly { readonly label: string; readonly height: HeightRef }[];
}

export interface Ribbon {
  readonly list: DisplayList;
  /** Lowest first. */
  readonly levels: readonly RibbonLevel[];
  /** Runs with a level piece on this floor, lowest first; the chosen one among them. */
  readonly bars: readonly RibbonBar[];
}

const EMPTY_BOX = { minX: 0, minY: 0, maxX: 0, maxY: 0 };

/** Where a bar lies across the ribbon: one that passes here from side to side, one that runs elsewhere is a stub. */
const ELSEWHERE = 0.6;

/** In the long section the other runs keep to its edge: the chosen one has the rest. */
const AT_EDGE = 0.07;

function barItem(b: RibbonBar, widthMm: number, atEdge: boolean): Item {
  if (atEdge) return bar(b.z, 0, widthMm * AT_EDGE, b.style);
  return bar(b.z, b.here ? 0 : widthMm * ELSEWHERE, widthMm, b.style);
}

/** Heights to take up: floor and ceiling, voids at the place, the usual ones, connections of the chosen run. */
function levelsOf(
  plan: Plan,
  network: Network,
  options: RibbonOptions,
  voids: ReturnType<typeof voidsAtPlace>,
): RibbonLevel[] {
  const { storey } = options;
  const refs: { label: string; height: HeightRef }[] = [
    { label: 'floor', height: { from: 'floor', of: storey, mm: 0 } },
    { label: 'ceiling', height: { from: 'ceiling', of: storey, mm: 0 } },
    ...voids.flatMap(({ record, bottom, top }): { label: string; height: HeightRef }[] => {
      const { kind } = record;
      const name = record.name || (kind === 'ceiling' || kind === 'floor' ? `${kind} void` : kind);
      return [
        { label: `under ${name}`, height: { from: 'voidBottom', of: record.id, mm: 0 } },
        // The same middle that "to void" means where a run is told in words.
        { label: `in ${name}`, height: { from: 'voidBottom', of: record.id, mm: (top - bottom) / 2 } },
        { label: `top of ${name}`, height: { from: 'voidTop', of: record.id, mm: 0 } },
      ];
    }),
    ...options.levels,
  ];
  for (const edge of options.run === null ? [] : (network.edgesOfRun.get(options.run) ?? [])) {
    const known = network.edges.get(edge);
    for (const end of known ? [known.a, known.b] : []) {
      const vertex = network.vertices.get(end);
      if (vertex?.point == null || vertex.connection === null) continue;
      const point = plan.points[vertex.point];
      const connection = point?.connections.find((c) => c.id === vertex.connection);
      if (!point || !connection) continue;
      const height: HeightRef = { from: 'connection', of: point.id, connection: connection.id, mm: 0 };
      refs.push({
        label: `${point.name}, ${connection.label.charAt(0).toLowerCase()}${connection.label.slice(1)}`,
        height,
      });
    }
  }
  const seen = new Set<string>();
  return refs
    .flatMap(({ label, height }): RibbonLevel[] => {
      const z = resolveHeight(plan, height)?.z;
      return z === undefined ? [] : [{ z, label, height }];
    })
    .filter(({ z, label }) => {
      const key = `${Math.round(z)} ${label}`;
      return !seen.has(key) && seen.add(key) !== undefined;
    })
    .sort((a, b) => a.z - b.z);
}

/**
 * The heights of a storey as a true vertical section: x in mm of the plane from 0 to `widthMm`, y the height above the
 * datum. The chosen run is unrolled across it, other runs are short bars with tag and height, those that only run elsewhere
 * on the floor stubs. Empty where the storey is gone. Levels are what can be tapped, whether or not their figure found room.
 */
export function ribbon(plan: Plan, network: Network, options: RibbonOptions): Ribbon {
  const view = { kind: 'plan', storey: options.storey } as const;
  const storey = plan.storeys[options.storey];
  if (!storey) return { list: { view, box: EMPTY_BOX, items: [] }, levels: [], bars: [] };
  const { widthMm: width, mmPerPaperMm: k } = options;
  const ceiling = storey.floorMm + storey.ceilingMm;
  const above = Object.values(plan.storeys)
    .map((s) => s.floorMm)
    .filter((z) => z > ceiling)
    .sort((a, b) => a - b)[0];
  const over = above ?? ceiling + storey.buildUpMm;
  const voids = voidsAtPlace(plan, options.storey, options.at, network.alive);
  const section = sectionItems(plan, options.storey, voids, 0, width, over);
  const bars = ribbonBars(plan, network, options);
  const others = bars.filter((b) => !b.chosen);
  const chosen =
    options.run === null || options.long ? undefined : unroll(plan, network, options.run, width * 0.12, width * 0.88);
  const figure = (z: number): string => levelMark(plan, z, options.storey);
  const house: LevelLabel[] = [storey.floorMm, ceiling, over, ...voids.flatMap((v) => [v.bottom, v.top])].map((z) => ({
    z,
    text: figure(z),
    rank: 3,
    strong: false,
  }));
  const text = TEXT_MM[options.medium ?? 'screen'].dimension;
  const line = text * 1.15 * k;
  const labels = [
    ...house,
    ...(chosen?.levels ?? []).map((z): LevelLabel => ({ z, text: figure(z), rank: 2, strong: true })),
    ...gatherRuns(
      others.map((o) => ({ ...o, level: figure(o.z), unsure: o.assumed !== null })),
      line,
      fitsLeft(options.labelRoomMm ?? Number.POSITIVE_INFINITY, text),
    ),
  ];
  const items = [
    { group: 'ground' as const, id: 'section', items: section },
    ...others.map((b) => ({
      group: 'run' as const,
      id: b.run,
      items: [barItem(b, width, options.long === true && options.run !== null)],
    })),
    { group: 'run' as const, id: options.run ?? 'none', items: chosen?.items ?? [] },
    { group: 'label' as const, id: 'levels', items: labelItems(fitLabels(labels, text, k), 0) },
  ];
  const box = boxAround(items.flatMap((g) => g.items.flatMap((item) => pointsOf(item))));
  return { list: { view, box, items }, levels: levelsOf(plan, network, options, voids), bars };
}
