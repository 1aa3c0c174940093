import type { Room } from '../../plan/records/building.ts';

const said = (room: Room): string => `${room.use} ${room.name}`;

/** A room by what it is used for, else by what it is called: a cupboard in a bedroom is a cupboard. */
export const isCupboard = (room: Room): boolean =>
  ['cupboard', 'airing', 'understairs'].includes(room.use) || (room.use === '' && /cupboard/i.test(room.name));
/** Told to be one that airs linen: a cupboard that is only called so may have been cleared for the boiler. */
export const isAiring = (room: Room): boolean => room.use === 'airing';
export const isBathroom = (room: Room): boolean =>
  !isCupboard(room) && /\bbath(room)?\b|\bshower\b|\ben-?suite\b|\bwet ?room\b/i.test(said(room));
export const isBedroom = (room: Room): boolean =>
  !isCupboard(room) && !isBathroom(room) && (room.use === 'bedroom' || /\bbed(room)?\b/i.test(said(room)));
export const isLoft = (room: Room): boolean =>
  room.use === 'loft' || (room.use === '' && /\b(loft|attic|roof space)\b/i.test(room.name));
/** Where people sit, eat or sleep, and look at what is on the walls. */
export const isLivedIn = (room: Room): boolean =>
  isBedroom(room) ||
  (!isCupboard(room) && !isBathroom(room) && /\b(living|lounge|dining|study|office)\b/i.test(said(room)));
