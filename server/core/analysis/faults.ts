/**
 * Everything that can keep the analysis from an answer, as data: it never throws, and never returns a figure it does
 * not trust. Wording for the reader is made elsewhere.
 */

/** Kinds that concern the input. */
export type InputFaultKind =
  /** A number is missing, not finite, or not positive where it must be. */
  | "bad-number"
  | "unknown-node"
  | "unknown-element"
  | "repeated-id"
  /** The ends of a stick coincide. */
  | "no-length"
  /** `ydir` runs along the stick, or a link has no direction. */
  | "bad-direction"
  /** The points of a link do not lie on one line along its direction, so that its two forces would turn the frame. */
  | "askew"
  /** Support axes that are not three orthogonal unit vectors. */
  | "bad-axes"
  | "repeated-support"
  /** A load lies beyond the ends of its stick, or starts after its end. */
  | "load-outside"
  /** A settlement for a motion that no support holds. */
  | "not-held"
  /** A torque on a stick that carries force along its length only. */
  | "torque-on-bar"
  | "no-nodes";

export interface InputFault {
  readonly kind: InputFaultKind;
  /** What the fault is in. */
  readonly in: "structure" | "node" | "element" | "link" | "support" | "load-case";
  /** Id of that thing, or its place in the list where it has none. */
  readonly id: string;
  /** The key or the figure at fault. */
  readonly detail: string;
}

/** A way in which the frame, or a part of it, moves without resistance. */
export interface Mode {
  /** Motion of every node that moves, global axes, the largest translation (or rotation) being 1. */
  readonly nodes: readonly {
    readonly node: number;
    readonly id: string;
    readonly motion: readonly number[];
  }[];
  /** Ids of the sticks with an end that shifts; for a stick loose between its own releases, that stick. */
  readonly elements: readonly string[];
  /** Direction in which most of it goes, unit vector (zero when nothing shifts). */
  readonly direction: readonly [number, number, number];
  /** True when the loads of the case push along it; false when it is free but not pushed. */
  readonly driven: boolean;
}

/** Why a case has no answer, or an answer with a warning. */
export type CaseFault =
  | { readonly kind: "input"; readonly fault: InputFault }
  /** It moves without resistance; for a one-way frame, after `dropped` let go. */
  | { readonly kind: "mechanism"; readonly modes: readonly Mode[]; readonly dropped: readonly string[] }
  /** Forces are in balance, but the members named rest at zero force: without them it would move as `modes` say. */
  | { readonly kind: "slack"; readonly modes: readonly Mode[]; readonly members: readonly string[] }
  /** No set of one-way members in action agrees with their forces within the number of tries. */
  | { readonly kind: "unsettled"; readonly tries: number; readonly members: readonly string[] }
  /** The forces found do not balance within the tolerance: stiffnesses too far apart, or a near mechanism. */
  | {
      readonly kind: "inaccurate";
      readonly residual: number;
      readonly tolerance: number;
      readonly node: string;
    };
