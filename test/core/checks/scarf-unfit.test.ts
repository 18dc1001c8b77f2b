/** Scarfs that do not fit their timbers (geometry; a lap of twice the depth: common practice, no source). */
import { expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, fixed, idsOf, scarfed, spliced } from "./gate.ts";

const only = (text: string) =>
  findingsOf(text).flatMap(({ finding }) => (finding.check === "scarf-unfit" ? [finding] : []));

findingsFixture(
  "scarf-unfit: a lap of 24 in whose middle lies 6 in from the end of the plate",
  spliced(
    "17 ft 6 in",
    "bladed-scarf",
    "#@89-99 error scarf-unfit: The lap of plate-scarf@A.1 is 24 in long, and plate@A.2 ends 6 in from its middle: it runs out 6 in past that end and cannot be cut. Move the splice 6 in away from that end; it is drawn 12 in long here.",
  ),
  { only: ["error"] },
);

test("scarf-unfit: at 17 ft it fits, and the same from the other end", () => {
  expect(idsOf(spliced("17 ft", "bladed-scarf"))).not.toContain("scarf-unfit");
  expect(idsOf(spliced("12 in", "bladed-scarf"))).not.toContain("scarf-unfit");
  expect(only(spliced("6 in", "bladed-scarf"))[0]?.message).toContain("plate@A.1 ends 6 in from its middle");
});

test("scarf-unfit: a blade too thick becomes a quarter of the width (common practice, no source)", () => {
  const text = scarfed("9 ft", "bladed-scarf", ", blade: {thickness: 4 1/2 in}");
  expect(fixed(text, "scarf-unfit")).toContain("blade: {thickness: 2 in}");
});

test("scarf-unfit: a splayed scarf wants room for its undercut past the lap too (plane geometry)", () => {
  // lap of 36 in whose middle lies 12 in from the end, butts undercut by 1/2 in (common practice, no source): 18 + 1/2 − 12
  expect(only(spliced("17 ft", "stop-splayed-scarf"))[0]?.message).toContain(
    "it runs out 6 1/2 in past that end and cannot be cut. Move the splice 6 1/2 in away from that end",
  );
});

test("scarf-unfit: a lap that the file gives is what is wrong, and it is shortened to what fits", () => {
  const text = scarfed("15 ft", "half-lap-scarf", ", lap: 8 ft");
  const [found, ...others] = only(text);
  expect(others).toEqual([]);
  expect(found).toMatchObject({
    level: "error",
    path: "/joints/scarf/lap",
    value: 96,
    limit: 72,
    unit: "in",
  });
  expect(found?.message).toContain("Move the splice 12 in away from that end, or shorten the lap to 6'-0\"");
  expect(fixed(text, "scarf-unfit")).toContain("lap: 6'-0\"");
  // longer than the timber is: moving it does not help
  expect(only(scarfed("15 ft", "half-lap-scarf", ", lap: 20 ft"))[0]?.message).toContain(
    "cannot be cut. Shorten the lap to 6'-0\"",
  );
});

test.each([
  [
    "bladed-scarf",
    ", blade: {thickness: 8 in}",
    "error",
    "/joints/scarf/blade/thickness",
    "and the timber is 8 in wide: no wood is left",
  ],
  [
    "bladed-scarf",
    ", blade: {thickness: 4 1/2 in}",
    "warning",
    "/joints/scarf/blade/thickness",
    "more than 4 in, half of the timber’s width",
  ],
  [
    "bladed-scarf",
    ", blade: {length: 13 in}",
    "error",
    "/joints/scarf/blade/length",
    "13 in long, more than 12 in, half of the lap",
  ],
  [
    "stop-splayed-scarf",
    ", butt: 5 in",
    "error",
    "/joints/scarf/butt",
    "5 in deep, more than 4 in, half of the timber’s depth of 8 in",
  ],
  [
    "stop-splayed-scarf",
    ", lap: 2 in",
    "error",
    "/joints/scarf/lap",
    "alone take 2 1/4 in: it cannot be cut",
  ],
  [
    "half-lap-scarf",
    ", lap: 15 in",
    "warning",
    "/joints/scarf/lap",
    "less than 16 in, twice the timber’s depth of 8 in",
  ],
] as const)("scarf-unfit: %s%s", (kind, keys, level, path, words) => {
  const text = scarfed("9 ft", kind, keys);
  const [found, ...others] = only(text);
  expect(others).toEqual([]);
  expect(found).toMatchObject({ level, path });
  expect(found?.message).toContain(words);
  fixed(text, "scarf-unfit");
});

test.each([
  ["bladed-scarf", ", blade: {thickness: 4 in, length: 12 in}"],
  ["stop-splayed-scarf", ", lap: 16 in, butt: 4 in"],
  ["half-lap-scarf", ", lap: 16 in"],
])("scarf-unfit: %s%s is just enough", (kind, keys) =>
  expect(idsOf(scarfed("9 ft", kind, keys))).not.toContain("scarf-unfit"),
);

test("a short length that is scarfed on hangs on the long one, whichever of the two comes first", () => {
  for (const place of ["2 ft", "16 ft"]) {
    const ids = idsOf(spliced(place, "bladed-scarf"), true);
    expect(ids, place).not.toContain("end-unsupported");
    expect(ids, place).not.toContain("post-missing");
  }
});
