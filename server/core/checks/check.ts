/**
 * What a check is. One check is one file under `checks/`: metadata, a pure function from its input to structured
 * findings, wording, and where possible a fix. `registry.ts` lists them, `run.ts` runs them.
 */
import type { Frame, Pointer } from "../frame/frame.ts";
import type { Model } from "../model/model.ts";
import type { Results } from "../results.ts";
import type { Say } from "./say.ts";
import type { Shared } from "./shared.ts";
import type { SourceFacts } from "./source-facts.ts";

/** error: cannot be built or is unsafe by the stated rule; warning: short of a rule or of good practice; note: worth knowing. */
export type Level = "error" | "warning" | "note";

export type Area =
  | "file"
  | "geometry"
  | "timber"
  | "loads"
  | "members"
  | "joinery"
  | "ground"
  | "roof"
  | "raising";

/** How well the rule behind a check or a value is known. */
export type SourceStatus = "published" | "derived" | "memory" | "common-practice" | "file-format";

export interface CheckMeta {
  /** stable kebab-case name; what tests, settings, fixes and `accept` use */
  readonly id: string;
  readonly title: string;
  /** the usual level; a single finding may be milder or graver */
  readonly level: Level;
  readonly area: Area;
  readonly source: { readonly text: string; readonly status: SourceStatus };
  /** for `bentwright explain` and the generated reference, in plain sentences */
  readonly explanation: {
    readonly what: string;
    readonly why: string;
    readonly formula?: string;
    readonly remedy: string;
  };
}

/** What a check may look at. */
export interface CheckInputs {
  readonly source: SourceFacts;
  readonly frame: Frame;
  readonly model: Model;
  readonly results: Results;
  /** how it is written and what it means: for the few rules that look at both */
  readonly whole: { readonly source: SourceFacts; readonly model: Model };
  /** of the results: what more than one check asks */
  readonly shared: Shared;
}

export type Unit = "in" | "lb" | "psi" | "psf" | "deg" | "ratio" | "count";

/** UTF-16 offsets in the text of the file, `end` exclusive. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** One place where a check fires, before it is worded. `D` holds the facts that the wording needs. */
export interface Found<D> {
  readonly path: Pointer;
  /** point at the key instead of the value */
  readonly onKey?: true;
  /** findings on one path are folded into one; different words here keep them apart */
  readonly apart?: string;
  /** UTF-16 offsets in the file, for what has no path of its own; goes before `path` */
  readonly span?: Span;
  /** UTF-16 range inside the scalar's text at `path`, where only a part of it is wrong */
  readonly part?: { readonly from: number; readonly to: number };
  readonly level?: Level;
  readonly data: D;
  /** the number, its limit and their unit, where there is one */
  readonly value?: number;
  readonly limit?: number;
  readonly unit?: Unit;
  /** how bad: findings on one path are shown once, the worst first; larger is worse */
  readonly severity?: number;
  /** the words count the places already */
  readonly counted?: true;
  /** the stick, joint place or pier it is about: `tie@2`, `post-head@A1` */
  readonly place?: string;
  readonly related?: readonly { readonly path: Pointer; readonly message: (say: Say) => string }[];
}

/** A change of the file: set the value at `path` to `text` (written as is), or add a key. */
export type Edit =
  | { readonly kind: "replace"; readonly path: Pointer; readonly text: string }
  | { readonly kind: "rename-key"; readonly path: Pointer; readonly text: string }
  | { readonly kind: "add"; readonly path: Pointer; readonly key: string; readonly text: string }
  /** replace characters of the file itself, by offset: only for findings about the writing, not the frame */
  | { readonly kind: "characters"; readonly start: number; readonly end: number; readonly text: string };

export interface Fix {
  readonly title: string;
  readonly edits: readonly Edit[];
}

export interface Check<I extends keyof CheckInputs, D> {
  readonly meta: CheckMeta;
  readonly input: I;
  /** it judges the frame as a whole: while a half-typed line leaves a part of it out, what it found before stays */
  readonly ofTheWhole?: true;
  find(input: CheckInputs[I]): Iterable<Found<D>>;
  /** what is wrong with numbers and units, why it matters, what to do */
  words(data: D, say: Say): string;
  /**
   * The formula with this case's numbers put in, each side between relations a sum that can be reckoned again:
   * `14 in ÷ 2 − 8 in ÷ 2 = 3 in ≥ 3 in`. Steps are divided by `; `, words and names belong before a colon, and every
   * number is the one that `find` used. Undefined where the numbers are not all there.
   */
  worked?(data: D, say: Say): string | undefined;
  /** computed on request only */
  fixes?(data: D, say: Say, input: CheckInputs[I]): readonly Fix[];
}

/** A finding as every reader gets it. */
export interface Finding {
  readonly check: string;
  readonly level: Level;
  readonly path: Pointer;
  readonly onKey: boolean;
  readonly span?: Span;
  readonly part?: { readonly from: number; readonly to: number };
  readonly message: string;
  readonly value?: number;
  readonly limit?: number;
  readonly unit?: Unit;
  /** all places it holds at, worst first */
  readonly places: readonly string[];
  readonly related: readonly { readonly path: Pointer; readonly message: string }[];
  /** set when the file accepts it, with the reason given there */
  readonly accepted?: string;
  /** the formula with this case's numbers, on request; left out by what has no check behind it */
  readonly worked?: () => string | undefined;
  readonly fixes: () => readonly Fix[];
}

/** Keeps the two type parameters of a check tied together where it is defined. */
export function defineCheck<I extends keyof CheckInputs, D>(check: Check<I, D>): Check<I, D> {
  return check;
}
