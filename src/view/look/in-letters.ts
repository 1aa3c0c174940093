const USUAL_PX = 16;

/** A size in px at 100 %, as a length that grows with the text of the device. */
export const inLetters = (px: number): string => `${px / USUAL_PX}rem`;
