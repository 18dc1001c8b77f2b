/** What the server and our client say to each other beyond LSP. Types only: the client imports nothing else of the server. */

/** What a client tells of itself when it starts the server (`initializationOptions`). */
export interface StartOptions {
  /** its hovers show pictures that stand as data in their Markdown */
  readonly pictures?: boolean;
  /** its command that shows the list of completions, run after a key has been put in */
  readonly suggestAgain?: string;
}

/** Client → server request: the drawing of an open document. */
export const DRAWING_REQUEST = "bentwright/drawing";

export interface DrawingParams {
  readonly uri: string;
  /** `front`, `side`, a wall or a bent */
  readonly view: string;
  /** forces drawn over it: `axial`, `shear`, `moment`, `deflected`; `none`, or left out, for none */
  readonly layer?: string;
  /** id of a load combination, or `worst`; one that there is not gives dead load with balanced snow */
  readonly case?: string;
}

/** Something to choose from: its id, and plain words for it. */
export interface Choice {
  readonly id: string;
  readonly title: string;
}

export interface DrawingResult {
  /** SVG text of the last version that could be drawn, or null when there is none yet */
  readonly svg: string | null;
  /** document version the drawing was made from */
  readonly version: number;
  /** true when the newest text could not be drawn and an older drawing is shown */
  readonly stale: boolean;
  /** views that this frame has, in order, with plain titles */
  readonly views: readonly Choice[];
  /** the view drawn (the asked one, or the first where that does not exist) */
  readonly view: string;
  /** layers of forces, `none` first */
  readonly layers: readonly Choice[];
  /** the layer drawn */
  readonly layer: string;
  /** load combinations worth a look in this layer, those that govern first; none without a layer */
  readonly cases: readonly Choice[];
  /** the combination drawn; empty without a layer */
  readonly case: string;
}

/** Server → client notification: a document has new findings and perhaps a new drawing. */
export const CHECKED_NOTIFICATION = "bentwright/checked";

export interface CheckedParams {
  readonly uri: string;
  readonly version: number;
  readonly errors: number;
  readonly warnings: number;
  readonly notes: number;
  /** milliseconds from text to findings */
  readonly milliseconds: number;
}

/** Client → server request: where in the text the thing drawn stands. */
export const LOCATE_REQUEST = "bentwright/locate";

export interface LocateParams {
  readonly uri: string;
  readonly path: string;
}

export interface LocateResult {
  readonly start: { readonly line: number; readonly character: number };
  readonly end: { readonly line: number; readonly character: number };
}

/** Client → server request: the ids of what the cursor stands on, to light them in the drawing. */
export const AT_CURSOR_REQUEST = "bentwright/at-cursor";

export interface AtCursorParams {
  readonly uri: string;
  readonly position: { readonly line: number; readonly character: number };
}

export interface AtCursorResult {
  /** `data-id`s */
  readonly ids: readonly string[];
  /** where the cursor stands on a joint's entry: the place of it that is worth a drawing of its own */
  readonly joint?: string;
}

/** Client → server request: the drawing of one joint of an open document. */
export const JOINT_DRAWING_REQUEST = "bentwright/joint-drawing";

export interface JointDrawingParams {
  readonly uri: string;
  /** `post-head@A1` */
  readonly id: string;
}

/** Null where the newest frame that can be drawn has no such joint. */
export interface JointDrawingResult {
  readonly id: string;
  readonly title: string;
  /** SVG text with classes only */
  readonly svg: string;
}
