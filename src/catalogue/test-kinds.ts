/** One figure of a test, as its blank is headed. The report heads what is expected of it with the same words. */
export interface TestFigure {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  /** Kind of the reading before the work that it is held beside. */
  readonly before?: string;
}

/** A test or a piece of commissioning that is written down. */
export interface TestKind {
  readonly id: string;
  readonly title: string;
  /** What it is done on, where the drawing does not say it. */
  readonly parts: readonly string[];
  /** True where it goes by an edition of a standard, which the date decides. */
  readonly byEdition: boolean;
  readonly figures: readonly TestFigure[];
}

const figure = (key: string, label: string, unit: string, before?: string): TestFigure => ({
  key,
  label,
  unit,
  ...(before === undefined ? {} : { before }),
});

export const NEW_PIPE = 'New pipework on its own';
export const WHOLE = 'Whole installation, appliances connected';

/** In the order of the day: tested, purged, lit, then set going. */
export const TEST_KINDS: readonly TestKind[] = [
  {
    id: 'tightness',
    title: 'Gas tightness',
    parts: [NEW_PIPE, WHOLE],
    byEdition: true,
    figures: [
      figure('letByMbar', 'Let-by, pressure', 'mbar'),
      figure('letByMinutes', 'Let-by, time', 'minutes'),
      figure('letByRiseMbar', 'Let-by, rise', 'mbar'),
      figure('testMbar', 'Test pressure', 'mbar'),
      figure('settleMinutes', 'Time to settle', 'minutes'),
      figure('testMinutes', 'Time of the test', 'minutes'),
      figure('dropMbar', 'Drop', 'mbar', 'tightness-drop'),
    ],
  },
  {
    id: 'purge',
    title: 'Gas purge',
    parts: [],
    byEdition: true,
    figures: [figure('volumeM3', 'Volume passed', 'm3'), figure('seconds', 'Time at the burner', 's')],
  },
  {
    id: 'gas-pressure',
    title: 'Gas pressures',
    parts: [],
    byEdition: false,
    figures: [
      figure('standingMbar', 'Standing, at the meter', 'mbar', 'gas-standing'),
      figure('workingMbar', 'Working, at the meter', 'mbar', 'gas-working'),
      figure('inletMbar', 'Working, at the inlet', 'mbar', 'gas-inlet'),
    ],
  },
  {
    id: 'gas-rate',
    title: 'Gas rate',
    parts: [],
    byEdition: false,
    figures: [
      figure('volumeM3', 'Passed, metric meter', 'm3'),
      figure('volumeFt3', 'Passed, imperial meter', 'ft3'),
      figure('seconds', 'Time taken', 's'),
      figure('rateM3PerH', 'Gas rate', 'm3/h', 'gas-rate'),
    ],
  },
  {
    id: 'water',
    title: 'Water pressure test',
    parts: ['Heating', 'Hot and cold'],
    byEdition: false,
    figures: [
      figure('testBar', 'Test pressure', 'bar'),
      figure('minutes', 'Time of the test', 'minutes'),
      figure('dropBar', 'Drop', 'bar'),
    ],
  },
  {
    id: 'commissioning',
    title: 'Commissioning',
    parts: [],
    byEdition: false,
    figures: [
      figure('flowC', 'Heating flow', '°C'),
      figure('returnC', 'Heating return', '°C'),
      figure('systemBar', 'System pressure, cold', 'bar'),
      figure('hotLPerMin', 'Hot water flow', 'litres a minute'),
      figure('coldC', 'Cold water', '°C'),
      figure('hotC', 'Hot water', '°C'),
      figure('ratioHigh', 'Combustion ratio, highest rate', ''),
      figure('ratioLow', 'Combustion ratio, lowest rate', ''),
    ],
  },
  {
    id: 'condensate',
    title: 'Condensate pipe',
    parts: [],
    byEdition: false,
    figures: [figure('fallMmPerM', 'Fall', 'mm/m'), figure('waterLitres', 'Water poured through', 'litres')],
  },
];

export const testKind = (id: string): TestKind | undefined => TEST_KINDS.find((k) => k.id === id);

/** Heading of a figure of a test: what the report and the form name it alike. Throws on a slip in the code. */
export function testLabel(kind: string, key: string): string {
  const found = testKind(kind)?.figures.find((f) => f.key === key);
  if (!found) throw new Error(`no figure "${key}" in test "${kind}"`);
  return found.label;
}
