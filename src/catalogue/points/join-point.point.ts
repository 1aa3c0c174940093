import { definePoint } from '../define-point.ts';
import { choiceField, numberField, textField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceRing, planMiddle, planRing } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  choiceField('service', 'Service', {
    gas: 'gas',
    heatingFlow: 'heating flow',
    heatingReturn: 'heating return',
    hot: 'hot',
    cold: 'cold',
    preheated: 'preheated',
    balancedCold: 'balanced cold',
    condensate: 'condensate',
    discharge: 'safety discharge',
    boilerRelief: 'boiler relief',
  }),
  choiceField(
    'part',
    'Here it',
    { source: 'comes from', end: 'goes to' },
    'Which way the water or gas goes at this place.',
  ),
  textField('size', 'Size found'),
  numberField('heatingKw', 'Heating behind it', 'kW', { max: 100, help: 'For heating: told once, at the flow.' }),
  numberField('lossKPa', 'Lost behind it', 'kPa', { max: 100, help: 'At the design flow, there and back.' }),
  numberField('litresBehind', 'Water behind it', 'litres', { max: 1000 }),
];

/** Where new pipe meets what is already in the house: one connection of whichever service. */
export default definePoint({
  id: 'join-point',
  version: 1,
  ...spoken('Join here', fields),
  letter: 'J',
  group: 'other',
  role: {},
  hostedOnWall: false,
  assumedHeight: 'skirting',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 60, depthMm: 60, heightMm: 60 },
  connections: (s, told) => {
    const service = typeof told.service === 'string' ? told.service : 'gas';
    const size = typeof told.size === 'string' && told.size !== '' ? told.size : null;
    return [tail('join', service, 'Join', size, [0, s.depthMm / 2, s.heightMm / 2], 'front')];
  },
  defaults: { service: 'gas', part: null, size: '' },
  planSymbol: (s) => [planRing(s), planMiddle(s, 'J')],
  faceSymbol: (s) => [faceRing(s)],
});
