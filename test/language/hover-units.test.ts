/** Everything that hovers say of a file in millimetres is in its own units. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { createFrameService } from "../../server/language/frame-service.ts";
import { hoverAt } from "../../server/language/hover.ts";

const text = readFileSync(new URL("../../samples/kayak-shelter.frame.yaml", import.meta.url), "utf8");

/** Every hover of the file once, the mouse resting on each word. */
function hovers(): string[] {
  const snapshot = createFrameService().open("file:///kayak.frame.yaml", 1, text);
  const found = text.split("\n").flatMap((line, at) =>
    [...line.matchAll(/[A-Za-z0-9][^\s:,[\]{}]*/g)].map(({ index }) => {
      const hover = hoverAt(snapshot, { line: at, character: index + 1 });
      return hover?.contents.value ?? "";
    }),
  );
  return [...new Set(found)];
}

/** What is worked out: tables, and sentences about loads; descriptions of keys name both systems. A length in both is fine. */
const workedOut = (hover: string): string[] =>
  hover
    .split("\n")
    .filter((line) => /^(\| |Used to|\S+@\S+ )/.test(line))
    .map((line) => line.replace(/\d mm \([^)]*\)/g, ""));

test("no inch, foot, pound or mile in what is worked out", () => {
  const lines = hovers().flatMap(workedOut);
  expect(lines.length).toBeGreaterThan(300);
  const foreign = lines.filter((line) => /\d ?(in|in²|ft|ft²|psf|psi|lb|mph)\b|\d'-\d|°F/.test(line));
  expect(foreign).toEqual([]);
});
