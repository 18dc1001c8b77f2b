/** Decks of roofs and floors under more load than they carry. */
import { findingsFixture } from "../../fixtures.ts";
import { roofOf } from "../roof/roofs.ts";
import { loft } from "../statics/members.ts";

const fixture = (title: string, parts: Parameters<typeof roofOf>[0], mark = ""): void => {
  const text = roofOf(parts);
  const at = text.indexOf("  covering:");
  findingsFixture(title, mark === "" ? text : `${text.slice(0, at)}${mark}\n${text.slice(at)}`);
};

fixture("deck-overloaded: boards that usual snow leaves sound", { deck: "kind: boards, thickness: 1 in" });
fixture("deck-overloaded: purlins, 2x4 laid flat", {
  deck: "kind: purlins, spacing: 24 in",
  covering: "ribbed-steel",
});
fixture(
  "deck-overloaded: boards of 5/8 in, which the span table allows, under deep snow",
  { deck: "kind: boards, thickness: 5/8 in", ground: 300 },
  "  #                               ^^^^^^ error deck-overloaded: of bending against",
);
fixture(
  "deck-overloaded: laths that a person breaks",
  { deck: "kind: purlins, spacing: 24 in, thickness: 5/8 in", covering: "ribbed-steel" },
  "  #                                                ^^^^^^ error deck-overloaded: a person of 300 lb on it",
);
findingsFixture(
  "deck-overloaded: thin boards of a loft that is a store",
  loft("8x12", "125 psf, deck: {kind: boards, thickness: 1/2 in}")
    .replace("joints:\n", "joints:\n  joist-end: {kind: pocket, of: joist, into: tie}\n")
    .replace(
      /^( {2}loft: .*thickness: )1\/2 in.*$/m,
      (line, before: string) =>
        `${line}\n  #${" ".repeat(before.length - 3)}^^^^^^ error deck-overloaded: under dead load and floor live load`,
    ),
  { only: ["error", "warning"] },
);
// a floor that names neither its deck nor its weight weighs as boards of 1 in
findingsFixture(
  "deck-overloaded: the usual boards of a loft that is a store for stone",
  loft("8x12", "700 psf")
    .replace("joints:\n", "joints:\n  joist-end: {kind: pocket, of: joist, into: tie}\n")
    .replace(
      /^( {2}loft: .*live: )700 psf.*$/m,
      (line, before: string) =>
        `${line}\n  #${" ".repeat(before.length - 3)}^^^^^^^ error deck-overloaded: Boards 1 in thick over`,
    ),
  { only: ["error", "warning"] },
);
fixture(
  "deck-overloaded: panels under more snow than their rating",
  { deck: "kind: panels, thickness: 7/16 in", ground: 150 },
  "  #                               ^^^^^^^ warning deck-overloaded: rated 24/16, carry",
);
