/** What a room is used for: the word that a plan keeps, and what rooms of it are called. */
export interface RoomUse {
  readonly id: string;
  readonly label: string;
}

/** In the order in which they are asked for most. A plan may hold other words: they are kept as they are. */
export const ROOM_USES: readonly RoomUse[] = [
  { id: 'kitchen', label: 'Kitchen' },
  { id: 'bathroom', label: 'Bathroom' },
  { id: 'bedroom', label: 'Bedroom' },
  { id: 'hall', label: 'Hall' },
  { id: 'landing', label: 'Landing' },
  { id: 'living', label: 'Living room' },
  { id: 'dining', label: 'Dining room' },
  { id: 'utility', label: 'Utility' },
  { id: 'cloakroom', label: 'Cloakroom' },
  { id: 'cupboard', label: 'Cupboard' },
  { id: 'airing', label: 'Airing cupboard' },
  { id: 'understairs', label: 'Cupboard under the stairs' },
  { id: 'shower', label: 'Shower room' },
  { id: 'loft', label: 'Loft' },
  { id: 'garage', label: 'Garage' },
  { id: 'office', label: 'Office' },
  { id: 'other', label: 'Room' },
];

/** What a new room of a use is called: with a number where another has the name. Empty where no use was told. */
export function roomName(use: string, taken: ReadonlySet<string>): string {
  const label = ROOM_USES.find((u) => u.id === use)?.label ?? use;
  if (label === '' || !taken.has(label)) return label;
  for (let n = 2; ; n++) if (!taken.has(`${label} ${n}`)) return `${label} ${n}`;
}
