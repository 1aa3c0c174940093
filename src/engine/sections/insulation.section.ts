import { constant, figure } from '../../reference/figure.ts';
import { table } from '../../reference/tables.ts';
import { tube } from '../../reference/tubes.ts';
import { exact, roundQuantity, sayFigures } from '../../report/quantity.ts';
import type { Row } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { citesOf, quantityOf } from '../gas/said.ts';
import { bareLimit } from '../water/bare-length.ts';
import { type NewPipe, newPipes } from '../water-system/bare-pipe.ts';
import { type BareWay, bareWays } from '../water-system/bare-ways.ts';

const WALLS = 'hot-lagging';
const NEAR_M = constant('hot-lagging-limits', 'near vessel', 'm');
const LABEL: Readonly<Record<NewPipe['of'], string>> = { hot: 'Hot', heating: 'Heating', cold: 'Cold' };
const ORDER: readonly NewPipe['of'][] = ['hot', 'heating', 'cold'];

interface Group {
  readonly of: NewPipe['of'];
  readonly size: string;
  readonly pipes: NewPipe[];
}

/** New pipe by what runs in it and size, hot first, small sizes first. */
function groupsOf(pipes: readonly NewPipe[]): Group[] {
  const groups = new Map<string, Group>();
  for (const p of pipes) {
    const size = tube(p.edge.tube.kind, p.edge.tube.size)?.label ?? 'size nobody read';
    const key = `${ORDER.indexOf(p.of)} ${size.padStart(6)}`;
    const now = groups.get(key) ?? { of: p.of, size, pipes: [] };
    now.pipes.push(p);
    groups.set(key, now);
  }
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, g]) => g);
}

const total = (pipes: readonly NewPipe[], of: (p: NewPipe) => number): number => pipes.reduce((n, p) => n + of(p), 0);

function groupRow({ of, size, pipes }: Group): Row {
  const bare = pipes.filter((p) => p.bare);
  const part = (metres: number, where: string): string[] => (metres < 0.05 ? [] : [`${metres.toFixed(1)} m ${where}`]);
  const say = [
    `of ${total(pipes, (p) => p.metres).toFixed(1)} m new`,
    ...part(
      total(bare, (p) => p.inVoidM),
      'of it in voids',
    ),
    ...part(
      total(bare, (p) => p.coldM),
      'outside or unheated',
    ),
    ...part(
      total(bare, (p) => p.maybeColdM),
      'under the lowest floor, ventilated or not',
    ),
  ].join(', ');
  return {
    kind: 'fact',
    label: `${LABEL[of]} ${size}, bare`,
    figure: roundQuantity(
      exact(
        total(bare, (p) => p.metres),
        'm',
        1,
      ),
    ),
    say,
    ids: [...new Set(pipes.map((p) => p.edge.run))].sort(),
  };
}

function limitRow({ largest, metres, way }: BareWay): Row[] {
  if (!largest) return [];
  const { byDiameter, byBore } = bareLimit(largest);
  if (byDiameter.is !== 'known') return [];
  const other =
    byBore?.is === 'known' && byBore.lo !== byDiameter.lo ? `; read by bore, ${byBore.lo} m (unverified)` : '';
  return [
    {
      kind: 'verdict',
      label: `Bare to the ${way.name.toLowerCase()}`,
      state: metres > byDiameter.lo ? 'check' : byBore?.is === 'known' && metres > byBore.lo ? 'note' : 'pass',
      say: `${metres.toFixed(1)} m; at most ${byDiameter.lo} m in ${largest.label}${other}`,
      ids: [way.point.id],
    },
  ];
}

/** Wall that just meets the loss allowed, for a size and each conductivity of the table. */
function wallRow(size: string): Row[] {
  const t = table(WALLS);
  if (!t.rows.some((r) => r.key === size)) return [];
  const walls = t.columns
    .filter((c) => c.key !== 'loss')
    .flatMap((c) => {
      const f = figure(t, size, c.key);
      return f.is === 'known' ? [{ of: c.key, say: `${sayFigures(quantityOf(f))} mm at ${c.key}` }] : [];
    });
  const loss = figure(t, size, 'loss');
  if (walls.length === 0 || loss.is !== 'known') return [];
  return [
    {
      kind: 'sum',
      label: `Wall for ${size}`,
      how: `${walls.map((w) => w.say).join(', ')} W/(m K); loss allowed, unverified`,
      result: roundQuantity(quantityOf(loss)),
      cites: citesOf(loss.cite),
      ids: [],
    },
  ];
}

export default defineSection({
  id: 'insulation',
  order: 33,
  write(given) {
    const pipes = newPipes(given);
    const warm = pipes.filter((p) => p.of !== 'cold');
    const cold = pipes.filter((p) => p.of === 'cold' && p.bare && p.coldM + p.maybeColdM > 0);
    if (warm.length === 0 && cold.length === 0) return null;
    const groups = groupsOf([...warm, ...cold]);
    const bareHot = total(
      pipes.filter((p) => p.of === 'hot' && p.bare),
      (p) => p.metres,
    );
    const out = total(
      pipes.filter((p) => p.bare),
      (p) => p.coldM,
    );
    const sizes = [...new Set(groups.filter((g) => g.of !== 'cold').map((g) => g.size))].sort();
    return {
      title: 'Insulation of pipes',
      answer: bareHot < 0.05 ? 'no bare hot' : `${bareHot.toFixed(1)} m hot bare`,
      state: out > 0 ? 'check' : bareHot > 0 ? 'note' : 'pass',
      rows: [
        ...groups.map(groupRow),
        ...bareWays(given).flatMap(limitRow),
        ...sizes.flatMap(wallRow),
        {
          kind: 'note',
          say: 'New hot water pipe is insulated, primary and secondary; heating pipe where it is in voids or outside the heated rooms; accessible pipes where a boiler or cylinder is changed.',
          unverified: false,
          cites: [{ source: 'pipe-insulation-articles', clause: 'new hot water and heating pipes' }],
        },
        {
          kind: 'note',
          say: `Pipes within ${NEAR_M} m of a cylinder are insulated whatever their length.`,
          unverified: false,
          cites: [{ source: 'water-fittings-notes', clause: 'pipes at the cylinder', table: 'hot-lagging-limits' }],
        },
      ],
    };
  },
});
