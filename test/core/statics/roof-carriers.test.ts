/** Roofs that purlins or principal rafters carry, and what holds them along the walls. Hand statics throughout. */
import { describe, expect, test } from "vitest";
import { bearingReactions } from "../../../server/core/statics/balance.ts";
import { totalOf } from "../../../server/core/statics/line-loads.ts";
import { memberBasis } from "../../../server/core/statics/member-basis.ts";
import { type Checked, checked } from "./members.ts";

const PRINCIPAL = "  principal: {kind: rafter, section: 7x9, bents: [1, 2, 3], from: plate, to: ridge}\n";
const PURLIN = "  purlin: {kind: purlin, section: 5x7, from: 1, to: 3, spacing: 30 in}\n";

const RIDGE_KNEE = "  ridge-knee: {kind: brace, section: 4x7, between: [king, ridge], leg: 18 in}\n";

/** 16 by 20 ft over its plates' outside faces, 3:12, king-posts under a ridge. */
const barn = (members: string, deck = "{kind: boards, thickness: 1 in}"): string => `frame: Hay barn
format: 1
units: inch
basis: {loads: asce-7-16, risk-category: i}
site:
  snow: {ground: 40 psf, exposure: partially-exposed, thermal: open}
  wind: {speed: 105 mph, exposure: B, flow: clear}
  frost-depth: 36 in
  soil: sand
timber:
  frame: {species: eastern-white-pine, grade: no-1, seasoning: green, surface: rough}
grid:
  walls: {A: 0, B: 16 ft}
  bents: {1: 0, 2: 10 ft, 3: 20 ft}
  levels: {pt: 6 in, tie: 8 ft, eave: 9 ft 6 in}
members:
  post:  {kind: post, section: 8x8, at: [A1, A2, A3, B1, B2, B3], from: pt, to: plate}
  plate: {kind: plate, section: 8x10, walls: [A, B], from: 1, to: 3, top: eave}
  cross: {kind: tie, section: 8x12, bents: [1, 2, 3], from: A, to: B, top: tie}
  king:  {kind: king-post, section: 8x8, bents: [1, 2, 3], from: cross, to: ridge}
  ridge: {kind: ridge, section: 8x10, from: 1, to: 3}
  knee:  {kind: brace, section: 4x7, between: [post, plate], leg: 30 in}
  cross-knee: {kind: brace, section: 4x7, between: [post, cross], leg: 28 in}
${members}roof:
  kind: gable
  pitch: 3:12
  deck: ${deck}
  covering: {kind: standing-seam, coverage: 16 in}
piers:
  all: {under: post, kind: tube, diameter: 16 in, depth: 50 in, anchor: {kind: embedded-strap, stand-off: 1 in}}
`;

/** ASCE 7-16 7.3-1: 0.7 C_e 1.0, C_t 1.2, I_s 0.8, 40 psf; C_s 1.0 up to 3:12 also where it is cold and slippery (fig. 7.4-1c). */
const SNOW = 0.7 * 1.2 * 0.8 * 40;
const PLAN = 16 * 20;

const total = (c: Checked, id: string): number => {
  const load = c.solution.loads.all.find((l) => l.id === id);
  expect(load, c.solution.loads.all.map((l) => l.id).join(", ")).toBeDefined();
  return -totalOf(load!.loads)[2];
};
const balancedSnow = (c: Checked): number => total(c, c.solution.loads.all.find((l) => l.kind === "S")!.id);

const RAFTERS =
  "  rafters: {section: 5x8, spacing: 48 in, seat: {kind: birds-mouth}, head: {kind: housed, into: ridge}, overhang: {eave: 0, rake: 0}}\n";

describe.each([
  ["principal rafters alone", PRINCIPAL, ""],
  ["purlins on principal rafters", PRINCIPAL + PURLIN, ""],
  ["purlins on the roof’s own rafters", PURLIN, RAFTERS],
])("%s", (_, members, own) => {
  const c = checked(barn(members + RIDGE_KNEE).replace("  deck:", `${own}  deck:`));

  test("nothing moves freely; seats at the ends of rafters slide too in the second model", () => {
    expect(c.solution.mechanisms).toEqual([]);
    expect(c.solution.failed).toEqual([]);
    expect(new Set(c.solution.cases.map((s) => s.seats))).toEqual(new Set(["hold", "slide"]));
  });

  test("the second model does not fight the ridge: its holds read zero under symmetric load (design, section 6)", () => {
    // knees as wide as the ridge: those flush with one face of it load a symmetric frame askew
    const knees = RIDGE_KNEE.replace("4x7", "8x7");
    const { solution } = checked(barn(members + knees).replace("  deck:", `${own}  deck:`));
    const { holds } = solution.prepared.sliding!;
    const even = solution.cases.filter(
      ({ seats, frameCase }) => seats === "slide" && ["1", "3-S:S/balanced"].includes(frameCase.id),
    );
    expect(even).toHaveLength(2);
    for (const solved of even) {
      const all = solved.combined.reactions();
      const down = all.reduce((sum, { force }) => sum + force[2], 0);
      const sideways = all.filter(({ node }) => holds.has(node)).map(({ force }) => Math.abs(force[1]));
      expect(sideways.length).toBeGreaterThan(2);
      expect(Math.max(...sideways) / down).toBeLessThan(1e-6);
    }
  });

  test("carry the whole balanced snow: p_s × 16 ft × 20 ft of plan [published]", () => {
    expect(balancedSnow(c) / (SNOW * PLAN)).toBeCloseTo(1, 6);
  });

  test("the piers take snow and the weight of all timbers and of the deck [derived]", () => {
    const solved = c.solution.cases.find(({ frameCase }) => frameCase.id === "3-S:S/balanced")!;
    const down = bearingReactions(solved).reduce((sum, { force }) => sum + force[2], 0);
    expect(down).toBeCloseTo(total(c, "D") + balancedSnow(c), 0);
  });

  test("the snow bends those that carry it, not others", () => {
    const snow = c.solution.loads.all.find((l) => l.kind === "S")!;
    const carriers = new Set(snow.loads.map((l) => l.timber.kind));
    expect([...carriers]).toEqual([members.includes("purlin") ? "purlin" : "rafter"]);
  });
});

describe("who is held sideways by boards nailed to it", () => {
  const decked = (members: string, own: string) => {
    const c = checked(barn(members + RIDGE_KNEE).replace("  deck:", `${own}  deck:`));
    const held = memberBasis(c.model, c.solution.hold, c.solution.cases).plans.filter(
      (p) => p.lengths.decked,
    );
    return new Set(held.map((p) => p.timber.member));
  };

  test("the roof’s own rafters where they carry it, else the purlins over them [derived: what the deck touches]", () => {
    expect(decked("", RAFTERS)).toEqual(new Set(["rafter"]));
    expect(decked(PURLIN, RAFTERS)).toEqual(new Set(["purlin"]));
    expect(decked(PRINCIPAL + PURLIN, "")).toEqual(new Set(["purlin"]));
    expect(decked(PRINCIPAL, "")).toEqual(new Set());
  });
});

describe("a ridge that no brace holds along the walls", () => {
  const racks = (deck: string, members = PRINCIPAL) =>
    checked(barn(members, deck)).solution.racking.filter((r) => !r.stands);

  test.each([["{kind: boards, thickness: 1 in}"], ["{kind: purlins, spacing: 24 in}"]])(
    "racks along them under %s, and only along them",
    (deck) => {
      for (const members of [PRINCIPAL, PRINCIPAL + PURLIN]) {
        const found = racks(deck, members);
        expect(found.map((r) => r.toward)).toEqual(["+x", "-x"]);
        expect(found[0]!.moving).toContain("king@2");
        expect(found[0]!.moving).not.toContain("post@A1");
      }
    },
  );

  test.each([["{kind: panels, thickness: 5/8 in}"], ["{kind: boards, thickness: 1 in, laid: diagonal}"]])(
    "is held by a deck of %s",
    (deck) => expect(racks(deck)).toEqual([]),
  );

  test("the deck’s springs are as stiff in shear as the deck: 6,000 lb/in × a/b for each bay [memory]", () => {
    const { hold } = checked(barn(PRINCIPAL, "{kind: panels, thickness: 5/8 in}")).solution;
    const springs = hold.structure.links!.filter((l) => l.id.startsWith("deck "));
    // two bays on each of two slopes, two springs each
    expect(springs).toHaveLength(8);
    for (const { direction: d, stiffness } of springs) {
      const [a, b] = [Math.abs(d[0]), Math.hypot(d[1], d[2])];
      // a unit slip along the wall stretches each of the two by a/√(a² + b²)
      const force = (2 * stiffness * (a * a)) / (a * a + b * b);
      expect(force / (6000 * (a / b))).toBeCloseTo(1, 9);
    }
  });
});

/** ASCE 7-16 Eq. 7.6-1 by hand: h_d of a fetch of 20 ft at p_g, ft; γ = 0.13 p_g + 14. */
const driftHand = (pg: number, Is: number, S: number) => {
  const height = (0.43 * 20 ** (1 / 3) * (pg + 10) ** 0.25 - 1.5) * Math.sqrt(Is);
  return { psf: (height * (0.13 * pg + 14)) / Math.sqrt(S), width: (8 / 3) * height * Math.sqrt(S) };
};

describe("unbalanced snow on a gable of 8 ft from eave to ridge", () => {
  const unbalanced = (c: Checked) => c.solution.loads.all.filter((l) => l.id.startsWith("S/unbalanced"));

  test("principal rafters that carry it alone: I_s × p_g on the leeward slope [memory]", () => {
    const c = checked(barn(PRINCIPAL).replace("pitch: 3:12", "pitch: 6:12"));
    expect(unbalanced(c)).toHaveLength(2);
    for (const load of unbalanced(c)) {
      expect(new Set(load.loads.map((l) => l.timber.walls[0])).size).toBe(1);
      // ASCE 7-16 7.6.1, eave to ridge at most 20 ft: 0.8 × 40 psf on half of the plan
      expect(-totalOf(load.loads)[2] / (0.8 * 40 * (PLAN / 2))).toBeCloseTo(1, 6);
    }
  });

  test("purlins on principals do not span from eave to ridge: 0.3 p_s, p_s and the drift [memory]", () => {
    const c = checked(barn(PRINCIPAL + PURLIN + RIDGE_KNEE).replace("pitch: 3:12", "pitch: 6:12"));
    const { psf, width } = driftHand(40, 0.8, 2);
    const want = (1.3 * SNOW * 8 + psf * Math.min(8, width)) * 20;
    expect(unbalanced(c)).toHaveLength(2);
    for (const load of unbalanced(c)) expect(-totalOf(load.loads)[2] / want).toBeCloseTo(1, 6);
  });

  test("50 psf, 6:12: about 67 psf on the purlin next to the ridge [memory]", () => {
    const { psf } = driftHand(50, 1, 2);
    expect(0.7 * 1.2 * 50 + psf).toBeCloseTo(67.3, 1);
    const text = barn(PRINCIPAL + PURLIN + RIDGE_KNEE)
      .replace("pitch: 3:12", "pitch: 6:12")
      .replace("ground: 40 psf", "ground: 50 psf")
      .replace("risk-category: i", "risk-category: ii");
    const c = checked(text);
    const leeA = unbalanced(c).find((l) => l.id.endsWith("/A"))!;
    const strips = c.solution.loads.strips.filter((s) => s.slope.wall === "A");
    const top = strips.reduce((a, b) => (b.reach[1] > a.reach[1] ? b : a));
    const load = leeA.loads.find((l) => l.timber === top.timber)!;
    const level = (top.width * Math.cos(top.slope.angle)) / 144;
    expect(-load.startForce[2] / level).toBeCloseTo(42 + psf, 6);
  });
});

/** Up on the whole roof, summed over its planes by the pressures alone (wind-cases.ts), is what its timbers get [derived]. */
describe.each([
  ["rafters", "", RAFTERS],
  ["purlins over principal rafters", PRINCIPAL + PURLIN, ""],
])("wind on %s", (_, members, rafters) => {
  const c = checked(barn(members).replace("  deck:", `${rafters}  deck:`));
  const cases = c.solution.loads.wind!.cases;

  test.each(cases.map((w) => [w.id, w.resultant.up] as const))("%s: all of it, and no more", (id, up) => {
    expect(Math.abs(total(c, `W/${id}`) + up)).toBeLessThan(0.005 * Math.abs(up) + 1);
  });
});
