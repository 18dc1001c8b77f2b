/** Findings about the sides of a building and about wind that the figures do not know. */
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { basicLoads } from "../../../server/core/statics/basic-loads.ts";
import { loadDerivation } from "../../../server/core/statics/load-derivation.ts";
import { readFrame } from "../../../server/document/read.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, gate, pavilion } from "./gate.ts";

const sided = (siding: string, site = "flow: clear") =>
  pavilion({
    site: `
      site:
        snow: {ground: 45 psf, exposure: partially-exposed, thermal: open}
        wind: {speed: 107 mph, exposure: C, ${site}}
        frost-depth: 30 in
        soil: sand
${siding}
    `,
  });

findingsFixture(
  "siding-unplaced: on a line that the grid does not have",
  sided(`      siding:
        A: {}
        "7": {}
      # ^^^ warning siding-unplaced: There is no wall or bent 7, so its siding is in no check. Outer sides: A, B, 1 and 2.`),
);

findingsFixture(
  "siding-unplaced: a wall inside",
  pavilion({
    grid: `
      grid:
        walls: {A: 0, B: 10 ft, C: 20 ft}
        bents: {1: 0, 2: 9 ft}
        levels: {pier-top: 8 in, eave: 8 ft}
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, B1, B2, C1, C2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A, B, C], from: 1, to: 2, top: eave, overhang: 12 in}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
    `,
    roof: `
      siding:
        B: {}
      # ^ warning siding-unplaced: B is no outer side of the frame
    `,
    timber: `
      timber:
        frame: {species: eastern-white-pine, grade: no-1}
    `,
  }),
);

findingsFixture(
  "siding-unplaced: a side where nothing stands",
  gate({
    head: `
      frame: Gate
      format: 1
      basis: {loads: asce-7-16, risk-category: i}
    `,
    site: `
      site:
        wind: {speed: 107 mph, exposure: C}
        frost-depth: 30 in
        soil: sand
      siding:
        B: {}
      # ^ warning siding-unplaced: No post and no girt stands in side B
    `,
  }),
);

/** Everything that is found, whole-frame checks too, of one check. */
const wordsOf = (text: string, check: string) =>
  createFrameService()
    .open("file:///gate.frame.yaml", 1, text)
    .findings.filter(({ finding }) => finding.check === check)
    .map(({ finding }) => `${finding.level} ${finding.path} ${finding.message}`);

findingsFixture(
  "enclosure-found: three closed sides and an open one",
  sided(
    `      siding: {A: {}, B: {}, 1: {}}
      #@0-6 note enclosure-found: The wind takes this as a partially enclosed building`,
    "topography: 1.2",
  ),
  { whole: true, only: ["note"] },
);

findingsFixture(
  "enclosure-found: closed ends, and the wind passes between them",
  sided(`      siding: {1: {}, 2: {}}
      #@0-6 note enclosure-found: wind caught under the roof counts too, as under an open one with obstructed flow. Across the ridge both sides are open: there it passes with clear flow, as the site says.`),
  { whole: true, only: ["note"] },
);

findingsFixture(
  "enclosure-found: closed ends, and goods between them obstruct the wind",
  sided(
    `      siding: {1: {}, 2: {}}
      #@0-6 note enclosure-found: wind caught under the roof counts too, as under an open one with obstructed flow. Taken besides`,
    "flow: obstructed",
  ),
  { whole: true, only: ["note"] },
);

findingsFixture(
  "wind-beyond-figures: a roof steeper than 45° over open sides",
  pavilion({})
    .replace("pitch: 8:12", "pitch: 14:12")
    // a rafter so steep hangs below a ridge of 9 in, and its screws come out there
    .replace(/(kind: ridge, section: \d+x)\d+/, "$116")
    .replace("roof:\n", "roof:\n#@0-4 warning wind-beyond-figures: the figures for open roofs end at 45°\n"),
  { whole: true, only: ["warning"] },
);

test("enclosure-found: names what was assumed, and how open each side is", () => {
  const [words] = wordsOf(sided("      siding: {A: {}, B: {}, 1: {}}"), "enclosure-found");
  expect(words).toMatch(
    /^note \/siding .*GC_pi = ±0\.55.*Taken besides: K_zt = 1 \(level ground\) and K_e = 1 \(sea level\)\.$/,
  );
  expect(words).toMatch(/A: 0 ft² of \d+ ft²/);
});

describe("openings that cannot be read are not told as none", () => {
  test.each([
    ["sound", "{openings: 8 ft²}", true],
    ["sound, as a share", "{open: 0.1}", true],
    ["without sense", "{openings: 8 f}", false],
    ["no share", "{open: lots}", false],
    ["beside a share", "{openings: 8 f, open: 0.1}", false],
    ["no map", "8 ft²", false],
    ["never closed", "{openings: 8 f", false],
    ["empty and never closed", "{", false],
    ["another value never closed", "{openings: 8 ft², weight: 4", true],
  ])("%s", (_, side, known) => {
    const text = sided(`      siding:\n        A: {}\n        B: {}\n        1: ${side}`);
    expect(wordsOf(text, "enclosure-found")).toHaveLength(known ? 1 : 0);
    const model = buildModel(readFrame(text).frame);
    const ids = loadDerivation(model, basicLoads(model)).flatMap(({ lines }) => lines.map(({ id }) => id));
    expect(ids).toContain("1/gross");
    expect(ids.includes("1/open")).toBe(known);
  });
});

test("site-value-missing: the flow only under a roof over open sides", () => {
  const asks = (text: string) =>
    findingsOf(text).some(
      ({ finding }) => finding.check === "site-value-missing" && /freely/.test(finding.message),
    );
  expect(asks(sided("", "topography: 1"))).toBe(true);
  expect(asks(sided("      siding: {A: {}, B: {}, 1: {}}", "topography: 1"))).toBe(false);
});

test("site-value-missing: wind for a bare frame taller than 8 ft, not for one of 8 ft", () => {
  const asks = (eave: string) =>
    findingsOf(gate({}).replace("eave: 8 ft", `eave: ${eave}`)).filter(
      ({ finding }) => finding.check === "site-value-missing" && /wind speed/.test(finding.message),
    ).length;
  expect(asks("8 ft")).toBe(0);
  expect(asks("8 ft 1 in")).toBe(1);
});
