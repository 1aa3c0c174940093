/** One word of the trade or of this page, and what it means in one line. */
export interface TradeWord {
  readonly word: string;
  readonly says: string;
}

/** Words of the trade as this page uses them, in the order of the alphabet. */
export const TRADE_WORDS: readonly TradeWord[] = [
  { word: 'Bank', says: 'several pipes side by side that turn together' },
  { word: 'Bend, elbow', says: 'a bend is pulled in the tube itself; an elbow is a fitting' },
  { word: 'Bonding', says: 'the earth cable clamped to a gas or water pipe where it comes in' },
  { word: 'Boxing, chase', says: 'boards round a pipe; a slot cut in a wall for one' },
  { word: 'Centre to centre', says: 'measured between the middles of two pipes or fittings' },
  { word: 'Compression, end feed, press', says: 'joined by a nut and ring, by solder, or squeezed by a tool' },
  { word: 'Condensate', says: 'the acid water a boiler makes; its pipe falls all the way to a drain' },
  { word: 'Dead leg', says: 'a stretch of water pipe that is long unused' },
  { word: 'Drop, rise', says: 'pipe going down, pipe going up' },
  { word: 'Expansion vessel', says: 'takes up what heating water grows by when it is hot' },
  { word: 'Fall', says: 'how much a pipe slopes so that it empties' },
  { word: 'Filling loop', says: 'hose from the mains to the heating, taken off after filling' },
  { word: 'Flow, return', says: 'heating pipe away from the boiler, and back to it' },
  { word: 'Gas drop', says: 'pressure that is lost between the meter and an appliance' },
  { word: 'Kick', says: 'a small single set near the end of a pipe' },
  { word: 'Leg', says: 'one straight piece between two turns' },
  { word: 'Let-by', says: 'gas that passes a shut valve' },
  { word: 'Lockshield', says: 'the valve of a radiator by which it is balanced' },
  { word: 'Passover', says: 'a hump of bends over another pipe' },
  { word: 'Primaries', says: 'flow and return between the boiler and what it heats' },
  { word: 'Purge', says: 'drive the air out of a gas pipe' },
  { word: 'Reducer', says: 'a fitting that changes the size' },
  { word: 'Relief', says: "the pipe of the boiler's safety valve, to the outside" },
  { word: 'Run', says: 'a pipe from one thing to another, all its legs together' },
  { word: 'Set, offset', says: 'two bends that shift a pipe sideways and carry on' },
  { word: 'Sleeve', says: 'a pipe round a pipe where it goes through a wall' },
  { word: 'Stop end', says: 'a cap that closes a pipe' },
  { word: 'Strip out', says: 'what is taken away when the work is done' },
  { word: 'Swan neck', says: 'a double curve, over a skirting for instance' },
  { word: 'Tail', says: 'the short end of pipe at a boiler, tap or radiator that a run joins' },
  { word: 'Tee', says: 'a branch: both ends first, the branch last, as 22 x 22 x 15' },
  { word: 'Travel', says: 'the slanting piece between the two bends of a set' },
  { word: 'Tundish', says: 'an open funnel that shows water being let go' },
  { word: 'Unseen pipe', says: 'pipe that is known to be there, but not where it goes' },
  { word: 'Void', says: 'the space in a ceiling or floor, a duct or boxing, that a pipe can lie in' },
];

/** Words this page uses in a way of its own. */
export const PAGE_WORDS: readonly TradeWord[] = [
  { word: 'Before, After', says: 'the house as it was found, and as it will be; drawing goes into the one that shows' },
  { word: 'Options A, B', says: 'other ways to do the same work, each with its own pipes over the same house' },
  { word: 'Faint', says: 'what is shown pale under the drawing: another floor, before the work, another option' },
  { word: 'Point', says: 'a thing pipes begin or end at: boiler, meter, tap, radiator, drain' },
  { word: 'Item', says: 'a part on the pipe: valve, filter, drain cock, pump' },
  { word: 'Work height', says: 'how high the next corner lies; it stands in the tab on the heights at the edge' },
  { word: 'In hand', says: 'what the next tap makes: service, size, height' },
  { word: 'Dotted line below', says: 'taken for granted until it is measured or told' },
  { word: 'Hollow pipe', says: 'not seen: where it goes, or how high, is assumed' },
];
