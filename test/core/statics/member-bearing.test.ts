/**
 * Wood pressed by wood: areas from the cut sizes by hand, forces from those of the joints, limits by NDS 3.10: F_c⊥′ with C_b
 * (3.10.4), end grain 0.75 F_c* (3.10.1.3), and between them Hankinson's formula (3.10.3).
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Bearing, pressing } from "../../../server/core/statics/bearing-force.ts";
import { bucklingLengths } from "../../../server/core/statics/effective-length.ts";
import { forceTable, rowOf } from "../../../server/core/statics/force-table.ts";
import { jointForces } from "../../../server/core/statics/joint-forces.ts";
import { bearingLimit, bearingsOf } from "../../../server/core/statics/member-bearing.ts";
import { memberPlans } from "../../../server/core/statics/member-plan.ts";
import { groundsOf } from "../../../server/core/statics/member-supports.ts";
import { durationValues } from "../../../server/core/statics/member-values.ts";
import { timberCuts } from "../../../server/core/statics/net-section.ts";
import type { SolvedCase } from "../../../server/core/statics/solve-frame.ts";
import { woodOf } from "../../../server/core/statics/timber-wood.ts";
import { SHED } from "../../shed.ts";
import { type Checked, checked, factor, loft, sharesOf, use } from "./members.ts";

const read = (path: string): string => readFileSync(new URL(`../../../${path}`, import.meta.url), "utf8");

/** The bearings at a joint, in the wood of one timber. */
function bearings(c: Checked, joint: string, timber: string): Bearing[] {
  const { hold } = c.solution;
  return bearingsOf(c.model, hold, groundsOf(c.model, hold.skeleton)).filter(
    (b) => b.place === joint && b.timber.id === timber,
  );
}

/** lb that a bearing takes in a case. */
function force(b: Bearing, solved: SolvedCase): number {
  return pressing(b.source, solved, () => 0);
}

/** psi that its wood may take under ten years' load. */
function limit(c: Checked, b: Bearing): ReturnType<typeof bearingLimit> {
  const { model, solution } = c;
  const cuts = timberCuts(model);
  const lengths = bucklingLengths(model, groundsOf(model, solution.hold.skeleton), cuts, sharesOf(c));
  const { plans } = memberPlans({ model, frame: solution.hold, wood: woodOf, lengths, cuts });
  const plan = plans.find((p) => p.timber.id === b.timber.id)!;
  const duration = { symbol: "C_D", value: 1, status: "published", source: "NDS Table 2.3.2" } as const;
  return bearingLimit(b, durationValues(plan.timber, plan.wood, plan.lengths, duration, undefined));
}

describe("a tie's end in a post: housing 8 × 1/2 in and tenon 2 × 4 in", () => {
  const c = checked(
    loft("4x6", "150 psf").replace("between: [post, tie], leg: 30 in", "between: [post, tie], leg: 14 in"),
  );
  const [floor] = bearings(c, "tie-end@A1", "tie@1").filter((b) => b.angle > 89);
  const [inPost] = bearings(c, "tie-end@A1", "post@A1").filter((b) => b.angle < 1);

  test("bears on 4 + 8 in² of both [derived]", () => expect([floor!.area, inPost!.area]).toEqual([12, 12]));

  test("across the tie's grain F_c⊥ 350 × C_M 0.67, no C_b at its end [published]", () => {
    const allowed = limit(c, floor!);
    expect(allowed.value).toBeCloseTo(350 * 0.67);
    expect(allowed.factors.find((f) => f.symbol === "C_b")!.value).toBe(1);
  });

  test("along the post's grain 0.75 × F_c × C_M 0.91 × C_D 1.0, for want of a metal plate [memory, NDS 3.10.1.3]", () => {
    const post = c.members.get("post@A1")!.wood.values.Fc.value;
    const allowed = limit(c, inPost!);
    expect(allowed.value).toBeCloseTo(0.75 * post * 0.91);
    expect(allowed.factors.at(-1)).toMatchObject({ source: "NDS 3.10.1.3", status: "memory" });
    expect(allowed.value).toBeGreaterThan(limit(c, floor!).value);
  });

  test("the force is what the joint carries along the post [derived]", () => {
    const use1 = use(c, "tie@1", "bearing");
    const own = c.solution.cases.find((s) => s.frameCase.id === "2-L:L/loft") ?? c.solution.cases.at(-1)!;
    expect(force(floor!, own)).toBeCloseTo(jointForces([own]).get("tie-end@A1")!.alongGrain.most, 6);
    expect(use1.area).toBeDefined();
  });
});

describe("the toe of a knee at 45°: housing 4 × 1/2 in and tenon 1 1/2 × 3 in", () => {
  const c = checked(SHED);
  const dead = c.solution.cases.find((s) => s.frameCase.id === "1")!;
  const joint = "knee-ends@A1-A2.foot";
  const knee = bearings(c, joint, "knee@A1-A2");
  const post = bearings(c, joint, "post@A1");
  const toe = (list: Bearing[]) => list.find((b) => b.area < 10)!;
  const shoulder = (list: Bearing[]) => list.find((b) => b.area > 10)!;

  test("toe 2 + 4 1/2 in²; shoulder 6 √2 in long and 4 in wide less the tenon [derived]", () => {
    expect(toe(knee).area).toBeCloseTo(6.5);
    expect(shoulder(knee).area).toBeCloseTo(6 * Math.SQRT2 * (4 - 1.5));
  });

  test("the thrust divides into its parts along and square to the post [derived]", () => {
    const own = jointForces([dead]).get(joint)!;
    expect(force(toe(knee), dead)).toBeCloseTo(own.alongGrain.most, 6);
    expect(force(shoulder(post), dead)).toBeCloseTo(own.compression.most, 6);
    // back along the knee they are its push
    const element = dead.frame.elementsOf.get("knee@A1-A2")![0]!;
    const N = -forceTable(dead)![rowOf(element, 0)]!;
    expect(N).toBeGreaterThan(50);
    expect((force(toe(knee), dead) + force(shoulder(knee), dead)) * Math.SQRT1_2).toBeCloseTo(N, 6);
  });

  test("in the knee both at 45°: 2 F_c* F_c⊥′/(F_c* + F_c⊥′) [published]", () => {
    const { Fc, "Fc-perp": Fp } = c.members.get("knee@A1-A2")!.wood.values;
    const [along, across] = [
      limit(c, { ...toe(knee), angle: 0 }).value / 0.75,
      limit(c, { ...toe(knee), angle: 90, length: 10 }).value,
    ];
    expect(along).toBeGreaterThan(Fc.value * 0.7);
    expect(across).toBeCloseTo(Fp.value * 0.67);
    for (const b of knee) expect(limit(c, b).value).toBeCloseTo((2 * along * across) / (along + across), 3);
  });

  test("in the post the toe presses end grain, the shoulder side grain 8 1/2 in long, without C_b [published]", () => {
    expect([toe(post).angle, shoulder(post).angle]).toEqual([0, 90]);
    expect(limit(c, shoulder(post)).value).toBeCloseTo(350 * 0.67);
  });

  test("end grain limits until Hankinson's formula falls to 0.75 F_c*: sin² θ = F_c⊥′/3(F_c* − F_c⊥′) [derived]", () => {
    const turned = (angle: number): number => limit(c, { ...toe(knee), angle }).value;
    const [along, across] = [turned(0) / 0.75, turned(90)];
    // 1/F_θ = sin² θ/F_c⊥′ + cos² θ/F_c* reaches 1/(0.75 F_c*) at sin² θ = F_c⊥′/3(F_c* − F_c⊥′)
    const reached = (Math.asin(Math.sqrt(across / 3 / (along - across))) * 180) / Math.PI;
    expect(reached).toBeGreaterThan(10);
    expect(turned(reached - 1)).toBe(turned(0));
    expect(turned(reached + 1)).toBeLessThan(turned(0) * 0.99);
  });

  test("a deeper housing adds its depth times the knee's thickness [derived]", () => {
    const deep = checked(
      SHED.replace("post, plate, tie], housing: 1/2 in", "post, plate, tie], housing: 1 in"),
    );
    expect(toe(bearings(deep, joint, "knee@A1-A2")).area).toBeCloseTo(4 + 4.5);
  });
});

describe("a joist of 4 × 6 in in a tie", () => {
  const at = (joint: string) =>
    checked(loft("4x6").replace("joints:\n", `joints:\n  joist-end: {of: joist, into: tie, ${joint}}\n`));
  const floors = (c: Checked, timber: string, joint = "joist-end@1.foot.2") =>
    bearings(c, joint, timber).filter((b) => b.area < 20 && b.angle > 89);

  test("drop-in pocket: 4 × 2 in; C_b (4 + 3/8)/4 in the tie, none at the joist's end [published]", () => {
    const c = checked(loft("4x6"));
    const [own] = floors(c, "joist.2", "joist-tie@1.foot.2");
    const [other] = floors(c, "tie@1", "joist-tie@1.foot.2");
    expect(own!.area).toBeCloseTo(8);
    expect(limit(c, own!).factors.find((f) => f.symbol === "C_b")!.value).toBe(1);
    expect(limit(c, other!).factors.find((f) => f.symbol === "C_b")!.value).toBeCloseTo(4.375 / 4);
    // all that hangs on the joist's end
    const bearing = use(c, "joist.2", "bearing");
    const V = jointForces(c.solution.cases).get("joist-tie@1.foot.2")!.across.most;
    expect(bearing.value).toBeCloseTo(V / 8, 6);
    expect(bearing.place).toBe("joist-tie@1.foot.2");
    expect(bearing.area).toMatchObject({ value: 8, status: "derived" });
  });

  test("a tenon that lies flat bears with its width: 4 × 3 in, and 4 × 1/2 in of housing [derived]", () => {
    const c = at("kind: mortise-and-tenon, housing: 1/2 in, tenon: {thickness: 2 in, length: 3 in}");
    expect(floors(c, "joist.2")[0]!.area).toBeCloseTo(12 + 2);
  });

  test("housed dovetail: the housing alone, since its socket is cut deeper: 4 × 1/2 in [derived]", () => {
    const c = at(
      "kind: housed-dovetail, housing: 1/2 in, dovetail: {length: 2 in, depth: 3 in, flare: 1/4 in}",
    );
    expect(floors(c, "joist.2")[0]!.area).toBeCloseTo(2);
  });

  test("without housing the dovetail lies on its own floor: (3 1/2 + 4)/2 × 2 in [derived]", () => {
    const c = at("kind: housed-dovetail, housing: 0, dovetail: {length: 2 in, depth: 3 in, flare: 1/4 in}");
    expect(floors(c, "joist.2")[0]!.area).toBeCloseTo(7.5);
  });
});

describe("rafters of the pavilion", () => {
  const c = checked(read("samples/cider-press-pavilion.frame.yaml"));

  test("head in the ridge's housing: 3 × 1/2 in, C_b (3 + 3/8)/3 in the ridge [published]", () => {
    const ridge = use(c, "ridge", "bearing");
    expect(ridge.place).toMatch(/^rafter-head@/);
    expect(ridge.area!.value).toBeCloseTo(1.5);
    expect(factor(ridge, "C_b")).toBeCloseTo(3.375 / 3);
    const own = c.solution.cases.filter((s) => s.frameCase.id === ridge.caseId);
    expect(ridge.value * 1.5).toBeCloseTo(jointForces(own).get(ridge.place!)!.across.most, 3);
  });

  test("a seat is pressed with what its springs carry, whether seats hold or slide [derived]", () => {
    const [seat] = bearings(c, "rafter-seat@A.5", "plate@A");
    let sliding = 0;
    for (const solved of c.solution.cases) {
      const tie = solved.frame.ties.find((t) => t.tie.joint?.id === "rafter-seat@A.5")!;
      const z = solved.frame.structure.links![tie.springs[2]!]!;
      expect(z.direction).toEqual([0, 0, 1]);
      const raw = solved.combined.links[tie.springs[2]!]!;
      const up = tie.tie.meeting.a.kind === "rafter" ? raw : -raw;
      expect(force(seat!, solved)).toBeCloseTo(Math.max(0, up), 6);
      if (solved.seats === "slide") sliding++;
    }
    expect(sliding).toBeGreaterThan(0);
  });

  test("a wedged half-dovetail: housing 8 × 3/4 in and tenon 2 × 7 1/4 in [derived]", () => {
    const [floor] = bearings(c, "tie-end@A2", "tie@2").filter((b) => b.angle > 89);
    expect(floor!.area).toBeCloseTo(6 + 14.5);
  });
});

describe("a principal strut of 6 × 6 in, rising 0.5472 in 1, mortised into tie and king-post", () => {
  const c = checked(
    read("samples/cider-press-pavilion.frame.yaml")
      .replace(
        "  ridge-knee:",
        "  principal: {kind: strut, section: 6x6, ends: [{at: A2, level: tie-top, offset: [0, 24 in, 0]}, {at: A2, level: tie-top, offset: [0, 76 in, 34 in]}]}\n  ridge-knee:",
      )
      .replace(
        "  post-head:",
        "  principal-ends: {kind: mortise-and-tenon, of: principal, into: [tie, king-post], housing: 1 in, tenon: {thickness: 2 in, width: 4 in, length: 3 in}}\n  post-head:",
      ),
  );
  const slope = (Math.atan2(34, 52) * 180) / Math.PI;
  const [shoulder, toe] = bearings(c, "principal-ends@2.foot", "principal");
  const [onTie, alongTie] = bearings(c, "principal-ends@2.foot", "tie@2");

  test("foot: shoulder 6/sin 33.2° × 6 less the tenon 2 × 4, toe 6 × 1 and 2 × 3 in [derived]", () => {
    expect(shoulder!.area).toBeCloseTo((6 / Math.sin((slope * Math.PI) / 180)) * 6 - 8, 6);
    expect(toe!.area).toBeCloseTo(12);
  });

  test("foot: 56.8° and 33.2° to its own grain, 90° and 0° to the tie's [derived]", () => {
    expect([shoulder!.angle, toe!.angle]).toEqual([expect.closeTo(90 - slope, 6), expect.closeTo(slope, 6)]);
    expect([onTie!.angle, alongTie!.angle]).toEqual([90, 0]);
    const [Fc, Fp] = [
      limit(c, { ...toe!, angle: 0 }).value / 0.75,
      limit(c, { ...toe!, angle: 90, length: 9 }).value,
    ];
    const sin2 = Math.sin((slope * Math.PI) / 180) ** 2;
    expect(limit(c, toe!).value).toBeCloseTo((Fc * Fp) / (Fc * sin2 + Fp * (1 - sin2)), 6);
  });

  test("head: shoulder 6/cos 33.2° × 6 less the tenon, at the slope to its own grain [derived]", () => {
    const [head] = bearings(c, "principal-ends@2.head", "principal");
    expect(head!.area).toBeCloseTo((6 / Math.cos((slope * Math.PI) / 180)) * 6 - 8, 6);
    expect(head!.angle).toBeCloseTo(slope, 6);
  });
});

test("a principal rafter whose foot ends at its bird's mouth presses the plate with its seat [derived]", () => {
  const c = checked(read("test/frames/purlins-on-principals.frame.yaml"));
  const seat = c.model.joints.find((j) => j.id === "principal-seat@A1")!;
  const [onPlate, own] = [seat.into, seat.of].map((t) => bearings(c, seat.id, t.id)[0]!);
  expect(onPlate!.area).toBeCloseTo(8 * seat.sizes.seat!.level.value);
  expect([onPlate!.angle, own!.angle]).toEqual([
    90,
    expect.closeTo(90 - (Math.atan(0.5) * 180) / Math.PI, 6),
  ]);
  expect(Math.max(...c.solution.cases.map((s) => force(onPlate!, s)))).toBeGreaterThan(1000);
});

describe("what stands and lies on timbers of the pavilion", () => {
  const c = checked(read("samples/cider-press-pavilion.frame.yaml"));
  const snow = c.solution.cases.find((s) => s.frameCase.id === "3-S:S/balanced" && s.seats === "hold")!;

  test("post head: end grain on its shoulder, 8 × 8 less a 2 × 8 tenon [derived]", () => {
    const [head] = bearings(c, "post-head@A2", "post@A2");
    expect([head!.area, head!.angle]).toEqual([48, 0]);
    expect(force(head!, snow)).toBeCloseTo(jointForces([snow]).get("post-head@A2")!.compression.most, 6);
  });

  test("under a king-post 8 in long: F_c⊥ × 0.67, no C_b [published]", () => {
    const [under] = bearings(c, "king-foot@2", "tie@2");
    expect(force(under!, snow)).toBeCloseTo(jointForces([snow]).get("king-foot@2")!.compression.most, 6);
    const { factors } = limit(c, under!);
    expect(factors.find((f) => f.symbol === "C_M")!.value).toBe(0.67);
    expect(factors.find((f) => f.symbol === "C_b")!.value).toBe(1);
  });

  test("rafter seat: C_b (3 + 3/8)/3 on the plate; on the rafter by Hankinson [published]", () => {
    const [onPlate] = bearings(c, "rafter-seat@A.5", "plate@A");
    expect(limit(c, onPlate!).factors.find((f) => f.symbol === "C_b")!.value).toBeCloseTo(3.375 / 3);
    const [seat] = bearings(c, "rafter-seat@A.5", "rafter@A.5");
    const angle = 90 - (Math.atan(7 / 12) * 180) / Math.PI;
    expect(seat!.angle).toBeCloseTo(angle, 6);
    const hankinson = limit(c, seat!).factors.find((f) => f.symbol === "F_θ/F_c⊥")!;
    expect(hankinson.note).toMatchObject({ parts: { angle: { unit: "degree" } } });
    expect(hankinson.value).toBeGreaterThan(1);
  });
});

test("king-post foot: its shoulder presses the tie across, itself along the grain [derived]", () => {
  const c = checked(read("samples/cider-press-pavilion.frame.yaml"));
  const angle = (timber: string): number[] => bearings(c, "king-foot@2", timber).map((b) => b.angle);
  expect([angle("tie@2"), angle("king-post@2")]).toEqual([[90], [0]]);
  expect(bearings(c, "king-foot@2", "tie@2")[0]!.area).toBe(48);
});
