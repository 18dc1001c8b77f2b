/**
 * Wind on the sides of a building, on its overhang, on a bare frame, and the least wind: from the text of a file to the
 * sum of forces. Figures worked by hand from ASCE 7-16 equations 26.10-1, 27.3-1 and 29.4-1; coefficients remembered.
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { appliedTotal, reactionTotal } from "../../../server/core/statics/balance.ts";
import { basicLoads } from "../../../server/core/statics/basic-loads.ts";
import { totalOf } from "../../../server/core/statics/line-loads.ts";
import { wallFaces } from "../../../server/core/statics/wall-faces.ts";
import { readFrame } from "../../../server/document/read.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { gate, pavilion } from "../checks/gate.ts";

const modelOf = (text: string) => buildModel(readFrame(text).frame);
const loadsOf = (text: string) => basicLoads(modelOf(text));
const sum = (text: string, id: string) => {
  const load = loadsOf(text).all.find((l) => l.id === id)!;
  expect(load, id).toBeDefined();
  return totalOf(load.loads);
};
/** The pavilion of the fixtures, 10 by 9 ft: its walls stand from 0 (piers at 8 in) to the rafters' tops. */
const walled = (siding: string, site = "speed: 107 mph, exposure: C, flow: clear") =>
  pavilion({})
    .replace("speed: 107 mph, exposure: C, flow: clear", site)
    .replace("timber:\n", `siding: ${siding}\ntimber:\n`);
const ALL = "{A: {}, B: {}, 1: {}, 2: {}}";
const faceOf = (text: string, line: string) => wallFaces(modelOf(text)).find((f) => f.line === line)!;

/** q_h G at 15 ft and below, exposure C, 107 mph: 0.00256 · 2.01 (15/900)^(2/9.5) · 0.85 · 107² · 0.85 */
const QG = 0.00256 * 2.01 * (15 / 900) ** (2 / 9.5) * 0.85 * 107 ** 2 * 0.85;
const QI = (QG / 0.85) * 0.18;

describe("the enclosure of a frame (memory, ASCE 7 section 26.2)", () => {
  it.each([
    ["{A: {}, B: {}, 1: {}, 2: {}}", "enclosed"],
    ["{A: {}, B: {}, 1: {}, 2: {openings: 30 ft²}}", "partially-enclosed"],
    ["{A: {}, B: {}, 1: {}}", "partially-enclosed"],
    ["{A: {openings: 15 ft²}, B: {openings: 15 ft²}, 1: {}, 2: {}}", "partially-open"],
    ["{A: {}}", "partially-open"],
    ["{A: {open: 0.85}}", "open"],
  ])("of siding %s is %s", (siding, expected) => {
    expect(loadsOf(walled(siding)).enclosure?.class).toBe(expected);
  });
  it("is open without siding", () => {
    expect(loadsOf(pavilion({})).enclosure?.class).toBe("open");
  });
});

describe("a partially open building", () => {
  const some = "{A: {openings: 15 ft²}, B: {openings: 15 ft²}, 1: {}, 2: {}}";
  const winds = (siding: string) =>
    loadsOf(walled(siding, "speed: 107 mph, exposure: C, flow: obstructed")).all.filter(
      (l) => l.kind === "W" && !l.id.endsWith("/least"),
    );
  it("is loaded as a free roof too where one side is open (common practice)", () => {
    const figures = winds("{A: {}}").map((l) => l.id.split("/")[2]);
    expect(figures).toContain("A");
    expect(figures).toContain("suction");
  });
  it("is not where every side has no more than openings, and those inside stand in no wind (memory, section 27.3.1)", () => {
    const loads = winds(some);
    expect(new Set(loads.map((l) => l.id.split("/")[2]))).toEqual(
      new Set(["suction", "pressure", "light-suction"]),
    );
    // along the building the closed ends take it all, as where every side is closed
    for (const load of loads.filter((l) => l.id.includes("x/")))
      expect(totalOf(load.loads)[0], load.id).toBeCloseTo(sum(walled(ALL), load.id)[0], 6);
  });
  it("shelters what stands inside where no side is open (memory, section 27.3.1)", () => {
    const shed = readFileSync(new URL("../../../samples/goat-shed.frame.yaml", import.meta.url), "utf8");
    const onInner = (text: string) =>
      loadsOf(text).all.filter(
        (l) => l.id.startsWith("W/+x/") && l.loads.some(({ timber }) => timber.id === "king-post@2"),
      );
    const closed = shed.replace("  B: {openings: 8 ft²}", "  A: {openings: 8 ft²}\n  B: {openings: 8 ft²}");
    expect(loadsOf(closed).enclosure).toMatchObject({ class: "partially-open", openSide: false });
    expect(onInner(closed)).toEqual([]);
    const twoOpen = shed.replace("  3: {}\n", "");
    expect(loadsOf(twoOpen).enclosure).toMatchObject({ class: "partially-open", openSide: true });
    expect(onInner(twoOpen)).not.toEqual([]);
  });
  it("passes through where both sides are open: it presses as hard as without the closed ends (published, Figure 27.3-5)", () => {
    const shed = readFileSync(new URL("../../../samples/goat-shed.frame.yaml", import.meta.url), "utf8");
    const ends = shed.replace("  B: {openings: 8 ft²}\n", "");
    const bare = shed.replace(/siding:[\s\S]*?\nroof:/, "roof:");
    expect(loadsOf(ends).enclosure).toMatchObject({
      class: "partially-open",
      passage: { x: false, y: true },
    });
    expect(loadsOf(bare).enclosure).toMatchObject({ class: "open", passage: { x: true, y: true } });
    const roofDown = (text: string) =>
      Math.max(
        ...loadsOf(text)
          .all.filter((l) => l.id.startsWith("W/+y/"))
          .map((l) => -totalOf(l.loads.filter(({ timber }) => timber.kind === "rafter"))[2]),
      );
    expect(roofDown(bare)).toBeGreaterThan(100);
    expect(roofDown(ends)).toBeCloseTo(roofDown(bare), 6);
    const obstructed = ends.replace("flow: clear", "flow: obstructed");
    expect(roofDown(obstructed)).toBeLessThan(roofDown(ends));
    // what stands there nobody but the site can tell: no wind, and no silence about it
    const untold = loadsOf(ends.replace(", flow: clear", ""));
    expect(untold.all.filter(({ kind }) => kind === "W")).toEqual([]);
    expect(untold.gaps).toContainEqual({ what: "wind", lacks: ["/site/wind/flow"] });
  });
});

describe("the sides of a building", () => {
  it("are as large as they stand: 9 ft by their height, the ends with their gable (derived)", () => {
    const text = walled(ALL);
    const [a, end] = [faceOf(text, "A"), faceOf(text, "1")];
    const height = a.gross / 9;
    expect(height).toBeGreaterThan(7);
    // half the width of 10 ft at 8 in 12
    expect(end.gross).toBeCloseTo(10 * height + (10 * 5 * (8 / 12)) / 2, 6);
  });
  it("lose nothing: every square foot lies on a timber (derived)", () => {
    for (const line of ["A", "B", "1", "2"]) {
      const face = faceOf(walled(ALL), line);
      const carried =
        face.shares.reduce((all, s) => all + ((s.start + s.end) / 2) * (s.to - s.from), 0) / 144;
      expect(carried, line).toBeCloseTo(face.gross, 6);
      expect(face.uncarried, line).toBe(0);
    }
  });
  it("lie on girts that run all along them, plate and sill besides (common practice)", () => {
    const girts = "girt: {kind: girt, section: 6x6, walls: [A], from: 1, to: 2, top: 4 ft}";
    const text = walled(ALL).replace("members:\n", `members:\n  ${girts}\n`);
    const kinds = new Set(faceOf(text, "A").shares.map((s) => s.timber.kind));
    expect([...kinds].sort()).toEqual(["girt", "plate"]);
  });
  it("push 0.8 + 0.5 q G on windward and leeward wall, whatever the pressure inside (memory, Figure 27.3-1)", () => {
    const text = walled(ALL);
    const area = faceOf(text, "1").gross;
    for (const inside of ["pressure-inside", "suction-inside"])
      expect(sum(text, `W/+x/suction/${inside}`)[0]).toBeCloseTo(1.3 * QG * area, 6);
  });
  it("pull outward on the sides by 0.7 q G and the pressure inside (memory, Figure 27.3-1)", () => {
    const load = loadsOf(walled(ALL)).all.find((l) => l.id === "W/+x/suction/pressure-inside")!;
    const face = faceOf(walled(ALL), "A");
    const posts = new Set(face.shares.map((s) => s.timber.id));
    const out = load.loads
      .filter((l) => posts.has(l.timber.id) && l.startForce[1] !== 0)
      .reduce((all, l) => all + ((l.startForce[1] + l.endForce[1]) / 2) * (l.to - l.from), 0);
    expect(out).toBeCloseTo(-(0.7 * QG + QI) * face.gross, 6);
  });
  it("have weight: 3 psf, or what the file says (memory, ASCE 7 Table C3.1-1)", () => {
    const dead = (text: string) => totalOf(loadsOf(text).all.find((l) => l.kind === "D")!.loads)[2];
    const face = faceOf(walled(ALL), "A");
    expect(dead(walled("{A: {}}")) - dead(pavilion({}))).toBeCloseTo(-3 * face.gross, 6);
    expect(dead(walled("{A: {weight: 5 psf}}")) - dead(pavilion({}))).toBeCloseTo(-5 * face.gross, 6);
    const half = dead(walled("{A: {weight: 5 psf, open: 0.5}}"));
    expect(half - dead(pavilion({}))).toBeCloseTo(-2.5 * face.gross, 6);
  });
});

describe("a roof over walls", () => {
  it("takes the least load of 16 and 8 psf where nothing else reaches it (memory, section 27.1.5)", () => {
    const calm = walled(ALL, "speed: 80 mph, exposure: B");
    const face = faceOf(calm, "A");
    const ids = loadsOf(calm).all.map((l) => l.id);
    expect(ids).toContain("W/+y/least");
    // the upright projection of the slope the wind meets: 5 ft to the ridge and 1 ft of eave, at 8 in 12, 11 ft long
    expect(sum(calm, "W/+y/least")[1]).toBeCloseTo(16 * face.gross + 8 * 6 * (8 / 12) * 11, 3);
    expect(loadsOf(walled(ALL)).all.map((l) => l.id)).not.toContain("W/+x/least");
  });
  it("is pushed up at its windward overhang by 0.8 q G more, and by no pressure inside (memory, section 27.3.3)", () => {
    const text = walled(ALL);
    const load = loadsOf(text).all.find((l) => l.id === "W/+y/suction/pressure-inside")!;
    const wind = loadsOf(text).wind!.cases.find((c) => c.id === "+y/suction/pressure-inside")!;
    const plane = wind.roof.find((p) => p.plane === "A")!.psf;
    expect(wind.windwardOverhang! - plane).toBeCloseTo(-0.8 * QG + QI, 9);
    // 1 ft of level overhang, 11 ft of roof: what differs from the plane's pressure, up
    const onRafters = load.loads.filter((l) => l.timber.kind === "rafter" && l.timber.walls.includes("A"));
    const roofUp = totalOf(onRafters)[2];
    const own = -plane * 6 * 11;
    expect(roofUp - own).toBeCloseTo(-(wind.windwardOverhang! - plane) * 1 * 11, 0);
  });
});

describe("a roof that stands out at its ends", () => {
  it.each([12, 42])(
    "is pushed up there by the wind along it, over all %d in of rake (memory, section 27.3.3)",
    (rake) => {
      const text = walled(ALL)
        .replace("rake: 12 in", `rake: ${rake} in`)
        .replaceAll("overhang: 12 in}", `overhang: ${rake} in}`);
      const { wind, all, strips } = loadsOf(text);
      const found = wind!.cases.find((c) => c.id === "+x/suction/pressure-inside")!;
      const load = all.find((l) => l.id === `W/${found.id}`)!;
      const own = strips.filter((s) => s.slope.wall === "A");
      const rafters = new Set(own.map((s) => s.timber.id));
      const down = -totalOf(load.loads.filter((l) => rafters.has(l.timber.id)))[2];
      const plane = found.roof.filter((p) => p.plane === "A");
      // the rafters together take every strip of pressure whole, on the level projection
      const run = (own[0]!.to * Math.cos(own[0]!.slope.angle)) / 12;
      const level = plane.reduce((sum, { psf, from, to }) => sum + psf * (to - from) * run, 0);
      const change = found.windwardOverhang! - plane[0]!.psf;
      expect(change).toBeCloseTo(-0.8 * QG + QI, 9);
      expect(down - level).toBeCloseTo((change * rake * 6 * 12) / 144, 0);
    },
  );
});

describe("a roof with one wall", () => {
  it("is checked as a free roof with the flow obstructed too, its wall alone in the wind (common practice)", () => {
    const text = walled("{A: {}}");
    const ids = loadsOf(text).all.map((l) => l.id);
    expect(ids).toEqual(expect.arrayContaining(["W/+y/A", "W/+y/suction/pressure-inside"]));
    const { wind } = loadsOf(text);
    expect(wind!.loneWall.value).toBeCloseTo(1.3 * QG, 9);
  });
});

describe("a bare frame", () => {
  const BARE = gate({
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
    `,
  });
  it("takes 2.0 q G on the face of its posts and beams (memory, Eq. 29.4-1)", () => {
    const { timbers } = modelOf(BARE);
    const seen = timbers.reduce((all, t) => all + 8 * t.span, 0) / 144;
    expect(sum(BARE, "W/+y")[1]).toBeCloseTo(2.0 * QG * seen, 6);
    // from the end of the plate only the posts are seen
    const posts = timbers.filter((t) => t.kind === "post").reduce((all, t) => all + 8 * t.span, 0) / 144;
    expect(sum(BARE, "W/+x")[0]).toBeCloseTo(2.0 * QG * posts, 6);
  });
  it("is pushed harder on a hill and less high above the sea (memory, K_zt and K_e)", () => {
    const hill = BARE.replace("exposure: C", "exposure: C, topography: 1.3");
    const high = BARE.replace("soil: sand", "soil: sand\n  elevation: 5280 ft");
    const level = sum(BARE, "W/+y")[1];
    expect(sum(hill, "W/+y")[1]).toBeCloseTo(1.3 * level, 6);
    expect(sum(high, "W/+y")[1]).toBeCloseTo(Math.exp(-0.0000362 * 5280) * level, 6);
  });
  it("with siding takes it as a wall that stands alone (common practice)", () => {
    const fence = BARE.replace("timber:\n", "siding: {A: {}}\ntimber:\n");
    const face = faceOf(fence, "A");
    expect(sum(fence, "W/+y")[1]).toBeGreaterThan(1.3 * QG * face.gross - 1e-6);
  });
});

/** The sample, whose knees hold it. */
const SAMPLE = readFileSync(
  new URL("../../../samples/cider-press-pavilion.frame.yaml", import.meta.url),
  "utf8",
);
const sided = (siding: string) => SAMPLE.replace("timber:\n", `siding: ${siding}\ntimber:\n`);

describe("what pushes is what holds", () => {
  it.each(["{A: {}, B: {}, 1: {}, 3: {}}", "{A: {}, B: {}, 1: {}}", "{A: {}}"])(
    "siding %s: applied and reactions cancel in every combination",
    (siding) => {
      const snapshot = createFrameService().open("file:///w.frame.yaml", 1, sided(siding));
      const solution = snapshot.evaluation!.results.frame!.solution;
      const windy = solution.cases.filter((c) => c.frameCase.id.includes("W/"));
      expect(windy.length).toBeGreaterThan(20);
      for (const solved of windy) {
        expect(solved.combined.status, solved.frameCase.id).not.toBe("failed");
        const [applied, reaction] = [appliedTotal(solved), reactionTotal(solved)];
        for (const k of [0, 1, 2] as const) expect(applied[k] + reaction[k]).toBeCloseTo(0, 3);
      }
    },
  );
});

describe("wind along the ridge of the pavilion: 16 ft by 20 ft of level roof", () => {
  const text = readFileSync(
    new URL("../../../samples/cider-press-pavilion.frame.yaml", import.meta.url),
    "utf8",
  );
  const { all } = loadsOf(text);

  // -0.8 and 0.8 up to a mean height of 12.22 ft from the edge, -0.6 and 0.5 beyond, × q G = 21.15 psf × 0.85
  it.each([
    ["+x", "A", 16 * (12.224 * 14.38 + 7.776 * 10.79)],
    ["-x", "A", 16 * (12.224 * 14.38 + 7.776 * 10.79)],
    ["+x", "B", -16 * (12.224 * 14.38 + 7.776 * 8.99)],
    ["-x", "B", -16 * (12.224 * 14.38 + 7.776 * 8.99)],
  ])("%s, case %s: no pressure is lost between two rafters (derived)", (toward, figure, up) => {
    const wind = all.find((l) => l.id === `W/${toward}/${figure}`)!;
    expect(totalOf(wind.loads)[2] / up).toBeCloseTo(1, 2);
  });
});
