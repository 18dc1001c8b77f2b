/** What a size is called once it is found. */
import { expect, test } from "vitest";
import { makeSay } from "../../server/core/checks/speak.ts";
import type { Sizing } from "../../server/core/sizing/size-timber.ts";
import { sizedWords } from "../../server/language/sizing-words.ts";

type Sized = Extract<Sizing, { kind: "sized" }>;

const words = (smallest: boolean, leaves: readonly string[]): string =>
  sizedWords(
    {
      kind: "sized",
      entry: { name: "tie" },
      to: { text: "7x10", series: "full-inch" },
      smallest,
      leaves,
    } as unknown as Sized,
    makeSay("inch"),
  );

test("only a search that went to its end names the smallest, whatever the size leaves", () => {
  expect(words(true, [])).toBe("Make tie 7 × 10 in: smallest that passes");
  expect(words(false, [])).toBe("Make tie 7 × 10 in: passes");
  expect(words(true, ["peg-overloaded"])).toBe(
    "Make tie 7 × 10 in: smallest that mends this, though not peg-overloaded",
  );
  expect(words(false, ["peg-overloaded"])).toBe("Make tie 7 × 10 in: mends this, though not peg-overloaded");
});
