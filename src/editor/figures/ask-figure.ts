import type { Draft, KeyInput, PlacedFigure } from '../editor-api.ts';
import { workPlane } from '../input/work-plane.ts';
import type { ToolContext } from '../tools/define-tool.ts';
import { type FigureSetting, settingOf } from './figure-setting.ts';

/** A figure that is being told anew. `moves`: the end that goes, where there are two. */
export interface Asked {
  readonly figure: PlacedFigure;
  readonly typed: string;
  readonly moves: 'a' | 'b';
}

/** Enough for a house, a tenth of a mm included. */
const MOST_DIGITS = 7;

function planeOf(ctx: ToolContext<unknown>) {
  const { panes } = ctx.state;
  return workPlane(ctx.plan, (panes[panes.active] ?? panes.plan).view);
}

/** The measured length in the accent line, and a ring at the end that goes. */
function shownOf(ctx: ToolContext<unknown>, asked: Asked, setting: FigureSetting): Partial<Draft> | null {
  const plane = planeOf(ctx);
  if (!plane) return null;
  const { a, b } = asked.figure;
  const end = setting.ends.find((e) => e.key === asked.moves);
  return {
    lines: [{ pts: [plane.place(a, 0), plane.place(b, 0)], ink: 'accent', pen: 0.5 }],
    marks: end ? [{ mark: 'handle', at: plane.place(end.at, 0) }] : [],
  };
}

function show(ctx: ToolContext<unknown>, asked: Asked, setting: FigureSetting): Asked {
  const { ends, title } = setting;
  ctx.typed(asked.typed);
  ctx.draft(shownOf(ctx, asked, setting));
  ctx.ask({
    title,
    figure: asked.typed,
    unit: 'mm',
    says: [`It is ${Math.round(asked.figure.mm * 10) / 10} now.`],
    rows:
      ends.length < 2 ? [] : [ends.map((e) => ({ key: `end ${e.key}`, label: e.label, on: e.key === asked.moves }))],
    enter: 'keep',
  });
  return asked;
}

/** Begins to ask; null where what is measured is gone. */
export function askFigure(ctx: ToolContext<unknown>, figure: PlacedFigure): Asked | null {
  const plane = planeOf(ctx);
  const setting = plane && settingOf(ctx.plan, plane, figure);
  return setting ? show(ctx, { figure, typed: '', moves: setting.ends[0]?.key ?? 'b' }, setting) : null;
}

function typedWith(typed: string, key: string): string | undefined {
  if (/^\d$|^00$/.test(key)) return (typed + key).replace(/^0+(?=\d)/, '').slice(0, MOST_DIGITS);
  if (key === '.' || key === ',') return typed.includes('.') ? typed : `${typed || '0'}.`;
  return key === 'Backspace' ? typed.slice(0, -1) : undefined;
}

/** What a key makes of it: asked on, null where it is done with, undefined where the key means nothing here. */
export function figureKey(ctx: ToolContext<unknown>, asked: Asked, { key }: KeyInput): Asked | null | undefined {
  const plane = planeOf(ctx);
  const setting = plane && settingOf(ctx.plan, plane, asked.figure);
  if (!setting || key === 'Escape') return null;
  const typed = typedWith(asked.typed, key);
  if (typed !== undefined) return show(ctx, { ...asked, typed }, setting);
  const end = setting.ends.find((e) => key === `end ${e.key}`);
  if (end) return show(ctx, { ...asked, moves: end.key }, setting);
  if (key !== 'Enter') return undefined;
  const mm = Number.parseFloat(asked.typed);
  if (!Number.isFinite(mm) || mm === Math.round(asked.figure.mm * 10) / 10) return null;
  const { command, args } = setting.change(mm, asked.moves);
  // A refusal is said by the page, and the figure stays to be put right.
  return ctx.commit(command, args).ok ? null : asked;
}
