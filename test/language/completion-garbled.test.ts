/** Whatever a text has become, the list has an answer. */
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { completed } from "./completion-text.ts";

test("offsets all over every sample, whole and garbled, have an answer", () => {
  const texts = readdirSync("samples")
    .filter((name) => name.endsWith(".frame.yaml"))
    .map((name) => readFileSync(`samples/${name}`, "utf8"));
  let offered = 0;
  for (const [i, whole] of texts.entries()) {
    const third = Math.floor(whole.length / 3);
    const ways = [
      whole,
      whole.slice(0, third) + whole.slice(third + 37),
      whole.replace(/[}\]]/, "").replace(/"?\n/, '"\n'),
      whole.replaceAll(": ", " "),
    ];
    for (const [j, text] of ways.entries()) {
      for (let offset = i + j; offset <= text.length + 1; offset += j === 0 ? 41 : 307) {
        const { items } = completed(text, offset);
        for (const { label } of items) expect(label).not.toBe("");
        if (j === 0 && items.length > 0) offered++;
      }
    }
  }
  expect(offered).toBeGreaterThan(50);
});

test("a frame with anything cut out or put in", () => {
  const whole = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
  const put = [
    "",
    " ",
    "\n",
    "\n  ",
    ":",
    ",",
    "[",
    "{",
    '"',
    "#",
    "-",
    "8x",
    "A1",
    "&a",
    "*a",
    "\t",
    "😀",
    "zqx",
  ];
  fc.assert(
    fc.property(fc.nat(whole.length), fc.nat(60), fc.constantFrom(...put), (at, length, typed) => {
      const text = whole.slice(0, at) + typed + whole.slice(at + length);
      for (const item of completed(text, at + typed.length).items)
        expect(JSON.stringify(item)).not.toMatch(/NaN|undefined|\[object|Infinity|zqxzq/);
    }),
    { numRuns: 150 },
  );
});
