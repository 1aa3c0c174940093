import { constant } from '../../reference/figure.ts';

export const KPA_A_BAR = 100;
/** kPa of a metre of height. */
export const HEIGHT_KPA = constant('water-mains', 'height', 'value');
