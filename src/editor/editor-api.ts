import type { StoreApi } from 'zustand/vanilla';
import type { AssumedJoists, VoidChoices } from '../catalogue/void-choices.ts';
import type { Figure, Vec, View } from '../drawing/display-list.ts';
import type { StepKind } from '../network/steps/step-shape.ts';
import type { Case, Plan } from '../plan/plan.ts';
import type { HeightRef, Xy, Xyz } from '../plan/records/parts.ts';
import type { Joining, Tube } from '../plan/records/pipework.ts';
import type { Thing } from '../plan/records/statements.ts';
import type { CursorState } from './cursor/cursor-api.ts';
import type { KeyBinding } from './keys.ts';

/** What the editor shows the world. Everything in it may be read by the view; only the editor writes it. */
export interface EditorState {
  readonly plan: Plan;
  /** Rises by one with every change of the plan, undo and redo too. */
  readonly revision: number;
  readonly chosen: Case;
  readonly history: { readonly undo: readonly string[]; readonly redo: readonly string[] };
  /** Why nothing can be changed (newer file, open in another tab); null when it can. */
  readonly readOnly: string | null;
  readonly tool: string;
  /** State of the tool's chart, for tests and for the words at the end of the bench. */
  readonly toolState: string;
  readonly draft: Draft | null;
  readonly selection: readonly Selected[];
  /** Everything that lay under the last tap, best first, where it was more than one thing. */
  readonly candidates: readonly Selected[];
  readonly panes: Panes;
  /** Figures that stand on each pane and can be told anew, as the view placed them. */
  readonly figures: Figures;
  /** What the next piece of pipe will be. */
  readonly inHand: InHand;
  /** What the snap caught, in a word ("corner of wall", "right angle"); null where nothing was. */
  readonly caught: string | null;
  /** Digits typed for the live leg or wall; empty where none were. */
  readonly typed: string;
  /** What the tool in hand asks to be typed, with keys for it; null where it asks nothing. */
  readonly ask: Ask | null;
  /** The cross that is moved by keys; null while a pointer leads. */
  readonly cursor: CursorState | null;
  /** The last refusal or note in words; cleared by the next command. */
  readonly said: { readonly text: string; readonly refusal: boolean; readonly n: number } | null;
}

export type Figures = Readonly<Partial<Record<'plan' | 'face', readonly PlacedFigure[]>>>;

/** A figure with its text in px of the pane: the middle of it off the place it is held by (y down), and half its room. */
export interface PlacedFigure extends Pick<Figure, 'measures' | 'mm' | 'a' | 'b' | 'at'> {
  readonly offsetPx: Vec;
  readonly halfPx: Vec;
}

/**
 * What a tool asks to be typed, shown as a pad of keys. Each key is given to `Editor.key` by its name, so that the pad and
 * a keyboard do the same; digits, "Backspace" and "Enter" are always there where `figure` is not null.
 */
export interface Ask {
  /** What the figure is, in a few words: "Wall 3, inside". */
  readonly title: string;
  /** What was typed so far; null where only a place is asked for. */
  readonly figure: string | null;
  readonly unit: string;
  /** Notes under the figure: what was caught, a closing error. */
  readonly says: readonly string[];
  readonly rows: readonly (readonly AskKey[])[];
  /** What Enter is called; null where it does nothing now. */
  readonly enter: string | null;
}

export interface AskKey {
  readonly key: string;
  readonly label: string;
  readonly icon?: string;
  /** One of several ways, and the one that counts. */
  readonly on?: boolean;
}

export interface Selected {
  readonly map:
    | 'walls'
    | 'openings'
    | 'points'
    | 'runs'
    | 'legs'
    | 'nodes'
    | 'items'
    | 'voids'
    | 'rooms'
    | 'stretches'
    | 'roofs'
    | 'grounds'
    | 'blobRefs';
  readonly id: string;
}

export type Sizes = 'inside' | 'outside' | 'middle';

/** `outline`: by its corners. `holes`, `joist`, `first` and `bearing` change the chosen void. */
export type VoidTask = 'room' | 'outline' | 'hole' | 'joist' | 'first' | 'bearing';

export interface InHand {
  readonly service: string;
  readonly tube: Tube;
  readonly joining: Joining | null;
  readonly turns: 'elbow' | 'bend';
  /** Height of the next node. */
  readonly height: HeightRef;
  /** Open end of the run that is being laid; null while none is. */
  readonly goesOn: string | null;
  /** Kind of point, item or opening that the next tap places. */
  readonly pointKind: string;
  /** The thing of the user's own that the next point is one of; null: as its kind makes it. */
  readonly thing: Thing | null;
  /** The photo that the next tap pins. */
  readonly photo: string | null;
  readonly itemKind: string;
  readonly openingKind: 'door' | 'window' | 'vent' | 'archway';
  readonly voidKind: 'floor' | 'ceiling' | 'boxing' | 'slab' | 'duct' | 'chase';
  /** What a tap of the void tool takes: the whole room, or a corner of an outline; or what is done to the chosen void. */
  readonly voidTask: VoidTask;
  /** The joist that was tapped last, by its index; null where none was. */
  readonly joist: { readonly void: string; readonly index: number } | null;
  /** What was told of the last joists and boxes, and is offered again; null where nothing was. */
  readonly centresMm: number | null;
  readonly joistDepthMm: number | null;
  readonly boxDepthMm: number | null;
  readonly wallThicknessMm: number;
  readonly wallConstruction: string;
  /** What a typed length of a wall or room is taken between: inside faces, outside faces, middle lines. */
  readonly sizes: Sizes;
  /** What the next room is used for; empty: not told. */
  readonly roomUse: string;
  /** What the ground that is levelled next is made of. */
  readonly groundKind: string;
  /** How the next step of a pipe is made. */
  readonly step: StepInHand;
  /** What the next piece of a run goes along; null: straight to where it is tapped. */
  readonly follow: FollowInHand | null;
  /** The runs that the next bank is made of, and how they stand beside each other. */
  readonly bank: BankInHand;
  /** The picture under the drawing that is being laid, what is done with it, and the places tapped for that. */
  readonly trace: TraceInHand | null;
}

export interface BankPipeInHand {
  readonly service: string;
  readonly tube: Tube;
  readonly joining: Joining | null;
  readonly turns: 'elbow' | 'bend';
}

export interface BankInHand {
  readonly members: readonly BankPipeInHand[];
  /** Middle to middle, mm. */
  readonly spacingMm: number;
  readonly row: 'level' | 'upright';
}

export interface StepInHand {
  readonly kind: StepKind;
  /** aside: the way it is dragged; else over or under, whichever way the hand goes. */
  readonly goes: 'aside' | 'over' | 'under';
  readonly angleDeg: number;
}

/** Wall: middle of the pipe off its face. Run: middle to middle. Bay: in the middle between two joists, where `mm` says nothing. */
export interface FollowInHand {
  readonly what: 'wall' | 'bay' | 'run';
  readonly mm: number;
}

export interface TraceInHand {
  readonly blobRef: string;
  /** move: dragged. scale, level: by two places. square: by four corners of something upright. */
  readonly doing: 'move' | 'scale' | 'level' | 'square';
  readonly taps: readonly Xy[];
}

/** Pan and zoom of one pane: never in history, never in the file. */
export interface Camera {
  readonly centre: Vec;
  readonly mmPerPx: number;
}

export interface Pane {
  readonly view: View;
  readonly camera: Camera;
  /** Size in CSS px, told by the view. */
  readonly width: number;
  readonly height: number;
}

export interface Panes {
  readonly plan: Pane;
  /** The wall folded up, where one is. The plan is turned to lie straight under it, and shares its scale. */
  readonly face: Pane | null;
  readonly active: 'plan' | 'face';
  /** While a wall is folded up: how the plan was looked at before. */
  readonly flat: Camera | null;
}

/** What is being made and not yet in the document: drawn in the live layer only. */
export interface Draft {
  readonly pane: 'plan' | 'face';
  readonly lines: readonly {
    readonly pts: readonly Xyz[];
    readonly ink: string;
    readonly pen: number;
    /** Style of the service whose beat the line has; unbroken where none is told. */
    readonly beat?: string;
  }[];
  readonly marks: readonly { readonly mark: string; readonly at: Xyz; readonly text?: string }[];
  readonly labels: readonly { readonly at: Xyz; readonly text: string }[];
  /** Records shown in their moved place while they are dragged, in place of the still ones. */
  readonly moved: ReadonlySet<string>;
  /** The plan as it would be, where the gesture changes records (drag); fragments of `moved` are drawn from it. */
  readonly plan: Plan | null;
}

/** One pointer event as the view saw it, in px of the pane. */
export interface PointerInput {
  readonly type: 'down' | 'move' | 'up' | 'cancel';
  readonly pointerId: number;
  readonly pointerType: 'mouse' | 'pen' | 'touch';
  readonly pane: 'plan' | 'face';
  readonly x: number;
  readonly y: number;
  readonly buttons: number;
  readonly shift: boolean;
  readonly alt: boolean;
  readonly ctrl: boolean;
  readonly time: number;
  /** Longer side of what touches the glass, px; not told by every device. */
  readonly contactPx?: number;
  /** How far a touch is from the nearest rim of the screen, px. */
  readonly rimPx?: number;
}

/** auto: once a pen was seen, fingers move the paper for a minute. pen: fingers always do. fingers: they draw beside a pen too. */
export type PenUse = 'auto' | 'pen' | 'fingers';

/** What the pointers that are down are doing: driving the tool, moving the paper, or nothing until all are lifted. */
export type GestureState = 'rest' | 'tool' | 'pan' | 'pinch' | 'spent';

export interface WheelInput {
  readonly pane: 'plan' | 'face';
  readonly x: number;
  readonly y: number;
  readonly deltaX: number;
  readonly deltaY: number;
  /** Trackpad pinch and ctrl + wheel zoom; a plain wheel zooms too, a trackpad's two-finger drag pans. */
  readonly ctrl: boolean;
  readonly pixelMode: boolean;
}

export interface KeyInput {
  readonly key: string;
  readonly ctrl: boolean;
  readonly shift: boolean;
  readonly alt: boolean;
  /** The caret stands in a field: only keys held with ctrl mean anything here. */
  readonly typing?: boolean;
  /** The drawing has the focus: arrows move the cross. */
  readonly drawing?: boolean;
}

/** A height nobody measured: the figure drawn, and the bounds it lies between. */
export interface AssumedMm {
  readonly mm: number;
  readonly lo: number;
  readonly hi: number;
}

/** What is taken for granted until it is measured. The figures come from the table of assumed heights. */
export interface Assumptions {
  readonly ceilingMm: number;
  readonly buildUpMm: number;
  /** Middle of a pipe in the void over the ceiling, above the floor. */
  readonly inVoid: AssumedMm;
  /** Tails of a boiler on the wall, above the floor. */
  readonly boilerTail: AssumedMm;
  /** Outlet of a gas meter, above the floor. */
  readonly meter: AssumedMm;
  /** A pipe along the skirting, above the floor. */
  readonly skirting: AssumedMm;
  /** Height offered by the key "off floor". */
  readonly offFloorMm: number;
  /** A partition, until it is measured. */
  readonly wallThicknessMm: number;
  /** Centre of a pipe off the face of the wall it is clipped to. */
  readonly standOffMm: number;
  /** By service: how far a drain goes straight down from the tail it starts at, before it turns. */
  readonly underTailMm?: Readonly<Record<string, number>>;
  /** Size of an opening of each kind, until one of that kind has been drawn; where not told, the first one is dragged. */
  readonly openings?: Readonly<Partial<Record<InHand['openingKind'], OpeningSize>>>;
  /** Joists nobody has seen, and the sizes offered as keys; where they are left out nothing is asked of joists. */
  readonly joists?: AssumedJoists;
  readonly voidChoices?: VoidChoices;
}

export interface OpeningSize {
  readonly widthMm: number;
  readonly sillMm: number;
  readonly headMm: number;
}

export type Outcome =
  | { readonly ok: true; readonly made: readonly string[] }
  | { readonly ok: false; readonly why: string };

/** Inverse and forward patches of one step, as they are stored. */
export interface HistoryEntry {
  readonly label: string;
  readonly patches: readonly unknown[];
  readonly inverse: readonly unknown[];
  readonly storey: string | null;
  readonly selectionBefore: readonly Selected[];
  readonly selectionAfter?: readonly Selected[];
}

export interface Editor {
  readonly store: StoreApi<EditorState>;
  readonly assumptions: Assumptions;
  /** Runs a command by id: one step of undo. A refusal changes nothing and says why in words. */
  run(command: string, args: unknown): Outcome;
  /** The plan as a command would leave it; null where it would refuse. Nothing is kept of it, ids neither. */
  preview(command: string, args: unknown): Plan | null;
  /** Shows something half made from outside the tools (a run told in words); null takes it away. */
  showDraft(draft: Draft | null): void;
  undo(): Outcome;
  redo(): Outcome;
  select(what: readonly Selected[]): void;
  setTool(tool: string): void;
  setInHand(change: Partial<InHand>): void;
  setCase(chosen: Case): void;
  setStorey(storey: string): void;
  /** Folds a wall side up as the second pane; null folds it down. */
  foldUp(face: { wall: string; side: 'left' | 'right' } | null): void;
  setActivePane(pane: 'plan' | 'face'): void;
  resizePane(pane: 'plan' | 'face', width: number, height: number): void;
  /** Told by the view each time the labels of a pane are placed. */
  placeFigures(pane: 'plan' | 'face', figures: readonly PlacedFigure[]): void;
  setCamera(pane: 'plan' | 'face', camera: Camera): void;
  zoomToFit(): void;
  showPlace(at: Xyz, storey: string): void;
  pointer(event: PointerInput): void;
  wheel(event: WheelInput): void;
  /** The cross of the keys stands at a place of the house, once the drawing has the focus. */
  pointAt(at: Xyz): void;
  /** True when the key did something here. */
  key(event: KeyInput): boolean;
  cancel(): void;
  /** Space bar: while held, a drag of the mouse pans. */
  holdToPan(held: boolean): void;
  /** Gloves make every touch coarser. */
  setGloves(on: boolean): void;
  /** The keys that are pressed from here on; `signs` false: bare letters mean something only on the drawing itself. */
  setKeys(keys: readonly KeyBinding[], signs: boolean): void;
  /** Who draws where there is a pen. */
  setPenUse(use: PenUse): void;
  gesture(): GestureState;
  /** The window lost the pointer. */
  blur(): void;
  setReadOnly(why: string | null): void;
  /** Called after every change of the plan, with the step that made it. */
  onCommit(listener: (entry: HistoryEntry, kind: 'do' | 'undo' | 'redo', revision: number) => void): () => void;
  /** Puts back a plan and its history as they were stored. */
  restore(plan: Plan, undo: readonly HistoryEntry[], redo: readonly HistoryEntry[]): void;
}
