/** A place where links meet. Where `headM` is told it is held there and whatever flow that takes comes or goes. */
export interface NetNode {
  readonly id: string;
  /** Held head, metres of the water that flows. */
  readonly headM?: number;
  /** Drawn off, l/s; below zero for what is fed in. */
  readonly demandLPerS?: number;
}

/** Lifts by h0 - r q² from `from` to `to`: metres, and metres at 1 l/s squared. Backward flow is held against by h0 + r q². */
export interface NetPump {
  readonly h0M: number;
  readonly r: number;
}

/** A tube between two nodes; its flow is counted from `from` to `to`. */
export interface NetLink {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly lengthM: number;
  readonly boreMm: number;
  readonly roughnessMm: number;
  /** Fittings, in velocity heads. */
  readonly k: number;
  readonly pump?: NetPump;
}

export interface HydraulicNet {
  readonly nodes: readonly NetNode[];
  readonly links: readonly NetLink[];
  /** Temperature of the water, degrees. */
  readonly tC: number;
}

/** What the sum may be done with instead of the tables: another law of friction, another fluid, another gravity. */
export interface NetMethod {
  /** Darcy factor from Reynolds number (at least 1) and roughness over bore, for the link of that id. */
  readonly friction?: (re: number, relRoughness: number, link: string) => number;
  /** m2/s. */
  readonly viscosityM2PerS?: number;
  /** m/s2. */
  readonly gravity?: number;
}

export type Solved =
  | {
      readonly ok: true;
      /** By link, from `from` to `to`. */
      readonly flowLPerS: ReadonlyMap<string, number>;
      readonly headM: ReadonlyMap<string, number>;
      /** Turns taken by what has rings; a tree fed from one place takes none. */
      readonly iterations: number;
      /** Links visited and entries eliminated in all: what the sum cost, told without a clock. */
      readonly work: number;
    }
  | { readonly ok: false; readonly why: string };
