/** Which documents are frames, and how they are told apart from other YAML. */
import { languages, type TextDocument, type Uri } from "vscode";

/** The language of frames, as package.json names it. */
export const LANGUAGE = "bentwright-frame";
const PATTERN = "**/*.frame.{yaml,yml}";
/** Where a document that is edited comes from. */
export const SCHEMES: readonly string[] = ["file", "untitled"];

/**
 * Frames by language and also by name: a user may have told the editor that these files are plain YAML,
 * and loses nothing by it. Other schemes (the old side of a comparison) are left alone: findings there cannot be mended.
 */
export const FRAME_SELECTOR: ({ scheme: string; language: string } | { scheme: string; pattern: string })[] =
  SCHEMES.flatMap((scheme) => [
    { scheme, language: LANGUAGE },
    { scheme, pattern: PATTERN },
  ]);

/** True where our server looks after the document. */
export function isFrame(document: TextDocument): boolean {
  return languages.match(FRAME_SELECTOR, document) > 0;
}

/** The last part of a document's path, for titles. */
export function fileName(uri: Uri): string {
  return uri.path.slice(uri.path.lastIndexOf("/") + 1);
}
