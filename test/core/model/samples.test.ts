/**
 * The good samples, timber by timber, against figures worked by hand from the placement rules. The arithmetic stands
 * beside each figure. Source of all: placement rules of the manual, plane geometry (derived).
 */
import { describe, expect, test } from "vitest";
import {
  expectBox,
  expectLength,
  expectNear,
  expectPoint,
  expectTenon,
  idsOf,
  joint,
  jointCounts,
  problemsOf,
  referenceFaces,
  sample,
  stick,
} from "./frames.ts";

const ROOT2 = Math.SQRT2;

describe("garden arch (derived)", () => {
  const model = sample("garden-arch");

  test("has its sticks and no problem", () => {
    expect(problemsOf(model)).toEqual([]);
    // 4 posts, 2 plates, 2 ties, 4 knees in the walls, 4 in the bents: a wall knee stands one at each post, toward the other bent; the 12 in overhang has no room for 16 in
    expect(model.timbers).toHaveLength(16);
    expect(idsOf(model, "knee").sort()).toEqual(["knee@A1-A2", "knee@A2-A1", "knee@B1-B2", "knee@B2-B1"]);
  });

  test("posts: on outer lines, from pier top 4 in and 1 in of stand-off to the plate's underside 90 - 6", () => {
    expectBox(model, "post@A1", [0, 5], [0, 5], [5, 84]);
    expectBox(model, "post@A2", [43, 48], [0, 5], [5, 84]);
    expectBox(model, "post@B1", [0, 5], [55, 60], [5, 84]);
    expectBox(model, "post@B2", [43, 48], [55, 60], [5, 84]);
    expectLength(model, "post@A1", 79 + 3.5); // 84 - 5, tenon
    expect(referenceFaces(stick(model, "post@A1"))).toEqual(["-x", "-y"]);
    expect(referenceFaces(stick(model, "post@B2"))).toEqual(["+x", "+y"]);
  });

  test("plates: 48 in of grid and 12 in at both ends, top 90", () => {
    expectBox(model, "plate@A", [-12, 60], [0, 5], [84, 90]);
    expectBox(model, "plate@B", [-12, 60], [55, 60], [84, 90]);
    expectLength(model, "plate@A", 72);
    expect(referenceFaces(stick(model, "plate@B"))).toEqual(["+y", "+z"]);
  });

  test("ties: between the posts' inside faces 5 and 55, through tenons to their outside faces", () => {
    expectBox(model, "tie@1", [0, 5], [5, 55], [77, 82]); // top 6 ft 10 in
    expectBox(model, "tie@2", [43, 48], [5, 55], [77, 82]);
    expectLength(model, "tie@2", 60); // 50 + 2 × 5
    expect(referenceFaces(stick(model, "tie@1"))).toEqual(["-x", "+z"]);
    expect(referenceFaces(stick(model, "tie@2"))).toEqual(["+x", "+z"]);
  });

  test("knees: 16 in legs from the housed faces, flush with the walls' outsides", () => {
    // housed corner: x 5 - 0.5 = 4.5, z 84 + 0.5 = 84.5; ends of the legs (4.5, 68.5) and (20.5, 84.5)
    expectBox(model, "knee@A1-A2", [4.5, 20.5], [0, 3], [68.5, 84.5]);
    expectBox(model, "knee@B2-B1", [48 - 20.5, 48 - 4.5], [57, 60], [68.5, 84.5]);
    // long edge 16 √2; a toe of 2 in, square to its timber, adds 2 / √2 along the brace at each end
    expectLength(model, "knee@A1-A2", 16 * ROOT2 + 2 * (2 / ROOT2));
    expect(stick(model, "knee@A1-A2").curve).toBeUndefined();
  });

  test("joints", () => {
    expect(jointCounts(model)).toEqual({
      "post-head mortise-and-tenon": 4,
      "tie-end mortise-and-tenon": 4,
      "knee-end brace-tenon": 16,
    });
    const head = joint(model, "post-head@A1");
    // 2 in of set-in would pass the middle of 5 in with 1 1/2 in of tenon, so (5 - 1.5) / 2; 6 - 1 in of room
    expectTenon(head.sizes, {
      thickness: 1.5,
      width: 5,
      length: 3.5,
      setIn: 1.75,
      walls: [1.75, 1.75],
      room: 5,
    });
    expectNear(head.sizes.tenon?.mortiseDepth, 3.75, "mortise depth"); // 3.5 + 0.25
    expect(head.sizes.pegs?.count).toBe(1);
    expect(head.sizes.pegs?.setbacks).toEqual([1.75]); // half the tenon: 4 diameters would be 3 in
    const tie = joint(model, "tie-end@B2");
    expect(tie.sizes.tenon?.through).toBe(true);
    expectTenon(tie.sizes, {
      thickness: 1.5,
      width: 5,
      length: 5,
      setIn: 1.75,
      walls: [1.75, 1.75],
      room: 4,
    });
    const knee = joint(model, "knee-end@A1-A2.foot");
    expectNear(knee.sizes.housing.value, 0.5, "housing");
    // bearing 5 ÷ sin 45°; set-in 1 1/2 in from the wall's outside face; room 5 - 0.5 - 1
    expectTenon(knee.sizes, {
      thickness: 1.5,
      width: 5 * ROOT2,
      length: 2,
      setIn: 1.5,
      walls: [1.5, 2],
      room: 3.5,
    });
  });

  test("piers: top 4 in, tube 28 in below the level ground", () => {
    expect(model.piers.map((p) => p.id)).toEqual(["all@A1", "all@A2", "all@B1", "all@B2"]);
    const [pier] = model.piers;
    expectPoint(pier!.top, [2.5, 2.5, 4], "top");
    expectNear(pier!.tubeBottom, -28, "bottom of the tube");
    expectNear(pier!.bottom, -28, "no footing below");
  });
});

describe("cider-press pavilion (derived)", () => {
  const model = sample("cider-press-pavilion");
  const slope = 7 / 12;
  const cos = 12 / Math.sqrt(193); // √(7² + 12²) = √193
  const sin = 7 / Math.sqrt(193);
  // largest quarter inch with seat × sin ≤ 7 / 4: 1.75 / 0.50387 = 3.473, so 3.25
  const seat = 3.25;
  // tops of the rafters over the plates' outside faces: 112 - 3.25 × 7/12 + 7 / cos = 112 - 1.8958 + 8.1039
  const top0 = 112 - seat * slope + 7 / cos;
  // ridge: 6 in wide, middle 78, near edge at 75: 118.2081 + 43.75
  const ridgeTop = top0 + 75 * slope;

  test("has its sticks and no problem", () => {
    expect(problemsOf(model)).toEqual([]);
    // 6 posts, 2 plates, 3 ties, 3 king-posts, 1 ridge, 8 + 6 + 4 braces, 2 × 9 rafters
    expect(model.timbers).toHaveLength(51);
    expect(idsOf(model, "knee")).toHaveLength(8); // both ways at the inner posts, one way at the outer ones
    expect(idsOf(model, "tie-knee")).toHaveLength(6);
    expect(idsOf(model, "ridge-knee").sort()).toEqual([
      "ridge-knee@1-2",
      "ridge-knee@2-1",
      "ridge-knee@2-3",
      "ridge-knee@3-2",
    ]);
  });

  test("posts, plates and ties", () => {
    // foot 8 + 1, head 112 - 9
    expectBox(model, "post@A1", [0, 8], [0, 8], [9, 103]);
    expectBox(model, "post@A2", [104, 112], [0, 8], [9, 103]); // inner bent centered on 108
    expectBox(model, "post@B3", [208, 216], [148, 156], [9, 103]);
    expectLength(model, "post@B3", 94 + 6.5);
    expectBox(model, "plate@B", [-12, 228], [148, 156], [103, 112]);
    expectLength(model, "plate@A", 240);
    // shoulders 3/4 in inside the posts' faces 8 and 148
    expectBox(model, "tie@1", [0, 8], [7.25, 148.75], [82, 94]);
    expectBox(model, "tie@2", [104, 112], [7.25, 148.75], [82, 94]);
    expectLength(model, "tie@2", 156); // flush with the posts' outside faces
    expect(referenceFaces(stick(model, "tie@2"))).toEqual(["-x", "+z"]);
    expect(referenceFaces(stick(model, "tie@3"))).toEqual(["+x", "+z"]);
    expect(referenceFaces(stick(model, "post@A2"))).toEqual(["-x", "-y"]);
  });

  test("king-posts and ridge: centered, its top edges in the rafters' tops", () => {
    expectNear(ridgeTop, 161.958, "ridge height by hand", 5e-4);
    expectBox(model, "ridge", [-12, 228], [75, 81], [ridgeTop - 9, ridgeTop]);
    expectBox(model, "king-post@1", [0, 8], [74, 82], [94, ridgeTop - 9]);
    expectBox(model, "king-post@2", [104, 112], [74, 82], [94, ridgeTop - 9]);
    expectLength(model, "king-post@3", ridgeTop - 9 - 94 + 2 * 6.5);
    expectLength(model, "ridge", 240);
  });

  test("rafters: nine a side, evenly between rake rafters whose outer faces are the plates' ends", () => {
    // centers -12 + 1.5 = -10.5 to 226.5: 237 / 30 = 7.9, so 8 bays of 29.625
    expect(idsOf(model, "rafter")).toHaveLength(18);
    const rafter = stick(model, "rafter@A.2");
    expectNear(rafter.origin[0], -10.5 + 29.625, "second rafter");
    // tail 18 in out, head 1/2 in into the ridge's face at 75
    expectNear(rafter.origin[1], -18, "tail");
    expectNear(rafter.head.point[1], 75.5, "head");
    // level run 93.5, plumb cut at both ends: 93.5 / cos + 7 × tan
    expectLength(model, "rafter@A.2", 93.5 / cos + 7 * slope);
    expectNear(stick(model, "rafter@B.9").origin[1], 156 + 18, "tail of the other side");
    const side = model.roof?.slopes[0];
    expectNear(side?.spacing, 29.625, "spacing");
    expectNear(side?.span, 75.5 - 0.25 - 3.25 / 2, "middle of the seat to middle of the head's bearing");
    expectNear(side?.deckFrom, -12, "deck");
    expectNear(side?.deckTo, 228, "deck");
  });

  test("braces: shoulder to shoulder, and the hollow of the curved ones", () => {
    const knee = stick(model, "knee@A2-A3");
    // housed corner: x 112 - 0.5, z 103 + 0.5
    expectBox(model, "knee@A2-A3", [111.5, 147.5], [0, 4], [67.5, 103.5]);
    expectNear(knee.curve?.chord, 36 * ROOT2, "chord"); // 50.912
    expectNear(knee.curve?.rise, 100 - Math.sqrt(100 ** 2 - (36 * ROOT2) ** 2 / 4), "R - √(R² - c²/4)");
    expectNear(knee.curve?.rise, 3.2943, "100 - √9352", 1e-4);
    expect(knee.curve?.side).toBe(1); // away from the corner
    expectLength(model, "knee@A2-A3", 36 * ROOT2 + 2 * (3 / ROOT2));
    expectBox(model, "tie-knee@B1-A1", [0, 4], [121.5, 148.5], [55.5, 82.5]); // 148 + 0.5, 82 + 0.5, 27 in
    expectBox(model, "tie-knee@A3-B3", [212, 216], [7.5, 34.5], [55.5, 82.5]);
    expectLength(model, "tie-knee@A1-B1", 27 * ROOT2 + 2 * (3 / ROOT2));
    // ridge 6 in, king-post 8 in: widths differ, so centered on 78
    expectBox(model, "ridge-knee@1-2", [7.5, 31.5], [76, 80], [ridgeTop - 8.5 - 24, ridgeTop - 8.5]);
    expectLength(model, "ridge-knee@1-2", 24 * ROOT2 + 2 * (3 / ROOT2));
  });

  test("joints, kind by kind", () => {
    expect(jointCounts(model)).toEqual({
      "post-head mortise-and-tenon": 6,
      "tie-end wedged-half-dovetail": 6,
      "king-foot mortise-and-tenon": 3,
      "king-head mortise-and-tenon": 3,
      "brace-ends brace-tenon": 36, // two ends of 18 braces
      "rafter-seat birds-mouth": 18,
      "rafter-head housed": 18,
    });
    expect(model.joints.every((j) => !j.assumed)).toBe(true);
  });

  test("mortises and tenons", () => {
    const head = joint(model, "post-head@A1").sizes;
    expectTenon(head, { thickness: 2, width: 8, length: 6.5, setIn: 2, walls: [2, 4], room: 8 });
    expect(head.pegs?.setbacks).toEqual([3.25]); // halfway: four diameters of 7/8 would leave less behind
    expect(head.pegs?.alongWidth).toEqual([-2, 2]); // quarters of 8
    expectNear(head.pegs?.draw.value, 3 / 32, "draw");
    const foot = joint(model, "king-foot@1").sizes;
    expectTenon(foot, { thickness: 2, width: 8, length: 6.5, setIn: 2, walls: [2, 4], room: 11 });
    const king = joint(model, "king-head@2").sizes;
    // ridge 6 in against 8 in: centered, (6 - 1.5) / 2
    expectTenon(king, {
      thickness: 1.5,
      width: 8,
      length: 6.5,
      setIn: 2.25,
      walls: [2.25, 2.25],
      room: 8,
    });
  });

  test("wedged half-dovetails", () => {
    const { tenon, wedge, pegs, housing } = joint(model, "tie-end@A1").sizes;
    expectNear(housing.value, 0.75, "housing");
    expectNear(tenon?.width.value, 10.75, "at the shoulder: 12 - 1.25");
    expectNear(tenon?.length.value, 7.25, "8 - 0.75, flush");
    expect(tenon?.through).toBe(true);
    expectNear(wedge?.heightInner, 1.25, "the drop");
    expectNear(wedge?.heightOuter, 1.25 + 7.25 / 10, "rises one in ten");
    expectNear(wedge?.width, 2, "as thick as the tenon");
    expect(pegs?.count).toBe(4);
    // thirds of 7.25 to the eighth: 2 3/8 and 4 7/8, from the housed face
    expect(pegs?.setbacks).toEqual([3.125, 5.625]);
    expect(joint(model, "tie-end@A1").solids.pegs).toHaveLength(4);
  });

  test("brace tenons: 3 in long, half the wood between housings less 1/2 in where two share a post", () => {
    const outer = joint(model, "brace-ends@A1-A2.foot").sizes;
    expectTenon(outer, {
      thickness: 1.5,
      width: 8 * ROOT2,
      length: 3,
      setIn: 1.5,
      walls: [1.5, 5],
      room: 6.5,
    });
    const inner = joint(model, "brace-ends@A2-A3.foot").sizes;
    expectTenon(inner, {
      thickness: 1.5,
      width: 8 * ROOT2,
      length: 3,
      setIn: 1.5,
      walls: [1.5, 5],
      room: 3.5,
    });
    const plate = joint(model, "brace-ends@A2-A3.head").sizes;
    expectTenon(plate, {
      thickness: 1.5,
      width: 8 * ROOT2,
      length: 3,
      setIn: 1.5,
      walls: [1.5, 5],
      room: 7.5,
    });
    const tie = joint(model, "brace-ends@A1-B1.head").sizes;
    expectTenon(tie, {
      thickness: 1.5,
      width: 6 * ROOT2,
      length: 3,
      setIn: 1.5,
      walls: [1.5, 5],
      room: 10.5,
    });
    const king = joint(model, "brace-ends@2-3.foot").sizes;
    expectTenon(king, {
      thickness: 1.5,
      width: 6 * ROOT2,
      length: 3,
      setIn: 3.25,
      walls: [3.25, 3.25],
      room: 3.5,
    });
    const ridge = joint(model, "brace-ends@2-3.head").sizes;
    expectTenon(ridge, {
      thickness: 1.5,
      width: 6 * ROOT2,
      length: 3,
      setIn: 2.25,
      walls: [2.25, 2.25],
      room: 7.5,
    });
  });

  test("seats and heads of the rafters", () => {
    const birdsMouth = joint(model, "rafter-seat@A.1").sizes.seat!;
    expectNear(birdsMouth.level.value, seat, "level seat");
    expectNear(birdsMouth.plumb, seat * slope, "plumb cut 1.8958");
    expectNear(birdsMouth.depth, seat * sin, "notch 1.6376");
    expectNear(birdsMouth.heightAbovePlate, 7 / cos - seat * slope, "6.2081");
    expectNear(birdsMouth.woodLeft, 7 - seat * sin, "5.3624");
    const notch = joint(model, "rafter-seat@B.3").solids.notches[0]!;
    expectNear(notch.base[1], 156 - seat, "inner end of the seat");
    expectNear(notch.base[2], 112, "the plate's top");
    expectNear(joint(model, "rafter-head@B.3").sizes.housing.value, 0.5, "housing");
  });

  test("piers: on sloping ground, tube 50 in below its lowest point at the pier, 12 in of footing", () => {
    const pier = model.piers.find((p) => p.id === "all@A2")!;
    expectPoint(pier.top, [108, 4, 8], "top");
    // 8 in either way of bent 2: up 4 × 8/108 toward bent 1, down 7 × 8/108 toward bent 3
    expectNear(pier.groundHigh, -4 + (4 * 8) / 108, "highest ground");
    expectNear(pier.groundLow, -4 - (7 * 8) / 108, "lowest ground");
    expectNear(pier.tubeBottom, -4 - (7 * 8) / 108 - 50, "bottom of the tube");
    expectNear(pier.bottom, -4 - (7 * 8) / 108 - 62, "bottom of the footing");
    const end = model.piers.find((p) => p.id === "all@B3")!;
    expectNear(end.groundLow, -11, "level beyond the last bent");
    expectNear(end.groundHigh, -4 - 7 * ((212 - 8 - 108) / 108), "8 in toward bent 2");
  });
});
