import tokens from '../../../shared/look/tokens.json';

/** The look's values: pens and drawing text in paper mm, everything else in CSS px. */
export const look = tokens;

export type ThemeName = 'day' | 'night';
export type FindingLook = keyof (typeof tokens)['themes']['day']['finding'];
export type ServiceLook = keyof (typeof tokens)['themes']['day']['service'];

export function isServiceLook(name: string): name is ServiceLook {
  return name in tokens.service;
}
