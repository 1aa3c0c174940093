/** Rules that cannot lack what they need, and why: they have no example of "can't tell". */
export const ALWAYS_KNOWN: Readonly<Record<string, string>> = {
  'building/across-opening': 'sill and head are always told; a pipe of unknown height is told of by network/no-height',
  'building/through-wall': 'a wall always has a place; a pipe of unknown height is told of by network/no-height',
  'flue/indoors': 'it ends in a closed space or it does not; what nobody told of the room asks for a look',
  'flue/plume': 'what it faces is drawn or it is not',
  'gas/left-open': 'a surveyed pipe is kept unless its option strips or caps it',
  'gas/shut-off': 'a valve is drawn or it is not',
  'network/left-open': 'a surveyed pipe is kept unless its option strips or caps it',
  'network/open-end': 'an end meets something or it does not, wherever it lies',
  'heating/no-return': 'a pipe is joined at a tail or it is not',
  'heating/filter': 'a filter is drawn or it is not, on a return that is drawn',
  'heating/high-point': 'a pipe of unknown height is told of by network/no-height',
  'heating/low-point': 'a pipe of unknown height is told of by network/no-height',
  'network/ring': 'what meets what is always drawn',
  'network/tail-outside': 'a case has its width and a tail its place from the day it is made',
  'network/tail-unused': 'a run is joined at a tail or it is not',
  'structure/under-wall': 'a wall always has a place; a pipe of unknown height is told of by network/no-height',
  'network/two-services': 'every run has its service',
  'network/two-sources': 'what meets what is always drawn',
  'network/unresolved': 'a turn without a place is itself unresolved',
  'network/wrong-connection': 'every connection has its service',
  'discharge/sight': 'a tundish nobody asked about is taken to be in sight where it stands in the same room',
  'relief/valve': 'a valve is drawn or it is not',
  'water/hot-left': 'a tap has its two tails from the day it is made',
  'preheat/lukewarm': 'a vessel nobody told of is listed in its chapter with what is usual',
  'supply/balanced': 'a cold that is not drawn back to where it comes from is told of once, in its chapter',
  'supply/cold-after-heater': 'a cold that is not drawn back to where it comes from is told of once, in its chapter',
  'supply/filling-loop': 'a loop nobody looked at is taken to be one as it is bought, with its double check valve',
  'supply/locked-in': 'a check valve is drawn or it is not',
};

/** Sentences of a rule that no example of its own shows, and the test that does. */
export const SAID_ELSEWHERE: Readonly<Record<string, Readonly<Record<string, string>>>> = {};
