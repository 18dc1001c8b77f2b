/** What anchors hold, and where their bolts stand. Forces by the frame's statics; capacities in test/core/joinery/post-foot.test.ts. */
import { describe, expect, test } from "vitest";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { expectFindings, findingsFixture } from "../../fixtures.ts";
import { ROOFED, under } from "../../roofed-shed.ts";
import { findingsOf, fixed, gate } from "./gate.ts";

const BROKEN = { whole: true, only: ["error", "warning"] } as const;

/** The shed where the wind lifts each post with 454 lb and pushes it with 474 and 514 lb, on piers that are heavy enough. */
const windy = (anchor: string): string =>
  ROOFED.replace("speed: 100 mph, exposure: B", "speed: 115 mph, exposure: C").replace(
    /^ {2}all: .*$/m,
    `  all: {under: post, kind: tube, diameter: 18 in, depth: 60 in, lateral: doubled, anchor: {kind: embedded-strap, stand-off: 1 in, ${anchor}}}`,
  );
const STRAP = "strap: {thickness: 3/16 in, width: 2 1/2 in}";
const marked = (anchor: string, marker: string): string => under(windy(anchor), "  all: ", marker);

test("bolts and straps that hold all ways", () =>
  expectFindings(windy(`${STRAP}, bolts: {count: 2, diameter: 1/2 in}`), BROKEN));

describe("pier-lifted: the anchor holds less than pulls", () => {
  const stated = (lb: number): string => `capacity: {uplift: ${lb} lb, because: the sheet}`;
  findingsFixture(
    "a stated capacity",
    marked(
      stated(450),
      "#@149-155 error pier-lifted: post@A1 pulls at all@A1 with 454 lb under 0.6 D + 0.6 W (wind toward +x, case A), more than the 450 lb that the file states for its anchor. Take an anchor that is rated for more.",
    ),
    BROKEN,
  );
  test("a little more is enough", () => expectFindings(windy(stated(455)), BROKEN));
  test("bolts: one of 1/4 in in thin steel", () => {
    const only = (thick: string): string[] =>
      findingsOf(
        windy(`strap: {thickness: ${thick}, width: 5/8 in}, bolts: {count: 1, diameter: 1/4 in}`),
        true,
      )
        .map(({ finding }) => finding)
        .filter(({ check }) => check === "pier-lifted")
        .map(({ message }) => message);
    // the net section of the thin straps tears: 2 × 45,000 ÷ 2 × (5/8 − 3/8) in × thickness
    expect(only("1/32 in")).toEqual([
      expect.stringMatching(/with 454 lb .*more than the 352 lb .*limited by the strap at its hole/),
    ]);
    expect(only("1/16 in")).toEqual([]);
  });
  test("a hold of nothing says what is wanting: steel, places, or reach", () => {
    const words = (anchor: string): string[] =>
      findingsOf(windy(anchor), true)
        .map(({ finding }) => finding)
        .filter(({ check }) => check === "pier-lifted")
        .map(({ message }) => message);
    expect(words("strap: {thickness: 1/4 in, width: 1/2 in}, bolts: {count: 1, diameter: 1/2 in}")).toEqual([
      expect.stringContaining("no steel is left beside the holes of its straps"),
    ]);
    expect(words(`${STRAP}, bolts: {count: 2, diameter: 1/2 in, up: 1 in}`)).toEqual([
      expect.stringContaining("stand too near an end, an edge or each other"),
    ]);
    expect(words(`${STRAP}, screws: {count: 2, diameter: 1/2 in, length: 1 in}`)).toEqual([
      expect.stringContaining("reach too little wood"),
    ]);
    expect(
      words(
        `strap: {thickness: 3/16 in, width: 2 1/2 in, let-in: 4 in}, bolts: {count: 2, diameter: 1/2 in}`,
      ),
    ).toEqual([expect.stringContaining("no wood is left for it")]);
  });
  test("a dowel with a capacity ties", () =>
    expect(
      findingsOf(
        windy("capacity: {uplift: 500 lb, because: a pinned rod}").replace("embedded-strap", "dowel"),
        true,
      )
        .map(({ finding }) => finding.check)
        .filter((check) => check === "pier-lifted"),
    ).toEqual([]));
});

describe("post-foot-overloaded", () => {
  findingsFixture(
    "a plate too small for the end grain: 625 psi × 1.15 × 0.91 × 1 in²",
    marked(
      "plate: 1 in",
      "#@137-141 error post-foot-overloaded: post-foot@A1 is pressed down with 1,182 lb under D + S (balanced snow), more than the 654 lb that its anchor holds that way, limited by the end grain on its plate.",
    ),
    BROKEN,
  );
  test("a plate that is large enough", () => expectFindings(windy("plate: 1 1/2 in"), BROKEN));
  findingsFixture(
    "a thin plate in a kerf bends: 434 lb·in ÷ 4 1/2 in",
    marked(
      "strap: {thickness: 3/16 in, width: 2 1/2 in, place: in-kerf}, bolts: {count: 2, diameter: 1/2 in}",
      "#@149-156 warning post-foot-overloaded: post-foot@A1 is pushed sideways along its bolts with 474 lb under 0.6 D + 0.6 W (wind toward -y, case A), more than the 96 lb that its anchor holds that way, limited by the strap, which bends.",
    ),
    BROKEN,
  );
  const sideways = (lb: number): string => windy(`capacity: {sideways: ${lb} lb, because: the sheet}`);
  const told = (text: string): string[] =>
    findingsOf(text, true)
      .map(({ finding }) => finding)
      .filter(({ check }) => check === "post-foot-overloaded")
      .map(({ level, message }) => `${level} ${message}`);
  test("a stated capacity is held against the whole push, and is an error", () => {
    // of 514 lb along the wall and up to 60 lb across it: 517 lb, as pier-pushed-over has it of the same post
    expect(told(sideways(470))).toEqual([
      expect.stringMatching(
        /^error post-foot@A1 is pushed sideways with 517 lb under D \+ 0\.6 W \(.*\), more than the 470 lb that the file states for its anchor\./,
      ),
    ]);
    // more than either part, and less than both together
    expect(told(sideways(515))).toHaveLength(1);
    expect(told(sideways(518))).toEqual([]);
  });
  test("and nothing is said of bolts, where there are none or where the capacity goes before them", () => {
    const bolted = sideways(400).replace(
      "capacity:",
      `${STRAP}, bolts: {count: 2, diameter: 1/2 in}, capacity:`,
    );
    for (const text of [sideways(400), bolted]) {
      expect(told(text)).toHaveLength(1);
      expect(told(text)[0]).not.toContain("bolts");
    }
  });
});

describe("anchor-bolts-crowded (NDS Tables 12.5.1A to C; memory)", () => {
  /** A gate without wind: nothing but the distances speaks. */
  const bolted = (bolts: string, strap = "thickness: 3/16 in, width: 2 1/2 in", marker = ""): string =>
    gate({
      piers: `
        piers:
          all: {under: post, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap, strap: {${strap}}, bolts: {${bolts}}}}
        ${marker}
      `,
    });
  const shorts = (bolts: string, strap?: string): string[] =>
    findingsOf(bolted(bolts, strap)).map(
      ({ finding }) => `${finding.check} ${finding.value} < ${finding.limit}`,
    );
  test("ends from 3.5 D on count, 7 D in full", () => {
    expect(shorts("count: 1, diameter: 1/2 in, up: 1 3/4 in")).toEqual([]);
    expect(shorts("count: 1, diameter: 1/2 in, up: 1 1/2 in")).toEqual(["anchor-bolts-crowded 1.5 < 1.75"]);
  });
  test("spacing from 5 D, so that a push square to them finds a row of each (Table 12.5.1D)", () => {
    expect(shorts("count: 2, diameter: 1/2 in, spacing: 2 1/2 in")).toEqual([]);
    expect(shorts("count: 2, diameter: 1/2 in, spacing: 2 1/4 in")).toEqual([
      "anchor-bolts-crowded 2.25 < 2.5",
    ]);
    expect(fixed(bolted("count: 2, diameter: 1/2 in, spacing: 1 in"), "anchor-bolts-crowded")).toContain(
      "spacing: 2 1/2 in",
    );
  });
  test("spacing from 3 D where the file says what holds sideways", () => {
    const stated = (bolts: string): string[] =>
      findingsOf(
        bolted(bolts).replace("bolts:", "capacity: {sideways: 900 lb, because: the sheet}, bolts:"),
      ).map(({ finding }) => `${finding.check} ${finding.value} < ${finding.limit}`);
    expect(stated("count: 2, diameter: 1/2 in, spacing: 1 1/2 in")).toEqual([]);
    expect(stated("count: 2, diameter: 1/2 in, spacing: 1 1/4 in")).toEqual([
      "anchor-bolts-crowded 1.25 < 1.5",
    ]);
    expect(shorts("count: 1, diameter: 1/2 in, spacing: 1 1/4 in")).toEqual([]);
  });
  test("steel past its holes 1.5 D", () => {
    expect(
      shorts("count: 1, diameter: 1/2 in", "thickness: 1/4 in, width: 1 1/2 in, height: 4 1/4 in"),
    ).toEqual([]);
    expect(shorts("count: 1, diameter: 1/2 in", "thickness: 1/4 in, width: 1 1/4 in, height: 4 in")).toEqual([
      "anchor-bolts-crowded 0.625 < 0.75",
      "anchor-bolts-crowded 0.5 < 0.75",
    ]);
  });
  findingsFixture(
    "words",
    under(
      bolted("count: 1, diameter: 1/2 in, up: 1 1/2 in"),
      "  all: ",
      "#@181-189 warning anchor-bolts-crowded: At post-foot@A1 the lowest bolt sits 1 1/2 in above the end of the post, less than the 1 3/4 in from which they count at all: the wood shears out or splits there. Give them 3 1/2 in, with which they hold in full. The same holds at all@A2.",
    ),
  );
  test("its fix sets the full distance", () =>
    expect(fixed(bolted("count: 1, diameter: 1/2 in, up: 1 1/2 in"), "anchor-bolts-crowded")).toContain(
      "up: 3 1/2 in",
    ));
});

describe("anchor-unfit (common practice, no source)", () => {
  const unfit = (anchor: string): string =>
    gate({
      piers: `
        piers:
          all: {under: post, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap, ${anchor}}}
      `,
    });
  const heard = (anchor: string): string[] =>
    findingsOf(unfit(anchor)).map(
      ({ finding }) => `${finding.level} ${finding.check} ${finding.value} > ${finding.limit}`,
    );
  const straps = (more: string): string => `strap: {thickness: 1/4 in, ${more}}`;
  const BOLT = "bolts: {count: 2, diameter: 1/2 in}";
  test("half of the post may be cut away; an error where nothing is left", () => {
    expect(heard(`${straps("width: 2 in, let-in: 2 in")}, ${BOLT}`)).toEqual([]);
    expect(heard(`${straps("width: 2 in, let-in: 2 1/8 in")}, ${BOLT}`)).toEqual([
      "warning anchor-unfit 4.25 > 4",
    ]);
    expect(heard(`${straps("width: 2 in, let-in: 5 in")}, ${BOLT}`)).toContain("error anchor-unfit 10 > 4");
    expect(heard(`strap: {thickness: 9 in, width: 2 in, place: in-kerf}, ${BOLT}`)).toContain(
      "error anchor-unfit 9.0625 > 4",
    );
    expect(fixed(unfit(`${straps("width: 2 in, let-in: 5 in")}, ${BOLT}`), "anchor-unfit")).toContain(
      "let-in: 1/4 in",
    );
  });
  test("steel as wide as its post at most", () => {
    expect(heard(`${straps("width: 8 in")}, ${BOLT}`)).toEqual([]);
    expect(heard(`${straps("width: 20 in")}, ${BOLT}`)).toEqual(["warning anchor-unfit 20 > 8"]);
    expect(fixed(unfit(`${straps("width: 20 in")}, ${BOLT}`), "anchor-unfit")).toContain("width: 8 in");
  });
  test("screws that end in the middle, or at the far face from one side", () => {
    const screws = (length: string, more = "width: 2 in"): string =>
      `${straps(more)}, screws: {count: 2, diameter: 1/4 in, length: ${length}}`;
    expect(heard(screws("4 1/4 in"))).toEqual([]);
    expect(heard(screws("5 in"))).toEqual(["warning anchor-unfit 4.75 > 4"]);
    expect(heard(screws("5 in", "width: 2 in, place: one-face"))).toEqual([]);
    expect(heard(screws("12 in", "width: 2 in, place: one-face"))).toEqual([
      "warning anchor-unfit 11.75 > 8",
    ]);
    expect(fixed(unfit(screws("12 in")), "anchor-unfit")).toContain("length: 4 in");
  });
  findingsFixture(
    "words",
    under(
      unfit("strap: {thickness: 1/4 in, width: 2 in}, screws: {count: 2, diameter: 1/4 in, length: 5 in}"),
      "  all: ",
      "#@181-185 warning anchor-unfit: At post-foot@A1 screws of 5 in reach 4 3/4 in into the wood from both faces, and to the middle there are 4 in: their points meet, and only what lies before the middle is counted. Take ones of 4 in or shorter. The same holds at all@A2.",
    ),
  );
});

describe("mortise-meets-anchor over the anchor of a sill or beam (common practice, no source)", () => {
  /** A sill on two piers under its ends and one in the middle; a post stands on it 4 ft 6 in along, right over the pier. */
  const sill = (pier: string, tenon: string, anchor = "kind: embedded-strap", section = "8x10"): string =>
    gate({
      grid: `
        grid:
          walls: {A: 0, B: 10 ft}
          bents: {1: 0, 2: 4 ft 6 in, 3: 9 ft}
          levels: {sill-top: 18 in, eave: 8 ft}
      `,
      members: `
        members:
          sill: {kind: sill, section: ${section}, walls: [A], from: 1, to: 3, top: sill-top, overhang: 12 in}
          post: {kind: post, section: 8x8, at: [A2], from: sill, to: plate}
          plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 3, top: eave}
      `,
      joints: `
        joints:
          head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
          foot: {kind: mortise-and-tenon, of: post, into: sill, tenon: {thickness: 2 in, length: ${tenon}}}
      `,
      piers: `
        piers:
          all: {under: sill, at: [A1, ${pier}, A3], kind: tube, diameter: 16 in, depth: 40 in, anchor: {${anchor}}}
      `,
    });
  const heard = (text: string): string[] =>
    findingsOf(text)
      .map(({ finding }) => finding)
      .filter(({ check }) => check === "mortise-meets-anchor")
      .map(({ value, limit, message }) => `${value} < ${limit}: ${message}`);
  test("a tenon of 4 in leaves 5 3/4 in under its mortise, and the straps of a 10 in sill run up 8 in", () => {
    expect(heard(sill("A2", "4 in"))).toEqual([
      "5.75 < 8: foot@A2 is cut down to 5 3/4 in above the underside of sill@A right over all@A2, whose anchor is fastened over some 8 in: its bolts find no wood there, and the tenon is in their way. Set the pier or the joint aside, or make the tenon 2 1/4 in shorter.",
    ]);
    expect(heard(sill("A2", "1 3/4 in"))).toEqual([]);
  });
  test("a pier beside the post: the mortise is 8 in long, the strap 2 1/2 in wide", () => {
    expect(heard(sill("A@4 ft 1/2 in", "4 in"))).toEqual([]);
    expect(heard(sill("A@4 ft 1 in", "4 in"))).toHaveLength(1);
  });
  test("straps end 2 in under the top of a low sill, steel of a given height where it ends, a dowel at 6 in", () => {
    expect(heard(sill("A2", "1 3/4 in", "kind: embedded-strap", "8x8"))).toEqual([]);
    expect(
      heard(
        sill("A2", "4 in", "kind: embedded-strap, strap: {thickness: 1/4 in, width: 2 in, height: 5 3/4 in}"),
      ),
    ).toEqual([]);
    expect(heard(sill("A2", "4 in", "kind: dowel"))[0]).toMatch(/whose dowel stands up to 6 in inside it/);
    expect(heard(sill("A2", "3 1/2 in", "kind: dowel"))).toEqual([]);
  });
});

test("nothing throws on half of an anchor", () => {
  for (const anchor of [
    "strap: {thickness: 3/16 in}",
    "bolts: {count: 0, diameter: 1/2 in}, strap: {thickness: 0, width: 2}",
    "bolts: nonsense, strap: [], capacity: {uplift: 3}",
    "strap: {thickness: 200 in, width: 300 in, let-in: 200 in, height: 300 in}, bolts: {count: 8, diameter: 90 in, spacing: 90 in, up: 0.001 in}",
    "plate: 0.001 in, strap: {thickness: 0.0001 in, width: 0.0001 in}, screws: {count: 24, diameter: 0.001 in, length: 0.001 in}",
  ]) {
    const snapshot = createFrameService().open("file:///h.frame.yaml", 1, windy(anchor));
    for (const { finding } of snapshot.findings) {
      expect(finding.message).not.toMatch(/NaN|undefined|Infinity/);
      expect(finding.worked?.() ?? "").not.toMatch(/NaN|undefined|Infinity/);
    }
  }
});
