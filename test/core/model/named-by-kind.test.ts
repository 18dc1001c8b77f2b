/** A kind stands for all timbers of that kind wherever a timber is named, unless an entry is called so. */
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { readFrame } from "../../../server/document/read.ts";

function shed(change: (text: string) => string = (text) => text): ReturnType<typeof buildModel> {
  const text = `frame: Shed
format: 1
timber: {frame: {species: eastern-white-pine, grade: no-1}}
grid: {walls: {A: 0, B: 8 ft}, bents: {1: 0, 2: 8 ft}, levels: {pier-top: 6 in, high: 10 ft, low: 8 ft}}
members:
  high-post: {kind: post, section: 6x6, at: [A1, A2], from: pier-top, to: high-plate}
  low-post: {kind: post, section: 6x6, at: [B1, B2], from: pier-top, to: low-plate}
  high-plate: {kind: plate, section: 6x10, walls: [A], from: 1, to: 2, top: high}
  low-plate: {kind: plate, section: 6x8, walls: [B], from: 1, to: 2, top: low}
  knee: {kind: brace, section: 3x5, between: [high-post, high-plate], leg: 24 in}
  low-knee: {kind: brace, section: 3x5, between: [low-post, low-plate], leg: 24 in}
piers:
  all: {under: [high-post, low-post], kind: tube, diameter: 14 in, depth: 48 in}
`;
  return buildModel(readFrame(change(text)).frame);
}

const BY_NAME = shed();

/** Where each timber lies, whatever entry placed it. */
function places({ timbers }: ReturnType<typeof buildModel>): readonly string[] {
  return timbers.map(({ kind, origin, span }) => JSON.stringify([kind, origin, span])).sort();
}

function pierPlaces({ piers }: ReturnType<typeof buildModel>): readonly string[] {
  return piers.map(({ place, top }) => JSON.stringify([place.text, top])).sort();
}

describe("a kind where a timber is named", () => {
  test.each([
    ["in to", (t: string) => t.replace("to: high-plate", "to: plate").replace("to: low-plate", "to: plate")],
    [
      "in between",
      (t: string) => t.replace(/ {2}low-knee: .*\n/, "").replace("[high-post, high-plate]", "[post, plate]"),
    ],
    ["in under", (t: string) => t.replace("[high-post, low-post]", "post")],
    [
      "in legs",
      (t: string) =>
        t
          .replace(/ {2}low-knee: .*\n/, "")
          .replace("[high-post, high-plate], leg: 24 in", "[post, plate], legs: {post: 24 in, plate: 24 in}"),
    ],
  ])("%s places the same timbers and piers as their names", (_, change) => {
    const model = shed(change);
    expect(model.problems).toEqual([]);
    expect(places(model)).toEqual(places(BY_NAME));
    expect(pierPlaces(model)).toEqual(pierPlaces(BY_NAME));
  });

  test("an entry of that name goes before the kind", () => {
    const model = shed((t) => t.replaceAll("low-plate", "plate").replace("to: high-plate", "to: plate"));
    expect(model.problems.map(({ kind, path }) => `${kind} ${path}`)).toEqual([
      "placement-missing /members/high-post/to",
    ]);
  });

  test("a pier entry that names the post goes before one for its kind", () => {
    const model = shed((t) =>
      t.replace(
        "all: {under: [high-post, low-post]",
        "low: {under: low-post, kind: tube, diameter: 18 in, depth: 48 in}\n  all: {under: post",
      ),
    );
    expect(model.piers.map(({ id, diameter }) => `${id} ${diameter}`).sort()).toEqual([
      "all@A1 14",
      "all@A2 14",
      "low@B1 18",
      "low@B2 18",
    ]);
  });

  test("a kind that the file has none of is unknown, unless a line is lost", () => {
    const unknown = (model: ReturnType<typeof buildModel>): readonly string[] =>
      model.problems.flatMap((p) => (p.kind === "unknown-id" ? [p.text] : []));
    expect(unknown(shed((t) => t.replace("to: low-plate", "to: girt")))).toEqual(["girt"]);
    const lost = (t: string): string =>
      t.replace("to: low-plate", "to: girt").replace("section: 3x5", "section: 3x");
    expect(unknown(shed(lost))).toEqual([]);
  });
});
