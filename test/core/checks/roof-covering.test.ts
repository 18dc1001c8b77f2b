/** The covering and the deck of a roof: too flat, on nothing closed, overspanned, ending in a sliver. */
import { findingsFixture } from "../../fixtures.ts";
import { pavilion } from "./gate.ts";

/** The pavilion's roof with other lines for pitch, deck and covering, marks included. */
function roof(...lines: readonly string[]): string {
  return pavilion({
    roof: `
roof:
  kind: gable
  rafters: {section: 3x8, spacing: 24 in, seat: {kind: birds-mouth}, head: {kind: housed, into: ridge}, overhang: {eave: 12 in, rake: 12 in}}
${lines.join("\n")}
`,
  });
}

const STEEP = "  pitch: 8:12";
const BOARDS = "  deck: {kind: boards, thickness: 1 in}";
const SEAM = "  covering: {kind: standing-seam}";

findingsFixture("this roof itself is clean", roof(STEEP, BOARDS, SEAM));

findingsFixture(
  "covering-too-flat: slate at 3:12",
  roof(
    "  pitch: 3:12",
    "  #      ^^^^ warning covering-too-flat: A slate covering lies no flatter than 4:12",
    BOARDS,
    "  covering: {kind: slate}",
  ),
);
findingsFixture(
  "covering-too-flat: slate at 4:12 is allowed",
  roof("  pitch: 4:12", BOARDS, "  covering: {kind: slate}"),
);
findingsFixture("covering-too-flat: 1:3 is 4:12", roof("  pitch: 1/3", BOARDS, "  covering: {kind: slate}"));
findingsFixture(
  "covering-too-flat: lapped steel at 2:12 needs sealed laps",
  roof(
    "  pitch: 2:12",
    "  #      ^^^^ note covering-too-flat: needs sealant in every lap",
    BOARDS,
    "  covering: {kind: ribbed-steel}",
  ),
);
findingsFixture(
  "covering-too-flat: asphalt shingles at 3:12 need two layers below, at 1:12 they are out",
  roof(
    "  pitch: 3:12",
    "  #      ^^^^ note covering-too-flat: below 4:12, needs two layers of underlayment",
    BOARDS,
    "  covering: {kind: asphalt-shingles}",
  ),
);
findingsFixture(
  "covering-too-flat: asphalt shingles at 1:12",
  roof(
    "  pitch: 1:12",
    "  #      ^^^^ warning covering-too-flat: no flatter than 2:12",
    BOARDS,
    "  covering: {kind: asphalt-shingles}",
  ),
);

findingsFixture(
  "covering-too-flat: tile at 3:12 needs two layers below",
  roof(
    "  pitch: 3:12",
    "  #      ^^^^ note covering-too-flat: below 4:12, needs two layers of underlayment",
    BOARDS,
    "  covering: {kind: clay-tile}",
  ),
);

findingsFixture(
  "covering-needs-deck: asphalt shingles on purlins",
  roof(
    STEEP,
    "  deck: {kind: purlins, spacing: 24 in}",
    "  #            ^^^^^^^ error covering-needs-deck: An asphalt shingle covering needs a closed deck",
    "  covering: {kind: asphalt-shingles}",
  ),
);
findingsFixture(
  "covering-needs-deck: steel lies on purlins",
  roof(STEEP, "  deck: {kind: purlins, spacing: 24 in}", "  covering: {kind: ribbed-steel}"),
);

findingsFixture(
  "deck-overspanned: 1/2 in boards, thinner than any",
  roof(
    STEEP,
    "  deck: {kind: boards, thickness: 1/2 in}",
    "  #                               ^^^^^^ warning deck-overspanned: thinner than any roof deck",
    SEAM,
  ),
);
findingsFixture(
  "deck-overspanned: 5/8 in boards reach 24 in",
  roof(STEEP, "  deck: {kind: boards, thickness: 5/8 in}", SEAM),
);
findingsFixture(
  "deck-overspanned: 1/4 in panels, thinner than any",
  roof(
    STEEP,
    "  deck: {kind: panels, thickness: 1/4 in}",
    "  #                               ^^^^^^ warning deck-overspanned: Panels 1/4 in thick are thinner",
    SEAM,
  ),
);
findingsFixture(
  "deck-overspanned: 3/8 in panels without a stamp reach 16 in",
  roof(
    STEEP,
    "  deck: {kind: panels, thickness: 3/8 in}",
    "  #                               ^^^^^^ warning deck-overspanned: reach 16 in between their supports",
    SEAM,
  ),
);
findingsFixture(
  "deck-overspanned: 7/16 in panels reach 24 in",
  roof(STEEP, "  deck: {kind: panels, thickness: 7/16 in}", SEAM),
);
findingsFixture(
  "deck-overspanned: steel on purlins 4 ft apart",
  roof(
    STEEP,
    "  deck: {kind: purlins, spacing: 48 in}",
    "  #                              ^^^^^ warning deck-overspanned: at most 36 in apart",
    "  covering: {kind: ribbed-steel}",
  ),
);

/** Rafters some 42 in apart, deep enough for that. */
const wide = (deck: string, mark: string): string =>
  roof(STEEP, deck, mark, SEAM).replace("section: 3x8, spacing: 24 in", "section: 6x8, spacing: 54 in");
findingsFixture(
  "deck-overspanned: boards of 1 in over rafters 42 in apart",
  wide(
    "  deck: {kind: boards, thickness: 1 in}",
    "  #                               ^^^^ warning deck-overspanned: reach 38 3/8 in between their supports",
  ),
);
findingsFixture(
  "deck-overspanned: diagonal boards reach √2 times as far",
  roof(
    STEEP,
    "  deck: {kind: boards, thickness: 1 in, laid: diagonal}",
    "  #                               ^^^^ warning deck-overspanned: apart along the diagonal",
    SEAM,
  ).replace("section: 3x8, spacing: 24 in", "section: 4x8, spacing: 36 in"),
);
findingsFixture(
  "deck-overspanned: 5/8 in panels, whose edges must be held, reach 40 in",
  wide(
    "  deck: {kind: panels, thickness: 5/8 in}",
    "  #                               ^^^^^^ warning deck-overspanned: even with held edges",
  ),
);
findingsFixture(
  "deck-overspanned: 3/4 in panels over 42 in with held edges only",
  wide(
    "  deck: {kind: panels, thickness: 3/4 in}",
    "  #                               ^^^^^^ note deck-overspanned: need their long edges held",
  ).replace("spacing: 54 in", "spacing: 44 in"),
);
findingsFixture(
  "deck-overspanned: plank of 1 1/2 in with tongue and groove",
  wide(
    "  deck: {kind: boards, thickness: 1 1/2 in}",
    "  #                               ^^^^^^^^ note deck-overspanned: need tongue and groove",
  ).replace("section: 6x8, spacing: 54 in", "section: 8x10, spacing: 66 in"),
);

findingsFixture(
  "sheets-sliver: a sheet more for two inches",
  roof(
    STEEP,
    BOARDS,
    "  covering: {kind: ribbed-steel, coverage: 26 in}",
    "  #                                        ^^^^^ note sheets-sliver: the last one is a sliver of 2 in",
  ),
);
findingsFixture(
  "sheets-sliver: whole sheets",
  roof(STEEP, BOARDS, "  covering: {kind: ribbed-steel, coverage: 33 in}"),
);
findingsFixture(
  "sheets-sliver: half a sheet is none",
  roof(STEEP, BOARDS, "  covering: {kind: ribbed-steel, coverage: 24 in}"),
);

/** The pavilion with its roof on principal rafters at its two bents, 8 ft 6 in apart, with or without purlins over them. */
const principals = (purlins: string, ...deck: readonly string[]): string =>
  roof(STEEP, ...deck, SEAM)
    .replace(/ {2}rafters: \{section.*\}\n/, "")
    .replace(
      "  ridge: {kind: ridge, section: 6x8",
      `  principal: {kind: rafter, section: 6x7, bents: [1, 2], from: plate, to: ridge, overhang: 12 in}\n${purlins}  ridge: {kind: ridge, section: 6x10`,
    );
const PURLINS = "  purlin: {kind: purlin, section: 4x6, spacing: 60 in}\n";
const WARNINGS = { only: ["error", "warning"] } as const;

findingsFixture(
  "deck-overspanned: boards from bent to bent over principal rafters",
  principals(
    "",
    BOARDS,
    "  #                               ^^^^ warning deck-overspanned: reach 38 3/8 in between their supports, and these are 8'-6\" apart",
    // so far they break, and reach no farther than the table lets them
    "  #                               ^^^^ error deck-overloaded: They reach 38 3/8 in under these loads",
  ),
  WARNINGS,
);
findingsFixture(
  "deck-overspanned: boards up the slope over purlins",
  principals(
    PURLINS.replace("60 in", "70 in"),
    BOARDS,
    "  #                               ^^^^ warning deck-overspanned: reach 38 3/8 in between their supports",
  ),
  WARNINGS,
);
findingsFixture(
  "deck-overspanned: purlins count as far apart as they lie, not as they may",
  principals(PURLINS, BOARDS),
  WARNINGS,
);
