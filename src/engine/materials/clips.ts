import { services } from '../../catalogue/services.ts';
import type { Edge, Network } from '../../network/network.ts';
import { figure } from '../../reference/figure.ts';
import { edition } from '../../reference/tables.ts';
import type { Piece } from '../../report/piece.ts';
import { saySize, sayTubeKind } from '../say-names.ts';

/** Rows of the support tables are said by kind and spoken size. */
function rowKey(edge: Edge): string {
  const label = saySize(edge.tube);
  const kind = edge.tube.kind === 'plastic-overflow' ? 'waste' : edge.tube.kind;
  return `${kind} ${label}`;
}

/** Greatest distance between supports of an edge in m, by how it lies; undefined where no table says. */
export function supportEvery(edge: Edge, system: string, editions: Readonly<Record<string, string>>) {
  const upright = edge.intoA !== null && Math.abs(edge.intoA.z) > Math.SQRT1_2;
  const column = upright ? 'vertical' : 'horizontal';
  const table =
    system === 'gas' ? 'gas-supports' : system === 'flue' ? 'flue-supports' : edition('pipe-supports', editions);
  // The pinned table first; kinds it does not list are read in the pocket reference.
  const found = [table, 'pipe-supports-pocket'].flatMap((t) =>
    t === undefined ? [] : figure(t, rowKey(edge), column),
  );
  return found.find((f) => f.is === 'known');
}

/** Clips of new legs: one at each spacing and one near the far end, at least one a leg. No table: none, and the list says so. */
export function clipPieces(network: Network): Piece[] {
  return [...network.edges.values()].flatMap((edge): Piece[] => {
    if (edge.kind !== 'leg' || edge.state !== 'new' || edge.lengthMm.value === null) return [];
    const label = saySize(edge.tube);
    const every = supportEvery(edge, services.get(edge.service)?.system ?? edge.service, network.plan.basis.editions);
    const flue = edge.circuit === 'flue';
    const shared = {
      kind: flue ? 'flue-bracket' : 'clip',
      family: 'support',
      name: flue ? 'flue bracket' : 'clip',
      size: label,
      joining: '',
      ends: [],
      unit: 'each',
      run: edge.run,
      at: { leg: edge.id },
      note: '',
    } as const;
    const spacing = every ? (every.value ?? every.lo) : null;
    if (spacing === null) {
      return [
        {
          ...shared,
          amount: 0,
          unverified: false,
          unresolved:
            edge.tube.size === null
              ? 'nobody has read the size of the pipe'
              : `no table here gives the spacing for ${sayTubeKind(edge.tube)} ${label}`,
        },
      ];
    }
    const metres = edge.lengthMm.value / 1000;
    // A leg shorter than its own fittings needs no clip of its own: the pipes each side of it hold it.
    const amount = metres * 2 < spacing ? 0 : Math.max(1, Math.ceil(metres / spacing));
    return amount === 0 ? [] : [{ ...shared, amount, unverified: every?.sureness === 'memory', unresolved: null }];
  });
}
