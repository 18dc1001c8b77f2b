/** What the server and our client say to each other beyond LSP. Types only: the client imports nothing else of the server. */

/** What a client tells of itself when it starts the server (`initializationOptions`). */
export interface StartOptions {
  /** its hovers show pictures that stand as data in their Markdown */
  readonly pictures?: boolean;
  /** it opens `bentwright-page:` links, asking for their text by `PAGE_REQUEST` */
  readonly pages?: boolean;
  /** it asks for the reason when a finding is to be accepted (the command `bentwright.acceptFinding`) */
  readonly accepts?: boolean;
  /** its command that shows the list of completions, run after a key has been put in */
  readonly suggestAgain?: string;
  /** its language's words for ours, by the English pattern; left out where it shows English */
  readonly words?: Readonly<Record<string, string>>;
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

/** Client → server request: what "New Frame" asks, in order. Answered with `readonly NewFrameQuestion[]`. */
export const NEW_FRAME_QUESTIONS_REQUEST = "bentwright/newFrame/questions";

export interface NewFrameQuestionsParams {
  readonly units: "inch" | "mm";
  /** what is answered already: usual answers may go by it */
  readonly answers?: NewFrameAnswers;
}

/** One thing that only the builder knows. */
export interface NewFrameQuestion {
  readonly id: string;
  readonly title: string;
  /** what is asked, in a plain sentence */
  readonly sentence: string;
  /** left out where the answer is typed */
  readonly choices?: readonly NewFrameChoice[];
  /** an answer that is never refused where the former ones are usual */
  readonly default: string;
  /** whether {@link NEW_FRAME_UNKNOWN} is an answer too */
  readonly mayBeUnknown: boolean;
}

export interface NewFrameChoice {
  readonly value: string;
  readonly label: string;
  readonly detail?: string;
}

/** The answer "I don't know yet". */
export const NEW_FRAME_UNKNOWN = "unknown";

/** Client → server request: why an answer is refused, in words; null where it is taken. */
export const NEW_FRAME_REFUSAL_REQUEST = "bentwright/newFrame/refusal";

/** Answers by the id of their question, and the `units` of the file: `inch` (the usual) or `mm`. */
export type NewFrameAnswers = Readonly<Record<string, string>>;

export interface NewFrameRefusalParams {
  readonly id: string;
  readonly answer: string;
  /** those given before */
  readonly answers: NewFrameAnswers;
}

/** Client → server request: the file that the answers make; those left out take their defaults. */
export const NEW_FRAME_WRITE_REQUEST = "bentwright/newFrame/write";

export interface NewFrameWriteParams {
  readonly answers: NewFrameAnswers;
}

export type NewFrameWriteResult =
  | { readonly text: string }
  /** the question whose answer stands in the way, why, and what would help */
  | { readonly question: string; readonly why: string; readonly help: string };

/** Client → server request: the page that a diagnostic's link leads to, as Markdown. */
export const PAGE_REQUEST = "bentwright/page";

export interface PageParams {
  /** query of the link, decoded */
  readonly query: string;
}

export interface PageResult {
  readonly markdown: string;
  /** the document whose finding it shows: with its next check the page may read differently */
  readonly uri: string | null;
}

/** Client → server request: the edit that accepts a finding with the reason that the user wrote. */
export const ACCEPT_REQUEST = "bentwright/accept";

export interface AcceptParams {
  /** the first argument of `bentwright.acceptFinding`, as the server gave it */
  readonly finding: unknown;
  readonly because: string;
}

export interface AcceptResult {
  /** the document to change, and what to write, in order */
  readonly uri: string;
  readonly edits: readonly { readonly range: LocateResult; readonly newText: string }[];
  /** why nothing is written, for the user to read; empty otherwise */
  readonly refused: string;
}
