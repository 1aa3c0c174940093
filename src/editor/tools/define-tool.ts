import type { Vec } from '../../drawing/display-list.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { Ask, Assumptions, Draft, EditorState, InHand, KeyInput, Outcome, Selected } from '../editor-api.ts';
import type { Hit } from '../hit/hit-test.ts';
import type { Pick } from '../input/pick.ts';
import type { PointerKind } from '../input/tolerance.ts';
import type { SnapOptions } from '../snap/define-snap.ts';

/** What a handler is told of the pointer. `pick` is worked out when it is first asked for. */
export interface ToolEvent {
  readonly screen: Vec;
  /** The pointer in the plane of the pane, mm. */
  readonly plane: Vec;
  /** The same over the floor of the house, however that lies in the plan; on a face, at the face. */
  readonly floor: Xy;
  readonly pane: 'plan' | 'face';
  readonly kind: PointerKind;
  readonly shift: boolean;
  readonly alt: boolean;
  readonly ctrl: boolean;
  readonly time: number;
  /** Is a button or finger down? */
  readonly pressed: boolean;
  /** The place under the pointer, unsnapped. */
  raw(options?: SnapOptions): Pick;
  snap(options?: SnapOptions): Pick;
  hits(): readonly Hit[];
}

/** The only door from a tool into the editor. `commit` may be called once in a gesture, and never while giving up. */
export interface ToolContext<M> {
  readonly memory: M;
  readonly plan: Plan;
  readonly state: EditorState;
  readonly inHand: InHand;
  readonly mmPerPx: number;
  readonly assumptions: Assumptions;
  draft(draft: Partial<Draft> | null): void;
  caught(word: string | null): void;
  typed(digits: string): void;
  ask(what: Ask | null): void;
  commit(command: string, args: unknown): Outcome;
  /** Takes back the last step of the document. */
  undo(): Outcome;
  select(what: readonly Selected[]): void;
  candidates(what: readonly Selected[]): void;
  setInHand(change: Partial<InHand>): void;
  setTool(tool: string): void;
  /** Moves the paper under the pointer, px. */
  pan(dx: number, dy: number): void;
  say(text: string, refusal?: boolean): void;
}

/** A handler gives the name of the next state, or nothing to stay. */
type Next = string | undefined;
type On<M> = ((ctx: ToolContext<M>, event: ToolEvent) => Next) | ((ctx: ToolContext<M>, event: ToolEvent) => void);

export interface ToolStateChart<M> {
  readonly enter?: (ctx: ToolContext<M>) => void;
  readonly exit?: (ctx: ToolContext<M>) => void;
  readonly down?: On<M>;
  readonly move?: On<M>;
  readonly up?: On<M>;
  /** Gives a state (perhaps the same one) when the key did something, undefined when it is not for this tool. */
  readonly key?: (ctx: ToolContext<M>, key: KeyInput) => Next;
  /** Escape, a lost pointer or another tool: gives the state to fall back to. */
  readonly cancel?: (ctx: ToolContext<M>) => Next;
  /** A second finger: as cancel, but nothing of the whole gesture may stay. Without one, cancel is used. */
  readonly interrupt?: (ctx: ToolContext<M>) => Next;
  /** The plan or what is in hand was changed from elsewhere. */
  readonly changed?: (ctx: ToolContext<M>) => Next;
}

export interface Tool<M> {
  readonly id: string;
  readonly label: string;
  readonly key: string;
  readonly order: number;
  readonly initial: string;
  readonly memory: () => M;
  readonly states: Readonly<Record<string, ToolStateChart<M>>>;
}

export type AnyTool = Tool<unknown>;

export function defineTool<M>(tool: Tool<M>): AnyTool {
  if (!tool.states[tool.initial]) throw new Error(`tool ${tool.id}: no state "${tool.initial}"`);
  return tool as unknown as AnyTool;
}
