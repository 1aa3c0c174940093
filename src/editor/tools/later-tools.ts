/** What the bench and the keys need to know of a tool. */
export interface ToolWords {
  readonly id: string;
  readonly label: string;
  readonly key: string;
  readonly order: number;
}

/** Tools whose work arrives after the first line can be drawn. A test holds these words to the tools themselves. */
export const LATER_TOOLS: readonly ToolWords[] = [
  { id: 'stretch', label: 'Unseen', key: 'u', order: 35 },
  { id: 'opening', label: 'Opening', key: 'o', order: 50 },
  { id: 'item', label: 'Item', key: 'i', order: 70 },
  { id: 'tape', label: 'Tape', key: 'm', order: 80 },
  { id: 'bank', label: 'Bank', key: 'a', order: 25 },
  { id: 'step', label: 'Step', key: 'k', order: 37 },
  { id: 'reroute', label: 'Re-route', key: 'j', order: 38 },
  { id: 'room', label: 'Room', key: 'n', order: 55 },
  { id: 'roof', label: 'Roof', key: 'f', order: 62 },
  { id: 'ground', label: 'Ground', key: 'g', order: 64 },
  { id: 'void', label: 'Void', key: 'v', order: 57 },
  { id: 'trace', label: 'Picture', key: 'y', order: 95 },
  { id: 'photo', label: 'Pin photo', key: 'h', order: 96 },
];
