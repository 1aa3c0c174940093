import { definePoint, type Fields, type Size } from '../define-point.ts';
import { choiceField, found, fromSheet, inputBasisField, numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  choiceField('type', 'Type', { combi: 'combi', system: 'system', heatOnly: 'heat only' }),
  choiceField(
    'class',
    'Class',
    {
      '15': '15 kW class',
      '18': '18 kW class',
      '24': '24 kW class',
      '28': '28 kW class',
      '30': '30 kW class',
      '35': '35 kW class',
    },
    'Only until the sheet is at hand: the heat input is then a range.',
  ),
  numberField('inputKwHeating', 'Heat input, heating', 'kW', { max: 70 }),
  numberField('inputKwHotWater', 'Heat input, hot water', 'kW', { max: 70 }),
  inputBasisField,
  numberField('hotLPerMin', 'Hot water', 'litres a minute', { max: 40 }),
  yesNoField('roomSealed', 'Room-sealed'),
  found(
    numberField('rangeRatedKw', 'Heating turned down to', 'kW', {
      max: 70,
      help: 'It can be turned up again, so it does not shrink the load.',
    }),
  ),
  ...fromSheet(
    numberField('outputKw', 'Heat output', 'kW', {
      max: 70,
      help: 'An output is no load: the heat input sizes the pipe.',
    }),
    numberField('leastInletMbar', 'Least gas pressure at its inlet', 'mbar', { max: 50 }),
    numberField('clearFrontMm', 'Clear in front', 'mm', { max: 3000 }),
    numberField('clearDoorMm', 'Clear in front, to a door that opens', 'mm', { max: 1000 }),
    numberField('clearSidesMm', 'Clear each side', 'mm', { max: 1000 }),
    numberField('clearAboveMm', 'Clear above', 'mm', { max: 2000 }),
    numberField('clearBelowMm', 'Clear below', 'mm', { max: 2000 }),
    numberField('flueMaxM', 'Flue, longest', 'm', { max: 60 }),
    numberField('flueBend90M', 'Flue, each bend of 90 counts as', 'm', { max: 10 }),
    numberField('flueBend45M', 'Flue, each bend of 45 counts as', 'm', { max: 10 }),
    numberField('pumpHeadLeftKPa', 'Pump head left for the heating', 'kPa', {
      max: 100,
      help: 'At the design flow, from the curve in its sheet.',
    }),
    numberField('waterLitres', 'Heating water in it', 'litres', { max: 50 }),
    numberField('vesselLitres', 'Vessel built in', 'litres', { max: 50, help: '0 where it has none.' }),
    numberField('hotOutputKw', 'Heat output, hot water', 'kW', { max: 70 }),
    numberField('hotRiseK', 'Hot water flow is told at a rise of', 'K', { max: 80 }),
    numberField('hotLeastBar', 'Cold inlet, least pressure', 'bar', { max: 10 }),
    numberField('inletMaxC', 'Inlet water, warmest', '°C', {
      max: 95,
      help: 'What its cold tail may be fed with: it limits preheated water.',
    }),
    choiceField('reliefAt', 'Relief leaves', {
      below: 'below, with the tails',
      rear: 'at the rear',
      left: 'at the left',
      right: 'at the right',
    }),
    yesNoField('reliefKitAllowed', 'Relief kit allowed'),
    yesNoField('condensatePumpAllowed', 'Condensate pump allowed'),
    choiceField('cupboardVents', 'Vents of a cupboard', { none: 'none wanted', wanted: 'wanted' }),
    numberField('liftKg', 'Weight to lift', 'kg', { max: 200 }),
  ),
];

/**
 * Tails along the underside, left to right. The order differs by appliance: this is what is commonest, no source, and
 * is changed on the point itself as soon as the sheet is at hand. Places are parts of the case's width.
 */
const TAILS = [
  ['flow', 'heatingFlow', 'Heating flow', '22', -0.3, 0.27],
  ['hot', 'hot', 'Hot', '15', -0.15, 0.27],
  ['gas', 'gas', 'Gas', '22', 0, 0.27],
  ['cold', 'cold', 'Cold', '15', 0.15, 0.27],
  ['return', 'heatingReturn', 'Heating return', '22', 0.3, 0.27],
  ['condensate', 'condensate', 'Condensate', '21.5', 0.39, 0.6],
  ['relief', 'boilerRelief', 'Relief', '15', 0.46, 0.27],
] as const;

function tails(size: Size, told: Fields) {
  const heatsWater = told.type !== 'system' && told.type !== 'heatOnly';
  const flue = tail('flue', 'flue', 'Flue', '60/100', [0, size.depthMm / 2, size.heightMm], 'up');
  const below = TAILS.filter(([, service]) => heatsWater || (service !== 'hot' && service !== 'cold')).map(
    ([id, service, label, tube, across, out]) =>
      tail(id, service, label, tube, [across * size.widthMm, out * size.depthMm, 0], 'down'),
  );
  return [...below, flue];
}

export default definePoint({
  id: 'boiler',
  version: 1,
  ...spoken('Boiler', fields),
  letter: 'B',
  group: 'appliance',
  role: {
    gas: 'end',
    heatingFlow: 'source',
    heatingReturn: 'end',
    hot: 'source',
    cold: 'end',
    preheated: 'end',
    condensate: 'source',
    boilerRelief: 'source',
    flue: 'source',
  },
  hostedOnWall: true,
  assumedHeight: 'boiler',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 400, depthMm: 300, heightMm: 700 },
  connections: tails,
  defaults: {
    type: 'combi',
    class: null,
    inputKwHeating: null,
    inputKwHotWater: null,
    inputBasis: null,
    outputKw: null,
    hotLPerMin: null,
    roomSealed: true,
    clearFrontMm: null,
    clearSidesMm: null,
    clearAboveMm: null,
    clearBelowMm: null,
  },
  gasInputs: ['inputKwHeating', 'inputKwHotWater'],
  ...boxed('B'),
});
