/** The roof of a frame as it is written; see `frame.ts` for the units. */
import type { Length } from "../quantity/length.ts";
import type { Fasteners } from "./fasteners.ts";
import type { PegSpec, Pointer, Ref, Section } from "./frame.ts";
import type { Measured } from "./measured.ts";

/** Whether rafters with such heads meet at the peak, without a ridge between them. */
export function meetAtPeak(head: { readonly kind: string } | undefined): boolean {
  return head?.kind === "bridle" || head?.kind === "lapped";
}

export interface Roof {
  readonly path: Pointer;
  readonly kind: "gable" | "shed";
  /** rise over run; exact as written (7:12 → rise 7, run 12) */
  readonly pitch: { readonly rise: number; readonly run: number } | undefined;
  /** shed: the wall whose plate is higher */
  readonly high: Ref | undefined;
  readonly rafters:
    | {
        readonly path: Pointer;
        readonly section: Section | undefined;
        readonly timber: Ref | undefined;
        readonly spacing: Length | undefined;
        readonly count: number | undefined;
        readonly layout: "even" | "fixed";
        readonly seat: {
          readonly path: Pointer;
          readonly kind: "birds-mouth" | "step-lap";
          /** level, from the plate's outside face to where the rafter's underside meets its top */
          readonly seat: Length | undefined;
          /** step-lap: plumb depth of the step in the plate, and how it stands */
          readonly housing?: Length;
          readonly form?: "plumb" | "square";
          readonly rule?: "scribe";
        };
        readonly head:
          | {
              readonly path: Pointer;
              readonly kind: "housed" | "birds-mouth" | "bridle" | "lapped";
              readonly into: Ref | undefined;
              readonly housing: Length | undefined;
              readonly rule?: "scribe";
              /** of a bridle or lap */
              readonly pegs: PegSpec | undefined;
              /** what holds each in the ridge */
              readonly fasten: Fasteners | "unread" | undefined;
            }
          | undefined;
        readonly overhang: {
          readonly path: Pointer;
          readonly eave: Length;
          readonly rake: Length | undefined;
          readonly high: Length;
        };
        /** what holds each on its seats; undefined = the file does not say */
        readonly fasten: Fasteners | "unread" | undefined;
        /** what the real sticks measure; left out where none is measured */
        readonly measured?: readonly Measured[];
      }
    | undefined;
  readonly deck:
    | {
        readonly path: Pointer;
        readonly kind: "boards" | "panels" | "purlins";
        readonly thickness: Length | undefined;
        readonly spacing: Length | undefined;
        /** how boards lie: straight across the rafters, or at 45° to them */
        readonly laid: "across" | "diagonal";
      }
    | undefined;
  readonly covering:
    | {
        readonly path: Pointer;
        readonly kind: CoveringKind;
        readonly coverage: Length | undefined;
        readonly weight: number | undefined;
      }
    | undefined;
  /** a deck or a covering is written, and cannot be read */
  readonly unclear: boolean;
  /** what lines the rafters below; undefined = the file does not say */
  readonly ceiling:
    | { readonly path: Pointer; readonly kind: CeilingKind; readonly weight: number | undefined }
    | undefined;
}

export type CeilingKind = "plaster" | "plasterboard" | "boards" | "none";

export type CoveringKind =
  | "standing-seam"
  | "ribbed-steel"
  | "corrugated-steel"
  | "asphalt-shingles"
  | "wood-shingles"
  | "wood-shakes"
  | "slate"
  | "clay-tile"
  | "roll-roofing";

/** Whether a deck braces the plane of its roof: structural panels and diagonal boards do, boards across the rafters do not. */
export function bracesRoofPlane(roof: Roof | undefined): boolean {
  const deck = roof?.deck;
  return deck?.kind === "panels" || (deck?.kind === "boards" && deck.laid === "diagonal");
}
