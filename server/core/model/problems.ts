/** What placement could not settle, as structured facts; the checks of geometry and joinery word them. */
import type { JointKindName, Pointer } from "../frame/frame.ts";
import type { Unfit } from "../joinery/joint.ts";

export type ModelProblem =
  | {
      readonly kind: "unknown-id";
      readonly path: Pointer;
      readonly text: string;
      readonly sort: IdSort;
      readonly known: readonly string[];
    }
  | { readonly kind: "duplicate-id"; readonly path: Pointer; readonly name: string; readonly first: Pointer }
  /** placement needs a value that the file does not give */
  | {
      readonly kind: "placement-missing";
      readonly path: Pointer;
      readonly member: string;
      readonly needs: readonly string[];
    }
  | { readonly kind: "placement-circular"; readonly path: Pointer; readonly chain: readonly string[] }
  /** a timber without length: its ends are at or past each other */
  | { readonly kind: "no-length"; readonly path: Pointer; readonly stick: string; readonly length: number }
  /** a brace entry that fits at no corner */
  | {
      readonly kind: "brace-nowhere";
      readonly path: Pointer;
      readonly member: string;
      readonly longest: number | undefined;
      readonly leg: number;
    }
  /** a joint entry whose timbers do not meet anywhere; `gap` is the least distance between them */
  | {
      readonly kind: "joint-apart";
      readonly path: Pointer;
      readonly joint: string;
      readonly of: string;
      readonly into: string;
      readonly gap: number | undefined;
      readonly nearest: readonly [string, string] | undefined;
      /** the timbers do meet, the other way round: the end of `into` in `of` */
      readonly reversed?: boolean;
    }
  /** a joint entry names timbers that do meet, where its kind cannot be cut */
  | {
      readonly kind: "kind-unfit";
      /** of the entry */
      readonly path: Pointer;
      readonly entry: string;
      readonly joint: JointKindName;
      /** the two sticks */
      readonly of: string;
      readonly into: string;
      readonly unfit: Unfit;
      /** the joint that is taken there instead, and its kind; undefined = nothing is cut */
      readonly place: string | undefined;
      readonly instead: JointKindName | undefined;
      /** kinds that can be cut there */
      readonly fits: readonly JointKindName[];
      /** the entry holds at another place */
      readonly holds: boolean;
    }
  /** two entries of equal standing claim the same place */
  | {
      readonly kind: "joint-twice";
      readonly path: Pointer;
      readonly other: Pointer;
      readonly place: string;
      readonly names: readonly [string, string];
    }
  /** a value typed where one is derived, and they differ */
  | {
      readonly kind: "derived-differs";
      readonly path: Pointer;
      readonly what: "pitch" | "pier-top";
      readonly typed: number;
      readonly derived: number;
      /** of a pitch: heights of the two plates where the rafters sit, and the level run between these seats, inches */
      readonly from?: { readonly high: number; readonly low: number; readonly run: number };
    }
  /** two readings are possible */
  | {
      readonly kind: "two-readings";
      readonly path: Pointer;
      readonly what: "ground" | "timber-class";
      readonly readings: readonly string[];
    };

export type IdSort =
  | "wall"
  | "bent"
  | "place"
  | "level"
  | "member"
  | "stick"
  | "timber-class"
  | "species"
  | "grade"
  | "joint"
  | "check"
  | "reference";
