/** What fits a place of the frame comes first, with the cursor at `$0`. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { TextDocument } from "vscode-languageserver-textdocument";
import { completionsAt } from "../../server/language/completion.ts";
import { createFrameService } from "../../server/language/frame-service.ts";
import { PLAIN, variantsOf } from "./completion-text.ts";

describe("what fits comes first, with the reason", () => {
  const GOATS = readFileSync("samples/goat-shed.frame.yaml", "utf8");
  const WRONG = readFileSync("samples/wrong-on-purpose.frame.yaml", "utf8");
  const service = createFrameService();

  /** Labels with their details, the same in every variant; the frame as it was before the change is known. */
  function offered(
    before: string,
    from: string,
    to: string,
  ): readonly (readonly [string, string | undefined])[] {
    expect(before).toContain(from);
    service.open(before, 1, before);
    const all = variantsOf(before.replace(from, () => to)).map(({ text, offset }) => {
      const document = TextDocument.create("file:///a", "yaml", 2, text);
      const items = completionsAt(document, document.positionAt(offset), PLAIN, service.drawable(before));
      expect(items.map(({ sortText }) => sortText)).toEqual(items.map(({ sortText }) => sortText).toSorted());
      return items.map(({ label, detail }) => [label, detail] as const);
    });
    for (const one of all) expect(one).toEqual(all[0]);
    return all[0] ?? [];
  }

  // what touches what is read off the drawing of the sample: joists end at ties, posts at plates, ties at posts
  test.each<readonly [string, string, string, readonly string[], string, string]>([
    [
      "let in",
      "of: joist, into: tie",
      "of: $0, into: tie",
      ["joist", "king-post", "tie-knee", "brace"],
      "touches tie",
      "no end of it touches tie",
    ],
    [
      "receives a joist",
      "of: joist, into: tie",
      "of: joist, into: $0",
      ["tie"],
      "touches joist",
      "no end of joist touches it",
    ],
    [
      "receives a post",
      "of: post, into: plate",
      "of: post, into: $0",
      ["plate"],
      "touches post",
      "no end of post touches it",
    ],
    [
      "receives a tie",
      "of: tie, into: post",
      "of: tie, into: $0",
      ["post"],
      "touches tie",
      "no end of tie touches it",
    ],
    [
      "a brace’s tenons",
      "of: [knee, tie-knee, ridge-knee], into: [post, plate, tie, king-post, ridge]",
      "of: $0",
      ["knee", "tie-knee", "ridge-knee", "brace"],
      "its ends are joined so",
      "",
    ],
    ["a pocket", "of: joist, into: tie", "of: $0", ["joist"], "usually joined so", ""],
    ["under a pier", "under: post", "under: $0", ["post"], "stands on piers", ""],
    ["a king post’s foot", "from: tie, to: ridge", "from: $0, to: ridge", ["tie"], "usual here", ""],
    ["a king post’s head", "from: tie, to: ridge", "from: tie, to: $0", ["ridge"], "usual here", ""],
    [
      "a post’s head",
      "from: pier-top, to: plate",
      "from: pier-top, to: $0",
      ["plate", "tie", "ridge"],
      "usual here",
      "",
    ],
    [
      "the heads of rafters",
      "into: ridge, fasten",
      "into: $0, fasten",
      ["ridge"],
      "touches rafter",
      "does not touch rafter",
    ],
    [
      "a brace between",
      "between: [post, plate]",
      "between: [post, $0]",
      ["plate", "tie"],
      "touches post",
      "does not touch post",
    ],
    ["a floor", "on: joist", "on: $0", ["joist"], "usual here", ""],
  ])("%s", (_, from, to, fitting, why, whyNot) => {
    const all = offered(GOATS, from, to);
    expect(all.filter(([, detail]) => detail?.endsWith(`, ${why}`)).map(([label]) => label)).toEqual(fitting);
    expect(all.slice(0, fitting.length).map(([label]) => label)).toEqual(fitting);
    expect(all.length).toBeGreaterThan(fitting.length);
    if (whyNot !== "") for (const [, detail] of all.slice(fitting.length)) expect(detail).toContain(whyNot);
  });

  test("checks that this file has findings of, and the places that have them", () => {
    const open = service.open(WRONG, 1, WRONG).findings.map(({ finding }) => finding);
    const entry = (text: string): readonly (readonly [string, string | undefined])[] =>
      offered(WRONG, "members:\n", `accept:\n  - {${text}}\nmembers:\n`);
    const checks = entry("check: $0");
    const counted = checks.filter(([, detail]) => /: (?:one|\d+) findings? here$/.test(detail ?? ""));
    expect(counted.length).toBeGreaterThan(10);
    expect(checks.slice(0, counted.length)).toEqual(counted);
    for (const [id] of counted) expect(open.map(({ check }) => check)).toContain(id);
    expect(checks.length).toBeGreaterThan(counted.length + 20);

    const thin = open.filter(({ check }) => check === "tenon-thin");
    const places = entry("check: tenon-thin, at: $0");
    const having = places.filter(([, detail]) => detail === "has a finding of tenon-thin");
    expect(having.map(([id]) => id)).toEqual([...thin.flatMap((each) => each.places), "post-head"]);
    expect(places.slice(0, having.length)).toEqual(having);
    expect(places.map(([id]) => id)).toEqual(expect.arrayContaining(["post@A1", "plate@A"]));
    const flat = entry("check: brace-angle, at: $0").map(([id]) => id);
    expect(flat.slice(0, 5)).toContain("knee");
    // before the check is written, the places of all of them
    expect(entry("at: $0").map(([, detail]) => detail)).toEqual(
      expect.arrayContaining(["has a finding of brace-angle", "has a finding of longer-than-mill"]),
    );
  });
});
