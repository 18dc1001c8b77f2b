/** Decks under more load than they carry. */
import { findingsFixture } from "../../fixtures.ts";
import { roofOf } from "../roof/roofs.ts";

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
fixture(
  "deck-overloaded: panels under more snow than their rating",
  { deck: "kind: panels, thickness: 7/16 in", ground: 150 },
  "  #                               ^^^^^^^ warning deck-overloaded: rated 24/16, carry",
);
