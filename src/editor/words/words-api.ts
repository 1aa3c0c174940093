import type { StoreApi } from 'zustand/vanilla';
import type { Direction } from './told-run.ts';

/**
 * Where the telling is: a service, a place to start, then the way; `class` asks how big what it ended at is. `told` is a
 * run that was kept or has come to its end.
 */
export type Phase = 'service' | 'from' | 'route' | 'class' | 'told';

/** One told word, read back from the document. `stepIndex` counts the legs of the run; null for service, start and end. */
export interface Chip {
  readonly id: string;
  readonly kind: 'service' | 'from' | 'step' | 'to' | 'class';
  /** "up", "left"; empty where the value says it all. */
  readonly label: string;
  /** "4200", "to void", "Gas meter". */
  readonly value: string;
  /** Something in it was taken for granted. */
  readonly assumed: boolean;
  readonly stepIndex: number | null;
  /** Being told, and not in the document yet. */
  readonly pending: boolean;
}

export interface WordKey {
  readonly id: string;
  readonly label: string;
  readonly group: 'service' | 'from' | 'direction' | 'height' | 'digit' | 'end' | 'class' | 'edit';
}

export interface WordsState {
  readonly phase: Phase;
  readonly service: string | null;
  /** The tail it starts at. */
  readonly tail: { readonly point: string; readonly connection: string } | null;
  /** The node a branch starts at, before its first leg. */
  readonly branchAt: string | null;
  /** The run being told; null before its first leg. */
  readonly run: string | null;
  /** A leg whose way is told and whose length is being told. */
  readonly pending: {
    readonly dir: Exclude<Direction, 'own angle'>;
    readonly typed: string;
    /** Turn to the told side in degrees, where it is not a right angle. */
    readonly turnDeg?: number;
  } | null;
  /** A told leg that is being told again. */
  readonly changing: { readonly step: number; readonly typed: string } | null;
  /** Runs that wait while a branch off them is told. */
  readonly waiting: readonly string[];
}

/** A run told in words. The document holds all of it but the digits of one leg, so nothing is lost on a reload. */
export interface Words {
  readonly store: StoreApi<WordsState>;
  /** False where the key means nothing now. A refusal is said by the editor. */
  press(key: string): boolean;
  /** What the pad offers now, in its order. */
  keys(): readonly WordKey[];
  chips(): readonly Chip[];
  /** Tells a step, or the class of what the run ended at, again; `keep` or a height word ends it. */
  retype(step: number | 'class'): boolean;
  /** Goes on with a run that is in the document; null starts a new one. False where it cannot be told. */
  resume(run: string | null): boolean;
  dispose(): void;
}
