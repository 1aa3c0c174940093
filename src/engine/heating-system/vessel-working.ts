import { figure } from '../../reference/figure.ts';
import { exact } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { citesOf, figures, step } from '../gas/said.ts';
import type { VesselCheck } from './vessel-check.ts';

const cite = (row: string, column: string) => figure('heating-vessel', row, column).cite;

/** How the vessel of a system was worked out, line by line. */
export function vesselWorking(c: VesselCheck): Working {
  const { staticM, pressures: p, content, grows } = c;
  return {
    title: 'Expansion vessel',
    steps: [
      step('Water in the system', 'part by part, in its chapter', content.litres),
      step(
        'It grows by',
        `from ${c.coldC} to ${c.hotC} °C, by its density`,
        grows === null ? null : exact(grows * 100, '%', 2),
        citesOf(figure('heating-water-basis', 'hottest', 'c').cite),
      ),
      step(
        'Highest water above the vessel',
        staticM.hi === staticM.lo ? `a ${c.highest}` : `a ${c.highest}, or what was not drawn`,
        staticM,
      ),
      step(
        'Charge',
        `${figures(staticM, 1)} m of water and some over it`,
        p.chargeBar,
        citesOf(cite('overStatic', 'bar'), cite('leastCharge', 'bar'), cite('head', 'barPerM')),
      ),
      step('Highest working pressure', 'below the relief valve', p.endBar, citesOf(cite('belowRelief', 'bar'))),
      step(
        'Vessel wanted',
        '(growth + reserve) x (end + 1) / (end - charge)',
        c.wanted,
        citesOf(cite('reserve', 'litres'), cite('small', 'share')),
      ),
      step('By the older table', 'content times its factor', c.byTable, [figure('heating-vessel-older', '1').cite]),
    ],
    result: c.wanted,
    missing: c.missing,
    assumed: [`its relief valve is set to ${figures(reliefBar())} bar`],
  };
}

function reliefBar() {
  const found = figure('heating-vessel', 'relief', 'bar');
  return exact(found.is === 'known' ? found.lo : Number.NaN, 'bar', 0);
}
