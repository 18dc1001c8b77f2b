/**
 * What `document/` noticed about the writing of a file, as structured facts; the checks of the area `file` word them.
 */
import type { Pointer } from "../frame/frame.ts";
import type { Dimension } from "../quantity/quantity.ts";

export type SourceFact =
  /** a scalar that should be a quantity cannot be read as one */
  | {
      readonly kind: "unreadable-quantity";
      readonly path: Pointer;
      readonly text: string;
      readonly dimension: Dimension;
      /** why it cannot be read, as a code of the quantity parser */
      readonly reason: string;
      /** where in the text reading stopped (UTF-16) */
      readonly at: number;
      readonly examples: readonly string[];
    }
  /** readable, but without sense: zero or negative size, far too large. `least` and `most` in inches for lengths and sections, else in the unit of the dimension (psf, psi, lb/ft³, lb, mph) */
  | {
      readonly kind: "value-out-of-range";
      readonly path: Pointer;
      readonly text: string;
      readonly least?: number;
      readonly most?: number;
      readonly dimension: Dimension;
    }
  | {
      readonly kind: "inch-section-in-mm";
      readonly path: Pointer;
      readonly text: string;
      readonly suggestion: string;
    }
  | {
      readonly kind: "unknown-key";
      readonly path: Pointer;
      readonly key: string;
      readonly nearest: string | undefined;
      readonly allowed: readonly string[];
    }
  | {
      readonly kind: "missing-key";
      readonly path: Pointer;
      readonly key: string;
      readonly example: string | undefined;
    }
  | {
      readonly kind: "wrong-value";
      /** it would do, but its list has it already */
      readonly twice?: true;
      readonly path: Pointer;
      readonly text: string;
      readonly allowed: readonly string[];
      readonly nearest: string | undefined;
    }
  | {
      readonly kind: "wrong-shape";
      readonly path: Pointer;
      readonly expected: string;
      readonly got: "map" | "list" | "text" | "nothing";
    }
  | {
      readonly kind: "duplicate-key";
      readonly path: Pointer;
      readonly key: string;
      readonly first: Pointer;
      readonly start: number;
      readonly end: number;
    }
  /** a key without value in an inline map; `proposals` are ways to write what was meant */
  | {
      readonly kind: "missing-separator";
      readonly path: Pointer;
      readonly start: number;
      readonly end: number;
      readonly written: string;
      readonly reason: "space" | "colon" | "comma" | "brackets" | "comma-number" | "hash" | "no-value";
      /** behind which the colon is missing, or before which the comma is */
      readonly key?: string;
      readonly proposals: readonly string[];
    }
  | { readonly kind: "unclosed-quote"; readonly start: number; readonly end: number; readonly quote: string }
  | {
      readonly kind: "unclosed-bracket";
      readonly start: number;
      readonly end: number;
      /** all of the line that are open, the outermost first: `{[` */
      readonly bracket: string;
      /** what has to be written where to close them */
      readonly closings: readonly { readonly at: number; readonly end: number; readonly text: string }[];
      /** the key that cannot be part of it any more, where there is one */
      readonly before?: string;
    }
  /** anything else YAML cannot read; `code` is its closed set of codes, `line` the 1-based line */
  | { readonly kind: "yaml"; readonly code: string; readonly start: number; readonly end: number }
  | { readonly kind: "directive"; readonly start: number; readonly end: number }
  | { readonly kind: "alias-limit"; readonly start: number; readonly end: number }
  | {
      readonly kind: "too-large";
      readonly size: number;
      readonly limit: number;
      readonly what: "characters" | "depth" | "entries";
    }
  | { readonly kind: "empty" }
  | { readonly kind: "not-a-frame"; readonly got: "list" | "text" };

/** Facts with `start`/`end` carry their own place in the text (UTF-16 offsets); the others are found by path. */
export interface SourceFacts {
  readonly facts: readonly SourceFact[];
}
