import { describe, expect, test } from 'vitest';
import { call } from './fake-terminal.ts';

const VERBS = ['check', 'draw', 'list', 'report', 'sum'];

describe('a call', () => {
  test('help names every verb and what the exit codes mean, and is fine', async () => {
    const { code, out, err } = await call('help');
    expect([code, err]).toEqual([0, '']);
    for (const verb of VERBS) expect(out).toContain(`  kickset ${verb} `);
    expect(out).toContain('Exit: 0 no stop found, 1 some stop found, 2 ');
    expect(out).toContain('not signed off');
    expect(await call('--help')).toMatchObject({ code: 0, out });
  });

  test('nothing at all is helped, and is a slip', async () => {
    expect(await call()).toMatchObject({ code: 2, err: '' });
  });

  test.each([
    [
      ['chekc', 'flat.json'],
      'kickset: there is no "chekc"; there are check, compare, draw, list, report, rules, sheet, sum\n',
    ],
    [['check'], 'kickset: which file? kickset check FILE [--case OPTION:after] [--json]\n'],
    [['check', 'flat.json', 'house.json'], /one file at a time: what is "house\.json"\?/],
    [['check', 'none.json'], 'kickset: none.json: there is no such file\n'],
    [['check', 'flat.json', '--colour'], 'kickset: check does not know --colour; it knows --case, --json\n'],
    [['check', 'flat.json', '--case'], 'kickset: --case wants a word after it\n'],
    [['check', 'flat.json', '--case', 'later'], /--case is before, after or OPTION:after, not "later"/],
    [['check', 'flat.json', '--case', 'Z:after'], 'kickset: there is no option "Z"; there is A\n'],
    [['report', 'flat.json'], /the whole report comes as data only: kickset report FILE --json/],
    [['list', 'flat.json', '--pdf'], /list does not know --pdf; it knows --case, --json, --csv, --text/],
    [['draw', 'flat.json', '--theme', 'dark'], 'kickset: --theme is print, day or night\n'],
    [['draw', 'flat.json', '--view', 'plan:cellar'], 'kickset: there is no storey "cellar"; there is B\n'],
    [['draw', 'flat.json', '--view', 'face:nowhere:left'], 'kickset: there is no wall "nowhere"\n'],
    [['draw', 'flat.json', '--view', 'face:BN:top'], /from its left or its right, not "top"/],
    [['draw', 'flat.json', '--view', 'iso'], /--view is plan:STOREY or face:WALL:SIDE, not "iso"/],
    [['sum', 'pi'], /there is no sum "pi"; there are bend, chase-depth, clip-spacing, [a-z, -]+\n/],
    [['sum'], /there is no sum ""; there are /],
    [['sum', 'gas-flow', '30'], 'kickset: figures are told as key=value, not "30"\n'],
    [['sum', 'gas-flow', 'watts=30'], /gas-flow does not ask for "watts"; it asks for kw, gas, cv/],
    [['sum', 'gas-flow'], /gas-flow needs kw \(gross heat input, kW\)/],
    [['sum', 'gas-flow', 'kw=lots'], /kw is a number in kW, not "lots"/],
    [['sum', 'gas-flow', 'kw=30', 'gas=coal'], /gas is one of natural, propane, not "coal"/],
  ] as const)('%j is a slip told in one sentence', async (args, sentence) => {
    const { code, out, err, written } = await call(...args);
    expect([code, out, written]).toEqual([2, '', {}]);
    expect(err).toMatch(sentence instanceof RegExp ? sentence : /^/);
    if (typeof sentence === 'string') expect(err).toBe(sentence);
    expect(err).toMatch(/^kickset: [^\n]+\n$/);
    expect(err).not.toMatch(/undefined|null|\[object|Error:|\bat .*\.ts/);
  });

  test.each(['half.json', 'picture.json', 'empty.json'])('%s is refused with the file and why', async (file) => {
    for (const args of [['check'], ['list'], ['report', '--json'], ['draw']]) {
      const { code, out, err } = await call(...args, file);
      expect([code, out]).toEqual([2, '']);
      expect(err).toMatch(new RegExp(`^kickset: ${file}: [^\\n]{10,}\\n$`));
    }
  });

  test('a file of a newer version is read, and it is said', async () => {
    const { code, err } = await call('check', 'newer.json');
    expect(code).toBe(1);
    expect(err).toMatch(/^kickset: newer\.json: This job was saved .*version 99 of the format[^\n]*\n$/);
  });
});
