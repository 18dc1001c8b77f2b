/** Decides whether a YAML file should be offered the language of frames: pure, so that it is tested without an editor. */

/** What the decision rests on. */
export interface OfferInput {
  /** the language that the editor shows the file in */
  readonly language: string;
  /** the file's first lines, or all of it */
  readonly text: string;
  /** our server looks after it already, by its name */
  readonly isFrame: boolean;
  /** it was offered in this session */
  readonly offered: boolean;
  /** the user does not want to be asked */
  readonly never: boolean;
}

/** More than any comment at the head of a frame is long. */
export const HEAD_LINES = 200;

const BEFORE_FIRST_KEY = /^(?:\s*(?:#.*)?|%.*|---\s*(?:#.*)?)$/;
const FRAME_KEY = /^(?:--- +)?(?:frame|"frame"|'frame')\s*:(?:\s|$)/;

/** True where a YAML file begins as a frame does and its user was not asked yet. */
export function shouldOffer({ language, text, isFrame, offered, never }: OfferInput): boolean {
  return language === "yaml" && !isFrame && !offered && !never && beginsAsFrame(text);
}

/** True where the first key of the file, after comments and marks of the document, is `frame:`. */
function beginsAsFrame(text: string): boolean {
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\r|\n/, HEAD_LINES);
  const first = lines.find((line) => !BEFORE_FIRST_KEY.test(line));
  return first !== undefined && FRAME_KEY.test(first);
}
