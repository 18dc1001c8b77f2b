import { describe, expect, it } from "vitest";
import { readFrame } from "../../server/document/read.ts";
import { linesOf } from "./facts.ts";
import { SMALL } from "./samples.ts";

/** A fault in one value of an otherwise sound frame: all that may be reported is what the case says. */
const CASES: readonly (readonly [string, string, readonly string[]])[] = [
  [
    "a blank missing behind a colon",
    "site: {ground: {2:-4 in, 1: 0}}",
    ['missing-separator /site/ground/2 space "2:-4 in" → 2: -4 in'],
  ],
  [
    "a list without brackets",
    "piers: {all: {kind: pad, width: 24 in, at: A1, A2, top: 0}}",
    ['missing-separator /piers/all/at brackets "at: A1, A2" → at: [A1, A2]'],
  ],
  [
    "a comma in a number",
    "crew: {people: 2, each: 1,000 lb}",
    ['missing-separator /crew/each comma-number "1,000 lb" → 1000 lb'],
  ],
  [
    "two commas in a number",
    "timber: {own: {species: white-oak, because: me, values: {E: 1,100,000 psi, Fb: 875 psi}}}",
    ['missing-separator /timber/own/values/E comma-number "1,100,000 psi" → 1100000 psi'],
  ],
  [
    "a number sign that swallows an inline map",
    "timber: {own: {species: white-oak, grade: #1, surface: rough}}",
    ['missing-separator /timber/own/grade hash "#1" → no-1 | "#1"'],
  ],
  [
    "a number sign in a block",
    "timber:\n  own:\n    species: white-oak\n    grade: #2\n    surface: rough",
    ['missing-separator /timber/own/grade hash "#2" → no-2 | "#2"'],
  ],
  ["a key without value", "basis: {loads: asce-7-16, risk}", ['missing-separator /basis no-value "risk" → ']],
  [
    "a switch without value",
    "site: {snow: {ground: 45 psf, slides}}",
    ['missing-separator /site/snow no-value "slides" → slides: true'],
  ],
  [
    "a sentence with a comma",
    "timber: {own: {species: white-oak, because: graded by me, in May}}",
    ['missing-separator /timber/own/because no-value "graded by me, in May" → "graded by me, in May"'],
  ],
  [
    "no blank behind two colons",
    "basis: {loads:asce-7-16, risk-category:i}",
    [
      'missing-separator /basis/loads space "loads:asce-7-16" → loads: asce-7-16',
      'missing-separator /basis/risk-category space "risk-category:i" → risk-category: i',
    ],
  ],
  [
    "no blank and a comma in the number",
    "crew: {each:1,000 lb}",
    ['missing-separator /crew/each space "each:1" → each: 1'],
  ],
  [
    "no blank in a block",
    "site:\n  frost-depth:32 in",
    ['missing-separator /site/frost-depth space "frost-depth:32 in" → frost-depth: 32 in'],
  ],
  ["an unclosed quote", 'site: {soil: "sand, frost-depth: 3 ft}', ['unclosed-quote 13 """']],
  ["an unclosed bracket", "site: {soil: sand, ground: {1: 0", ['unclosed-bracket 27 "{"']],
  [
    "a bracket closed by the other kind",
    "piers: {all: {kind: pad, width: 24 in, at: [A1, A2}}",
    ['unclosed-bracket 43 "["'],
  ],
  ["a directive", "%YAML 1.1\n---\nsite: {soil: sand}", ['directive 0 "%YAML 1.1"']],
  ["a key given twice", "site:\n  soil: sand\n  soil: clay", ["duplicate-key /site/soil 21"]],
  [
    "a key given twice, once in quotes",
    'site: {ground: {1: 0, "1": 4 in}}',
    ["duplicate-key /site/ground/1 22"],
  ],
  ["a tag", "site: {soil: !rock sand}", ['yaml TAG_RESOLVE_FAILED "!rock"']],
  ["a second document", "site: {soil: sand}\n---\nsite: {}", ['yaml MULTIPLE_DOCS "---"']],
];

describe("traps of YAML", () => {
  for (const [what, text, expected] of CASES) {
    it(`reports ${what} once, and nothing that follows from it`, () => {
      const second = text.includes("---") && !text.startsWith("%");
      expect(
        linesOf(
          second ? `${SMALL.replace(/^timber.*\n/, "timber: {a: {species: x}}\n")}${text}` : whole(text),
        ),
      ).toEqual(expected);
    });
  }

  it("offers proposals that, put in place, leave nothing to report", () => {
    for (const [, text] of CASES) {
      const before = readFrame(whole(text));
      const traps = before.source.facts.flatMap((fact) => (fact.kind === "missing-separator" ? [fact] : []));
      if (traps.length !== 1 || before.source.facts.length !== 1) continue;
      for (const { start, end, proposals } of traps) {
        for (const proposal of proposals) {
          const mended = whole(text).slice(0, start) + proposal + whole(text).slice(end);
          const rest = linesOf(mended).filter((fact) => !fact.includes("each: 1"));
          expect(text.includes("each:1,") ? [] : rest, mended).toEqual([]);
        }
      }
    }
  });

  it("leaves the values beside a trap as they are", () => {
    const { frame } = readFrame(
      whole("timber: {own: {species: white-oak, grade: #1, surface: planed, seasoning: dry}}"),
    );
    expect(frame.classes[0]).toMatchObject({ surface: "planed", seasoning: "dry", grade: undefined });
    const quote = readFrame(whole('site: {soil: "sand, frost-depth: 3 ft}')).frame.site;
    expect(quote.soil).toBeUndefined();
    expect(quote.frostDepth).toBe(3 * 12 * 25_400_000);
    const bracket = readFrame(whole("site: {soil: sand, ground: {1: 0, 2: 4 in")).frame.site;
    // where a line breaks off, its last value may be half of what is meant
    expect(bracket.ground.map((each) => each.key)).toEqual(["1"]);
  });

  it("keeps what a trapped timber is called, so that nobody reports it as unknown", () => {
    const { frame } = readFrame(SMALL.replace("at: [A1, A2]", "at: A1, A2"));
    expect(frame.members).toEqual([]);
    expect(frame.unread).toEqual(new Set(["post"]));
  });
});

/** The text, with the rest of a frame below it. */
function whole(text: string): string {
  const rest = text.startsWith("timber") ? SMALL.replace(/^timber.*\n/, "") : SMALL;
  return `${text}\n${rest}`;
}
