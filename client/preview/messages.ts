/** What the panel and the page inside it say to each other. */

/** Panel → page. */
export type ToPage =
  | {
      readonly kind: "drawing";
      /** the document drawn, as text; the page keeps it to be found again after a reload */
      readonly uri: string;
      /** null when nothing could be drawn so far */
      readonly svg: string | null;
      readonly view: string;
      readonly views: readonly { readonly id: string; readonly title: string }[];
      /** why the drawing is older than the text; empty when it is not */
      readonly stale: string;
    }
  | { readonly kind: "highlight"; readonly ids: readonly string[] };

/** Page → panel. */
export type FromPage =
  | { readonly kind: "ready"; readonly view: string }
  | { readonly kind: "view"; readonly view: string }
  /** the user chose something drawn */
  | { readonly kind: "pick"; readonly path: string };

/** Kept by the editor over reloads. */
export interface PageState {
  readonly uri: string;
  /** the view the user asked for; empty until they do */
  readonly view: string;
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
