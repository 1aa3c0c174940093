import { defineSum } from '../define-sum.ts';
import { cannot, step } from '../gas/said.ts';
import { onTheMeter, rateInKw, timedRate } from '../tests-due/gas-rate.ts';

export default defineSum({
  id: 'gas-rate',
  title: 'Gas rate of a timed meter',
  topic: 'gas',
  inputs: [
    { key: 'volume', label: 'gas passed', kind: 'number', unit: '', required: true, least: 0, most: 100 },
    { key: 'seconds', label: 'time it took', kind: 'number', unit: 's', required: true, least: 1, most: 36000 },
    { key: 'dial', label: 'unit of the meter', kind: 'choice', unit: '', required: false, choices: ['m3', 'ft3'] },
    { key: 'gas', label: 'kind of gas', kind: 'choice', unit: '', required: false, choices: ['natural', 'propane'] },
    { key: 'cv', label: 'gross calorific value', kind: 'number', unit: 'MJ/m3', required: false, least: 20, most: 150 },
  ],
  work({ volume, seconds, dial, gas, cv }) {
    const feet = dial === 'ft3';
    const rate = timedRate({ volume: Number(volume), dial: feet ? 'ft3' : 'm3', seconds: Number(seconds) });
    if (!rate) return cannot('Gas rate of a timed meter', ['gas that passed']);
    const heat = rateInKw(rate, {
      gas: gas === 'propane' ? 'propane' : 'natural',
      calorificMJPerM3: cv === undefined ? null : Number(cv),
    });
    const meter = onTheMeter(rate);
    const how = `3600 x ${volume} ${feet ? 'ft3 x 0.02832' : 'm3'} / ${seconds} s`;
    return {
      title: 'Gas rate of a timed meter',
      steps: [
        step('Gas rate', how, rate),
        ...(meter ? [step('One cubic foot takes', '', meter.dialSeconds)] : []),
        ...heat.steps,
      ],
      result: heat.result,
      missing: heat.missing,
      assumed: heat.assumed,
    };
  },
  example: {
    values: { volume: 1, dial: 'ft3', seconds: 36, cv: 38.76 },
    result: 30.5,
    within: 0.05,
    from: 'derived: 1 ft3 is 0.02832 m3; in 36 s it is 2.832 m3/h, times 10.767 kW per m3/h',
  },
});
