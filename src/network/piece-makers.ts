import { fittingKinds } from '../catalogue/fittings.ts';
import { JOINING_WORDS } from '../catalogue/joining-words.ts';
import { services } from '../catalogue/services.ts';
import { tubeKinds } from '../catalogue/tubes.ts';
import type { Joining, Run, Tube } from '../plan/records/pipework.ts';
import type { Piece } from '../report/piece.ts';
import { sayTube } from './tube-sizes.ts';

/** A piece and whether it is new work or stands there already. */
export interface PlacedPiece extends Piece {
  readonly state: 'new' | 'there';
}

/** What every piece of one place has in common. */
export interface Where {
  readonly run: string | null;
  readonly at: Piece['at'];
  readonly state: PlacedPiece['state'];
  readonly joining: Joining;
}

/** How pipe of a kind is joined in a run: as the run says, where that kind can be, else as is usual for the kind. */
export function joiningOf(run: Run | undefined, tubeKind: string): Joining {
  const able = tubeKinds.get(tubeKind)?.joinings ?? [];
  const said = run?.joining ?? services.get(run?.service ?? '')?.defaultJoining;
  if (said !== undefined && (able.length === 0 || able.includes(said))) return said;
  return able[0] ?? 'compression';
}

/** A way of joining both kinds can be joined in; undefined where there is none. */
export function joiningOfBoth(one: string, other: string, wanted: Joining): Joining | undefined {
  const both = (tubeKinds.get(one)?.joinings ?? []).filter((j) => tubeKinds.get(other)?.joinings.includes(j));
  return both.includes(wanted) ? wanted : both[0];
}

/** A fitting of the catalogue in these sizes. Unresolved, with the reason, where one of the sizes is not known. */
export function fittingPiece(kindId: string, tubes: readonly Tube[], where: Where, note = ''): PlacedPiece {
  const sizes = tubes.map(sayTube);
  const unresolved = tubes.some((t) => t.size === null) ? 'The size of a pipe here is not known.' : null;
  const made = piece(kindId, sizes, where, note, unresolved);
  const said = tubeKinds.get(tubes[0]?.kind ?? '')?.fittingsSaid;
  return said === undefined ? made : { ...made, name: made.name.replace(JOINING_WORDS[where.joining], said) };
}

export function piece(
  kindId: string,
  sizes: readonly string[],
  where: Where,
  note: string,
  unresolved: string | null,
): PlacedPiece {
  const kind = fittingKinds.get(kindId);
  if (!kind) throw new Error(`no kind of fitting "${kindId}"`);
  const ask = { joining: where.joining, sizes };
  return {
    kind: kindId,
    family: 'fitting',
    name: kind.label(ask),
    size: kind.size(ask),
    joining: where.joining,
    ends: unresolved === null ? kind.ends(ask) : [],
    amount: 1,
    unit: 'each',
    run: where.run,
    at: where.at,
    note,
    unverified: false,
    unresolved,
    state: where.state,
  };
}

/** Something stands here and the drawing does not decide what: said instead of guessed. */
export function undecided(why: string, where: Where, size = ''): PlacedPiece {
  return {
    kind: 'undecided',
    family: 'fitting',
    name: 'fitting not decided',
    size,
    joining: where.joining,
    ends: [],
    amount: 1,
    unit: 'each',
    run: where.run,
    at: where.at,
    note: '',
    unverified: false,
    unresolved: why,
    state: where.state,
  };
}
