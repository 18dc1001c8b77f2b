/**
 * Timbers of whole frames against hand statics, against NDS 3.9 written apart, and against
 * the exact curves of the analysis at places that the checks do not look at.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { prepare, type Solution } from "../../../server/core/analysis/analyse.ts";
import { bucklingLengths } from "../../../server/core/statics/effective-length.ts";
import { jointForces } from "../../../server/core/statics/joint-forces.ts";
import { bearingsOf } from "../../../server/core/statics/member-bearing.ts";
import { memberPlans } from "../../../server/core/statics/member-plan.ts";
import { groundsOf } from "../../../server/core/statics/member-supports.ts";
import { durationValues, repetitiveOf } from "../../../server/core/statics/member-values.ts";
import { NetSections, timberCuts } from "../../../server/core/statics/net-section.ts";
import type { SolvedCase } from "../../../server/core/statics/solve-frame.ts";
import { woodOf } from "../../../server/core/statics/timber-wood.ts";
import { SHED } from "../../shed.ts";
import { compressionAndBending, tensionAndBending } from "../members/nds-3-9.ts";
import { type Checked, checked, factor, loft, sharesOf, use } from "./members.ts";

const sampleText = (name: string): string =>
  readFileSync(new URL(`../../../samples/${name}.frame.yaml`, import.meta.url), "utf8");

/** lb/in along a timber, of its own weight and of the floor; the least weight that resists wind is another load. */
function lineLoad(c: Checked, id: string, kind: "D" | "L"): number {
  return c.solution.loads.all
    .filter((l) => l.kind === kind && l.id !== "D/least")
    .flatMap((l) => l.loads)
    .filter((l) => l.timber.id === id)
    .reduce((sum, l) => sum - l.startForce[2], 0);
}

describe("a joist between two ties: simple beam, load over the middle 96 of 100 in", () => {
  const c = checked(loft("4x6"));
  const [wD, wL] = [lineLoad(c, "joist.2", "D"), lineLoad(c, "joist.2", "L")];
  const w = wD + wL;

  test("carries 24 in of floor: 30 psf × 2 ft = 5 lb/in [derived]", () => expect(wL).toBeCloseTo(5));

  test("bending: M = w c (2L − c)/8, S = bd²/6 [derived]", () => {
    const bending = use(c, "joist.2", "bending");
    expect(bending.value).toBeCloseTo((w * 96 * (200 - 96)) / 8 / 24, 1);
    expect(bending.combination).toBe("D + L");
    expect(bending.at).toBeCloseTo(48, 1);
  });

  test("limit: F_b × C_D 1.0 × C_F 1.3 × C_L, green; no C_r and no hold without a named deck (NDS 4.3.9) [memory]", () => {
    const bending = use(c, "joist.2", "bending");
    expect([factor(bending, "C_D"), factor(bending, "C_F"), factor(bending, "C_r")]).toEqual([1, 1.3, 1]);
    const product = bending.factors.reduce((p, f) => p * f.value, bending.reference!.value);
    expect(bending.limit).toBeCloseTo(product, 3);
    expect(factor(bending, "C_L")).toBeLessThan(1);
  });

  test("shear at its pocket: w c/2, nothing left out, since it does not lie on the tie [derived]", () => {
    expect(use(c, "joist.2", "shear").value).toBeCloseTo((1.5 * w * 48) / 24, 1);
  });

  test("sag: W (8L³ − 4Lc² + c³)/384EI, live L/360, and with creep 2.0 L/240 [derived]", () => {
    const E = 0.9 * c.members.get("joist.2")!.wood.values.E.value;
    const sag = (load: number): number =>
      (load * 96 * (8 * 100 ** 3 - 4 * 100 * 96 ** 2 + 96 ** 3)) / (384 * E * ((4 * 6 ** 3) / 12));
    const live = use(c, "joist.2", "live-deflection");
    expect(live.value / sag(wL)).toBeCloseTo(1, 2);
    expect(live.limit).toBeCloseTo(96 / 360);
    const total = use(c, "joist.2", "total-deflection");
    expect(total.value / (2 * sag(wD) + sag(wL))).toBeCloseTo(1, 2);
    expect(total.limit).toBeCloseTo(96 / 240);
  });
});

describe("a portal on knees: the post below its knees is a cantilever from the foot's reaction", () => {
  // wind on the bare frame would bend the posts elsewhere
  const c = checked(SHED.replace(/ {2}wind: .*\n/, ""));
  const { model, solution } = c;
  const dead = solution.cases.find((s) => s.frameCase.id === "1")!;
  const foot = solution.hold.skeleton.bearings.find((b) => b.timber.id === "post@A1")!;
  const [rx, ry, rz] = dead.combined.reactions().find((r) => r.node === foot.node)!.force;

  test("bending at the knee's bearing: H x/S both ways, on the section left there [derived]", () => {
    const bending = use(c, "post@A1", "bending");
    expect(bending.place).toBe("knee-ends@A1-B1.foot");
    const post = model.byId.get("post@A1")!;
    const { section } = new NetSections(post, timberCuts(model).get(post.id)!).at(bending.at);
    // weight of the post below is in N as well: it acts off the centroid of what is left
    const own = lineLoad(c, "post@A1", "D") * bending.at;
    const N = -(rz - own);
    const { axis, depthDir } = post;
    const z = [
      axis[1] * depthDir[2] - axis[2] * depthDir[1],
      axis[2] * depthDir[0] - axis[0] * depthDir[2],
    ] as const;
    // the foot is pushed by R: M_z = −R_y x with M_z′ = −V_y, M_y = R_z x the other way round
    const alongY = rx * depthDir[0] + ry * depthDir[1];
    const alongZ = rx * z[0] + ry * z[1];
    const Mz = alongY * bending.at;
    const My = -alongZ * bending.at;
    const Fb = c.members.get(post.id)!.wood.values.Fb.value * 0.9;
    const sum = (axial: number, moment: number): number =>
      (Math.abs(Mz + axial * section.y) / section.Sz + Math.abs(moment - axial * section.z) / section.Sy) /
      Fb;
    // just above, the knee's push down has left the post, and since the knee is flush with the outer face, 2 in off the
    // post's middle, it has turned it along the wall
    const push = jointForces([dead]).get("knee-ends@A1-B1.foot")!.alongGrain.most;
    expect(bending.value).toBeCloseTo(Math.max(sum(N, My), sum(N + push, My + 2 * push)), 4);
  });

  test("compression: R/A against F_c* C_P, slenderness 2.4 × 55 1/2 in / 8 in [memory]", () => {
    const compression = use(c, "post@A1", "compression");
    expect(compression.value).toBeCloseTo(rz / 64, 1);
    expect(use(c, "post@A1", "slenderness")).toMatchObject({ limit: 50, unit: "ratio" });
    // foot at 9 in; the knee's toe lies a leg of 30 in below the plate's housed underside, 94 and 1/2 in
    expect(use(c, "post@A1", "slenderness").value).toBeCloseTo((2.4 * (94.5 - 30 - 9)) / 8, 4);
  });

  test("green: C_M 0.91 on F_c [published]", () => {
    expect(factor(use(c, "post@A1", "compression"), "C_M")).toBe(0.91);
  });
});

test("a beam on a round pier without saddle bears on the strip of its top [derived]", () => {
  const c = checked(
    sampleText("kayak-shelter").replaceAll(
      "anchor: {kind: embedded-strap, stand-off: 25}",
      "anchor: {kind: embedded-strap}",
    ),
  );
  const bearing = use(c, "beam@B", "bearing");
  expect(bearing.place).toMatch(/^(bank@|rafter-seat)/);
  const results = c.members.get("beam@B")!;
  // integral of the chord over the strip: 2 (h √(r² − h²) + r² asin(h/r))
  const [r, h] = [350 / 25.4 / 2, results.timber.width / 2];
  const strip = 2 * (h * Math.sqrt(r * r - h * h) + r * r * Math.asin(h / r));
  const own = bearingsOf(c.model, c.solution.hold, groundsOf(c.model, c.solution.hold.skeleton)).filter((b) =>
    b.place.startsWith("bank@"),
  );
  expect(own.map((b) => b.area)).toEqual(own.map(() => expect.closeTo(strip, 6)));
  expect(own).toHaveLength(4);
});

test("shear beside a support it lies on: at the depth from the face, near single loads by distance ÷ depth [published]", () => {
  const c = checked(sampleText("kayak-shelter"));
  const frame = c.solution.hold;
  const beam = c.model.byId.get("beam@B")!;
  const lengths = bucklingLengths(
    c.model,
    groundsOf(c.model, frame.skeleton),
    timberCuts(c.model),
    sharesOf(c),
  );
  const { plans } = memberPlans({
    model: c.model,
    frame,
    wood: woodOf,
    lengths,
    cuts: timberCuts(c.model),
  });
  const plan = plans.find((p) => p.timber === beam)!;
  const solved = c.solution.cases.find((s) => s.frameCase.id === "3-S:S/balanced")!;
  const exact = prepare(solved.frame.structure).solve(solved.load()).solution!;
  const elements = frame.elementsOf.get(beam.id)!;
  const shearAt = (x: number, side: "before" | "after"): number => {
    const own = elements.filter((e) => frame.pieces[e]!.from <= x + 1e-9 && frame.pieces[e]!.to >= x - 1e-9);
    const element = side === "before" ? own[0]! : own.at(-1)!;
    return exact.along(element)!.valueAt("Vy", x - frame.pieces[element]!.from, side);
  };
  let loaded = 0;
  for (const support of lengths.get(beam.id)!.supports) {
    const spot = plan.shearSpots.find((s) => s.place === support.place && s.x > support.at);
    const face = support.at + support.half;
    if (!spot || Math.abs(spot.x - face - beam.depth) > 1e-6) continue;
    // what the seats between the face and there press, each in proportion
    const near = elements.map((e) => frame.pieces[e]!.to).filter((x) => x > face + 1e-6 && x < spot.x - 1e-6);
    const hand = near.reduce(
      (sum, x) => sum + ((shearAt(x, "before") - shearAt(x, "after")) * (x - face)) / beam.depth,
      shearAt(spot.x, "after"),
    );
    const read = spot.index.reduce((sum, i, k) => sum + spot.share[k]! * solved.combined.sections()[i]!, 0);
    expect(read / hand).toBeCloseTo(1, 4);
    loaded += near.length;
  }
  expect(loaded).toBeGreaterThan(0);
});

test("a tenon without housing carries its tie's shear: V ≤ ⅔ F_v′ b d_n (d_n/d)² [published]", () => {
  const c = checked(sampleText("garden-arch"));
  const notched = use(c, "tie@1", "notched-shear");
  // full depth of 5 in on a tenon of 1 1/2 in
  const V = Math.max(forceOf(c, "tie-end@A1"), forceOf(c, "tie-end@B1"));
  expect(notched.value).toBeCloseTo((1.5 * V) / (1.5 * 5), 1);
  expect(notched.limit).toBeCloseTo(notched.reference!.value * 0.9);
});

function forceOf(c: Checked, joint: string): number {
  return jointForces(c.solution.cases).get(joint)!.alongGrain.most;
}

describe.each(["cider-press-pavilion", "kayak-shelter"])("%s", (name) => {
  const c = checked(sampleText(name));
  const { model, solution, members } = c;
  const frame = solution.hold;
  const cuts = timberCuts(model);
  const lengths = bucklingLengths(model, groundsOf(model, frame.skeleton), cuts, sharesOf(c));
  const solved = new Map<SolvedCase, Solution>();
  const whole = new Map<unknown, ReturnType<typeof prepare>>();
  const exact = (s: SolvedCase): Solution => {
    const { structure } = s.frame;
    if (!whole.has(structure)) whole.set(structure, prepare(structure));
    if (!solved.has(s)) solved.set(s, whole.get(structure)!.solve(s.load()).solution!);
    return solved.get(s)!;
  };

  test("every timber is checked, and none is used up", () => {
    expect(c.unchecked).toEqual([]);
    expect(members.size).toBe(model.timbers.length);
    for (const { uses } of members.values()) for (const u of uses) expect(u.ratio, u.what).toBeLessThan(1);
  });

  test("every use names combination, place, reference and factors", () => {
    for (const { timber, uses } of members.values())
      for (const u of uses) {
        expect(u.caseId).not.toBe("");
        expect(u.combination).toMatch(/D/);
        expect(u.at).toBeGreaterThanOrEqual(-1);
        expect(u.at).toBeLessThanOrEqual(timber.span + 1);
        expect(u.factors.length).toBeGreaterThan(0);
        for (const f of u.factors) expect(f.source).not.toBe("");
        if (u.what !== "slenderness") expect(u.reference).toBeDefined();
        if (u.unit === "psi" && u.what !== "bending") expect(u.ratio).toBeCloseTo(u.value / u.limit, 6);
      }
  });

  test("no place between those that are looked at is worse by 2 %, by the library's own formulas [derived]", () => {
    const cases = solution.cases.filter((_, i) => i % 7 === 0);
    for (const result of members.values()) {
      const { timber, wood } = result;
      const own = lengths.get(timber.id)!;
      const sections = new NetSections(timber, cuts.get(timber.id)!);
      const repetitive = repetitiveOf(model, timber, wood, own.decked);
      const most = (what: string): number => result.uses.find((u) => u.what === what)?.ratio ?? 0;
      for (const s of cases) {
        const v = durationValues(timber, wood, own, s.frameCase.combination.duration, repetitive);
        const F = v.limits;
        for (const element of frame.elementsOf.get(timber.id)!) {
          const piece = frame.pieces[element]!;
          const curves = exact(s).along(element)!;
          for (let k = 0; k <= 24; k++) {
            const x = piece.from + ((piece.to - piece.from) * k) / 24;
            if (x < 0 || x > timber.span) continue;
            const { section, tensionArea } = sections.at(x);
            const [N = 0, , , , My = 0, Mz = 0] = curves.forcesAt(x - piece.from);
            const mz = (Mz + N * section.y) / section.Sz;
            const my = (My - N * section.z) / section.Sy;
            const [one, two] = timber.depth >= timber.width ? [mz, my] : [my, mz];
            const Fb1 = one >= 0 ? F.plus1 : F.minus1;
            const Fb2 = two >= 0 ? F.plus2 : F.minus2;
            const [fb1, fb2] = [Math.abs(one), Math.abs(two)];
            if (N > 0) {
              const { tension } = tensionAndBending({
                ft: N / tensionArea,
                fb: fb1,
                Ft: F.Ft,
                FbWithoutCL: F.Fb1,
                FbWithCL: Fb1,
              });
              expect(tension + fb2 / F.Fb2).toBeLessThan(
                1.02 * Math.max(most("tension-and-bending"), most("bending")) + 0.01,
              );
              continue;
            }
            const { ratio } = compressionAndBending({
              fc: -N / (timber.width * (timber.depth - (timber.curve?.rise ?? 0))),
              fb1,
              fb2,
              Fc: F.Fc,
              Fb1,
              Fb2,
              FcE1: F.FcE1,
              FcE2: F.FcE2,
              FbE: one >= 0 ? F.criticalPlus : F.criticalMinus,
            });
            expect(ratio, `${timber.id} at ${x} under ${s.frameCase.id}`).toBeLessThan(
              1.02 * Math.max(most("compression-and-bending"), most("bending")) + 0.01,
            );
          }
        }
      }
    }
  });
});

test("use grows with load: twice the snow, no ratio falls [derived]", () => {
  const text = sampleText("cider-press-pavilion");
  const [once, twice] = [checked(text), checked(text.replace("ground: 45 psf", "ground: 90 psf"))];
  for (const [id, { uses }] of once.members)
    for (const u of uses) {
      if (u.what === "slenderness") continue;
      const more = twice.members.get(id)!.uses.find((o) => o.what === u.what)?.ratio ?? 0;
      expect(more, `${u.what} of ${id}`).toBeGreaterThan(u.ratio - 1e-6);
    }
});

describe("boards named on a floor's joists", () => {
  const boards = "30 psf, deck: {kind: boards, thickness: 1 in}";
  const rise = (text: string, stick: string): number | undefined =>
    factor(use(checked(text), stick, "bending"), "C_r");
  /** A second bay, in which the joists go on in line. */
  const twoBays = (joist: string, count: number): string =>
    loft(joist, boards)
      .replace("2: 9 ft}", "2: 9 ft, 3: 18 ft}")
      .replace("bents: [1, 2], from: A", "bents: [1, 2, 3], from: A")
      .replace("from: 1, to: 2, top: eave", "from: 1, to: 3, top: eave")
      .replace("[A1, A2, B1, B2]", "[A1, A2, A3, B1, B2, B3]")
      .replace(
        "between: [tie@1, tie@2], from: 2 ft, to: 8 ft, count: 4",
        "between: [tie, tie], from: 4 ft, to: 8 ft, count: ".concat(`${count}`),
      );

  test("hold their upper edges: C_L is 1, as NDS 3.3.3.3 has it [published]", () => {
    expect(factor(use(checked(loft("2x8")), "joist.2", "bending"), "C_L")).toBeLessThan(1);
    expect(factor(use(checked(loft("2x8", boards)), "joist.2", "bending"), "C_L")).toBe(1);
  });

  test("share load among four at 24 in: C_r 1.15 (NDS 4.3.9) [published]", () =>
    expect(rise(loft("4x6", boards), "joist.2")).toBe(1.15));

  test("no C_r at 36 in on center [published]", () =>
    expect(rise(loft("4x6", boards).replace("count: 4", "count: 3"), "joist.2")).toBe(1));

  test("no C_r for two abreast in each of two bays, four of one entry; 1.15 for three [published]", () => {
    const two = twoBays("4x6", 2).replace("to: 8 ft, count: 2", "to: 6 ft, count: 2");
    expect(checked(two).model.sticks.get("joist")).toHaveLength(4);
    for (const { id } of checked(two).model.sticks.get("joist")!) expect(rise(two, id)).toBe(1);
    const three = twoBays("4x6", 3);
    for (const { id } of checked(three).model.sticks.get("joist")!) expect(rise(three, id)).toBe(1.15);
  });
});
