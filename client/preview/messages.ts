/** What the panel and the page inside it say to each other. */
import type { Choice } from "../../server/protocol.ts";

/** What the user asked to see; each is empty until they do. */
export interface Wanted {
  readonly view: string;
  readonly layer: string;
  /** a load combination */
  readonly case: string;
}

/** Panel → page. */
export type ToPage =
  | {
      readonly kind: "drawing";
      /** the document drawn, as text; the page keeps it to be found again after a reload */
      readonly uri: string;
      /** null when nothing could be drawn so far */
      readonly svg: string | null;
      readonly view: string;
      readonly views: readonly Choice[];
      /** the layer of forces drawn, `none` among them, and the load combination */
      readonly layer: string;
      readonly layers: readonly Choice[];
      readonly case: string;
      readonly cases: readonly Choice[];
      /** why the drawing is older than the text; empty when it is not */
      readonly stale: string;
    }
  | { readonly kind: "highlight"; readonly ids: readonly string[] }
  /** a joint to be shown larger beneath the elevation; null to take it away */
  | { readonly kind: "joint"; readonly joint: { readonly title: string; readonly svg: string } | null };

/** Page → panel. */
export type FromPage =
  | ({ readonly kind: "ready" } & Wanted)
  | ({ readonly kind: "view" } & Wanted)
  /** the user chose something drawn; `joint` is its id where it is a joint */
  | { readonly kind: "pick"; readonly path: string; readonly joint?: string }
  /** the user closed the drawing of a joint */
  | { readonly kind: "close-joint" };

/** Kept by the editor over reloads. */
export interface PageState extends Wanted {
  readonly uri: string;
  /** where each view was zoomed and moved to; a view that shows all of its drawing has none */
  readonly places: Readonly<Record<string, Place>>;
}

/** The point of the drawing in the middle of the page, and how large it is drawn. */
export interface Place {
  /** drawing units */
  readonly x: number;
  readonly y: number;
  /** CSS pixels to a drawing unit */
  readonly scale: number;
}
