/** How well a value is known, in words. */
import type { ValueStatus } from "../../core/sourced.ts";

export const STATUS_WORDS: Readonly<Record<ValueStatus, string>> = {
  published: "published",
  derived: "worked out from published figures",
  memory: "remembered from the publication, not seen again",
  uncertain: "uncertain: look it up in the print",
  "common-practice": "common practice of the trade",
  given: "given in the file",
};
