import { addTo } from '../../catalogue/registry.ts';
import { chosenFigures } from '../../drawing/labels/chosen-figures.ts';
import { lateFigures } from '../../drawing/labels/late-figures.ts';
import { commands } from '../commands/commands.ts';
import type { AnyCommand } from '../commands/define-command.ts';
import { createCursor } from '../cursor/cursor.ts';
import { askFigure, figureKey } from '../figures/ask-figure.ts';
import { figureAt } from '../figures/figure-at.ts';
import { boxBetween, boxed } from '../many/boxed.ts';
import { routeAlong } from '../steps/route-along.ts';
import type { AnyTool } from '../tools/define-tool.ts';
import { lateHand } from '../tools/late-hand.ts';
import { tools } from '../tools/tools.ts';
import { later } from './load-later.ts';

/**
 * Commands and tools that nobody needs for the first line: the page fetches them once it can be drawn on. Whoever wants
 * them all at once (tests) imports this file.
 */
addTo(commands, import.meta.glob<AnyCommand>('./*.command.ts', { eager: true, import: 'default' }));
addTo(tools, import.meta.glob<AnyTool>('./*.tool.ts', { eager: true, import: 'default' }));
later.makeCursor = createCursor;
lateFigures.of = chosenFigures;
lateHand.is = { figureAt, askFigure, figureKey, boxBetween, boxed, routeAlong };
later.isHere = true;
