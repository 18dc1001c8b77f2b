/** How the loads came about, where the mouse rests on what they follow from. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { createFrameService } from "../../server/language/frame-service.ts";
import { hoverAt } from "../../server/language/hover.ts";
import { ROOFED } from "../roofed-shed.ts";
import { SHED } from "../shed.ts";

/** The hover of a key of a sample. @param key a text that is there once; the mouse rests at its start */
function over(sample: string, key: RegExp): string {
  return hoverOn(readFileSync(new URL(`../../samples/${sample}.frame.yaml`, import.meta.url), "utf8"), key);
}

function hoverOn(text: string, key: RegExp): string {
  const snapshot = createFrameService().open("file:///loads.frame.yaml", 1, text);
  const position = snapshot.document.positionAt(text.search(key) + 2);
  return hoverAt(snapshot, position)?.contents.value ?? "";
}

describe("pavilion", () => {
  test("site.snow: every factor and what follows", () => {
    const text = over("cider-press-pavilion", /^ {2}snow:/m);
    expect(text).toContain("**Snow by ASCE 7-16**");
    for (const row of [
      /\| p\\_g \| on the ground, service level +\| 45 psf +\| given in the file/,
      /\| C\\_e \| exposure +\| 1 +\| remembered/,
      /\| C\\_t \| warmth under the roof +\| 1\.2 +\| published/,
      /\| I\\_s \| importance, by risk category +\| 0\.8 +\| published/,
      /\| p\\_f \| on a flat roof.* \| 30\.2 psf/,
      /\| unbalanced-leeward +\| 36 psf/,
    ])
      expect(text).toMatch(row);
    expect(text).toMatch(/licensed engineer decide/);
  });

  test("site.wind: velocity pressure, coefficients and pressures of each case", () => {
    const text = over("cider-press-pavilion", /^ {2}wind:/m);
    expect(text).toMatch(/\| q\\_h +\| velocity pressure at that height +\| 21\.1 psf/);
    expect(text).toMatch(/\| \+y\/A +\| 1\.3: 23\.4 psf +\| 0\.31: 5\.58 psf/);
  });

  test("site.wind and site.snow: how well the coefficients of the cases are known", () => {
    expect(over("cider-press-pavilion", /^ {2}wind:/m)).toContain(
      "Load cases by ASCE 7 Figure 27.3-7 (remembered from the publication, not seen again) and ASCE 7 Figure 27.3-5 (remembered",
    );
    // walls and roof of a closed building are remembered whole
    expect(over("goat-shed", /^ {2}wind:/m)).toContain(
      "Load cases by ASCE 7 section 27.3.1 (remembered from the publication, not seen again).",
    );
  });

  test("site.wind: the least weight is dry, or what the file states", () => {
    const text = readFileSync(new URL("../../samples/goat-shed.frame.yaml", import.meta.url), "utf8");
    expect(hoverOn(text, /^ {2}wind:/m)).toMatch(/\| rafters +\| timber, dry +\| 27\.9 lb/);
    const stated = text.replace(/^( {2}rafters: \{[^}]*seasoning: dry)/m, "$1, weight: 33 pcf");
    expect(stated).not.toBe(text);
    expect(hoverOn(stated, /^ {2}wind:/m)).toMatch(
      /\| rafters +\| timber, by the weight that the file states +\| 33 lb\/ft³ +\| given in the file/,
    );
  });

  test("roof.deck and roof.covering: the layers", () => {
    for (const key of [/^ {2}deck:/m, /^ {2}covering:/m]) {
      const text = over("cider-press-pavilion", key);
      expect(text).toContain("**Weight of the roof over its rafters**");
      expect(text).toMatch(/standing seam +\| 1 psf +\| published/);
    }
  });

  test("roof.deck: how far its boards are used, and what the limit is made of", () => {
    const text = over("cider-press-pavilion", /^ {2}deck:/m);
    expect(text).toMatch(/Over 29 5\/8 in used to \*\*0\.24\*\* by bending: 206 psi of 863 psi/);
    expect(text).toContain("a person of 300 lb on it");
    expect(text).toContain("No.2 of the wood that carries it (Eastern Hemlock-Tamarack)");
    expect(text).toMatch(/\| C\\_fu \(bent about the weak axis\) +\| 1\.2 +\| .*\| remembered/);
    expect(over("cider-press-pavilion", /^ {2}covering:/m)).not.toContain("used to");
  });

  test("a floor: how far its boards are used", () => {
    const text = over("goat-shed", /^ {2}loft:/m);
    expect(text).toMatch(/Over .* in used to \*\*0\.\d\d\*\* by .* under dead load and floor live load\./);
  });

  test("roof.deck of panels: their rating and what lies on them", () => {
    const text = hoverOn(ROOFED, /^ {2}deck:/m);
    expect(text).toMatch(/rated 40\/20 by its thickness, it carries \d+(\.\d+)? psf and in all/);
    expect(text).toContain("IRC Table R503.2.1.1(1), remembered");
  });

  test("other keys say nothing of loads", () => {
    expect(over("cider-press-pavilion", /^ {2}frost-depth:/m)).not.toMatch(/ASCE 7-16/);
  });
});

test("kayak shelter: in its own units", () => {
  const text = over("kayak-shelter", /^ {2}snow:/m);
  expect(text).toMatch(/\| p\\_f .*\| 1\.34 kPa/);
  expect(text.slice(text.indexOf("**Snow"))).not.toMatch(/\d ?(psf|psi|in|ft)\b/);
});

describe("a shed with siding and a loft", () => {
  const text = SHED.replace("timber:\n", "siding: {A: {open: 0.1}, 1: {}}\ntimber:\n")
    .replace(
      "joints:\n",
      "  joist: {kind: joist, section: 3x8, between: [tie@1, tie@2], from: 2 ft, to: 8 ft, count: 4}\njoints:\n",
    )
    .concat(
      "roof: {kind: gable, pitch: 8:12, rafters: {section: 3x6, spacing: 30 in, seat: {kind: birds-mouth}, overhang: {eave: 12 in}}, deck: {kind: boards, thickness: 1 in}}\n",
      "floors:\n  loft: {on: joist, live: 30 psf}\n",
    );
  const snapshot = createFrameService().open("file:///shed.frame.yaml", 1, text);
  const at = (key: RegExp): string =>
    hoverAt(snapshot, snapshot.document.positionAt(text.search(key) + 3))?.contents.value ?? "";

  test("siding: weight, size of each side and what of it is open", () => {
    expect(at(/^siding:/m)).toMatch(/\| siding of A +\| 3 psf +\| remembered/);
    expect(at(/^siding:/m)).toMatch(/\| side 1 +\| \d+ ft²/);
  });

  test("floors and a floor: weight and live load", () => {
    for (const key of [/^floors:/m, /^ {2}loft:/m]) {
      expect(at(key)).toContain("**Floor: loft**");
      expect(at(key)).toMatch(/\| L +\| live load, kept whole whatever the area +\| 30 psf/);
      expect(at(key)).toMatch(/weight of the floor \(1 in, assumed, at 3 psf for each 1 in\) +\| 3 psf/);
    }
  });
});

test("while a part of the frame cannot be read no load is told", () => {
  const text = readFileSync(new URL("../../samples/kayak-shelter.frame.yaml", import.meta.url), "utf8");
  const broken = text.replace("section: 150x150", "section: 150x");
  const snapshot = createFrameService().open("file:///broken.frame.yaml", 1, broken);
  const position = snapshot.document.positionAt(broken.search(/^ {2}snow:/m) + 2);
  expect(hoverAt(snapshot, position)?.contents.value).not.toContain("Snow by");
});
