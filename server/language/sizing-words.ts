/** What "size this timber" is called, and what it says when there is no such size. */
import type { Say } from "../core/checks/say.ts";
import type { Candidate } from "../core/sizing/candidates.ts";
import { MOST_ANALYSES, type Sizing } from "../core/sizing/size-timber.ts";

/** Before it is worked out. */
export function sizeThisWords(entry: string, say: Say): string {
  return say.text("Size this timber: find the smallest {entry} that passes", { entry });
}

/** `Make rafter 4 × 8 in: smallest that passes` */
export function sizedWords(
  { entry, to, smallest, leaves }: Extract<Sizing, { kind: "sized" }>,
  say: Say,
): string {
  const facts = { entry: entry.name, size: sizeWords(to), checks: say.list(leaves) };
  if (leaves.length > 0)
    return smallest
      ? say.text("Make {entry} {size}: smallest that mends this, though not {checks}", facts)
      : say.text("Make {entry} {size}: mends this, though not {checks}", facts);
  return smallest
    ? say.text("Make {entry} {size}: smallest that passes", facts)
    : say.text("Make {entry} {size}: passes", facts);
}

/** Why there is none, in a sentence without a point. */
export function noSizeWords(
  { entry, because, largest, by }: Extract<Sizing, { kind: "none" }>,
  say: Say,
): string {
  const facts = {
    entry: entry.name,
    largest: largest ? sizeWords(largest) : "",
    checks: say.list([...new Set(by.map((f) => f.check))]),
    most: MOST_ANALYSES,
  };
  switch (because) {
    case "none-larger":
      return say.text("No usual section is larger than this {entry} and within the logs", facts);
    case "too-weak":
      return say.text("No usual section of {entry} up to {largest} is enough", facts);
    case "spoils":
      return say.text("A {entry} that is large enough would still be refused: {checks}", facts);
    case "gave-up":
      return say.text("No section of {entry} passed in {most} analyses of the frame", facts);
  }
}

/** `4 × 8 in`, `2 × 8 nominal`, `150 × 225 mm` */
function sizeWords({ text, series }: Candidate): string {
  const size = text.replace(/ ?x ?/, " × ");
  const unit = series === "nominal" ? "nominal" : series === "full-inch" ? "in" : "mm";
  return /[a-z]$/.test(size) ? size : `${size} ${unit}`;
}
