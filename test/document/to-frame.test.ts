import { describe, expect, it } from "vitest";
import { fromInches, fromMillimetres } from "../../server/core/quantity/length.ts";
import { readFrame } from "../../server/document/read.ts";
import { linesOf } from "./facts.ts";
import { PAVILION, SMALL } from "./samples.ts";

const frameOf = (text: string) => readFrame(text).frame;

describe("the pavilion", () => {
  const frame = frameOf(PAVILION);

  it("comes through value by value", () => {
    expect(frame.name).toBe("Cider-press pavilion");
    expect(frame.basis).toEqual({ path: "/basis", loads: "asce-7-16", riskCategory: "i" });
    expect(frame.site.snow).toMatchObject({
      ground: 45,
      exposure: "partially-exposed",
      thermal: "open",
      slides: false,
    });
    expect(frame.site.wind).toMatchObject({ exposure: "C", flow: "clear" });
    expect(frame.site.wind?.speed).toBeCloseTo(107, 9);
    expect(frame.site.frostDepth).toBe(fromInches(32));
    expect(frame.site.ground).toEqual([
      { key: "1", height: 0, path: "/site/ground/1" },
      { key: "2", height: fromInches(-4), path: "/site/ground/2" },
      { key: "3", height: fromInches(-11), path: "/site/ground/3" },
    ]);
    expect(frame.classes.map(({ name, seasoning, surface }) => [name, seasoning, surface])).toEqual([
      ["frame", "green", "rough"],
      ["rafters", "dry", "rough"],
      ["pegs", "green", "rough"],
    ]);
    expect(frame.mill.kerf).toBe(fromInches(3 / 32));
    expect(frame.grid.walls.map(({ id, at }) => [id, at])).toEqual([
      ["A", 0],
      ["B", fromInches(156)],
    ]);
    expect(frame.grid.levels.map(({ id }) => id)).toEqual(["pier-top", "tie-top", "eave"]);
    expect(frame.members.map(({ name }) => name)).toEqual([
      "post",
      "plate",
      "tie",
      "king-post",
      "ridge",
      "knee",
      "tie-knee",
      "ridge-knee",
    ]);
    const [post, plate, , , , knee] = frame.members;
    expect(post?.at?.map(({ wall, bent }) => `${wall}${bent}`)).toEqual(["A1", "A2", "A3", "B1", "B2", "B3"]);
    expect(post?.from).toEqual({ text: "pier-top", path: "/members/post/from" });
    expect(plate?.top).toEqual({ text: "eave", path: "/members/plate/top" });
    expect(plate?.overhang).toEqual({ from: fromInches(12), to: fromInches(12) });
    expect(knee?.curve).toEqual({ path: "/members/knee/curve", radius: fromInches(100) });
    expect(frame.joints.find(({ name }) => name === "tie-end")).toMatchObject({
      kind: "wedged-half-dovetail",
      drop: fromInches(1.25),
      pegs: { count: 4 },
    });
    expect(frame.joints.at(-1)?.of.map(({ text }) => text)).toEqual(["knee", "tie-knee", "ridge-knee"]);
    expect(frame.roof).toMatchObject({ kind: "gable", pitch: { rise: 7, run: 12 } });
    expect(frame.roof?.rafters).toMatchObject({ head: { kind: "housed" }, fasten: { count: 2 } });
    expect(frame.roof?.rafters?.overhang).toMatchObject({
      eave: fromInches(18),
      rake: fromInches(12),
      high: 0,
    });
    expect(frame.piers[0]).toMatchObject({ kind: "tube", diameter: fromInches(16), lateral: "doubled" });
    expect(frame.crew).toMatchObject({ people: 2, machine: { kind: "forks" } });
    expect(frame.prices).toEqual([
      { item: "concrete-bag", path: "/prices/concrete-bag", each: 7.1 },
      { item: "peg", path: "/prices/peg", each: 1.8 },
    ]);
    expect(frame.accepted).toEqual([]);
    expect(frame.unread.size).toBe(0);
  });
});

describe("the rest of the language", () => {
  it("is read too", () => {
    const text = `
units: mm
timber: {own: {species: white-oak, values: {Fb: 6 MPa, G: 0.6}, because: tested, weight: 900 kg/m3}}
grid:
  walls: {A: {at: 0, reference: outward}, B: 4 m}
  bents: {1: 0, 2: 3000}
members:
  joist: {kind: joist, section: 50x200, bents: [1, 2], from: A, to: B, spacing: 600, layout: fixed, top: 2.4 m}
  gate: {kind: beam, section: 100x100, ends: [{at: A1, level: 1 m}, {at: B@1 m, offset: [0, -4 in, 0]}], hung-on: post@A1}
  sill: {kind: sill, section: 200x200, walls: A, from: 1, to: 2, overhang: {from: 0, to: 300}, splice: {at: 2, kind: half-lap-scarf}, turned: true}
  prop: {kind: brace, section: 100x100, between: [joist, sill], legs: {joist: 900, sill: 600}, above: true, face: center}
roof: {kind: shed, high: A, pitch: 15 deg, rafters: {section: 50x150, count: 9, head: {kind: birds-mouth, into: sill}}}
piers: {pad: {kind: pad, width: 600, at: [B@1 m], top: 100}}
floors: {loft: {on: joist, live: 1.5 kPa}}
accept: [{check: post-slender, at: post@A2, because: seen}, {check: x, because: y}]
`;
    expect(linesOf(text)).toEqual([]);
    const frame = frameOf(text);
    expect(frame.units).toBe("mm");
    expect(frame.classes[0]?.values.get("G")).toBe(0.6);
    expect(frame.classes[0]?.values.get("Fb")).toBeCloseTo(870.2, 1);
    expect(frame.grid.walls[0]).toMatchObject({ reference: "outward", at: 0 });
    const [joist, gate, sill, prop] = frame.members;
    expect(joist).toMatchObject({
      spacing: fromMillimetres(600),
      layout: "fixed",
      top: { length: fromMillimetres(2400) },
    });
    expect(gate?.hungOn).toEqual({ text: "post@A1", path: "/members/gate/hung-on" });
    expect(gate?.ends?.[1]).toMatchObject({
      at: { wall: "B", along: fromMillimetres(1000) },
      offset: [0, fromInches(-4), 0],
    });
    expect(sill).toMatchObject({
      turned: true,
      overhang: { from: 0, to: fromMillimetres(300) },
      splice: { kind: "half-lap-scarf" },
    });
    expect(prop).toMatchObject({ above: true, face: "center" });
    expect(prop?.legs?.map(({ along, length }) => [along.text, length])).toEqual([
      ["joist", fromMillimetres(900)],
      ["sill", fromMillimetres(600)],
    ]);
    expect(frame.roof).toMatchObject({ kind: "shed", high: { text: "A" }, rafters: { count: 9 } });
    expect(frame.piers[0]).toMatchObject({ kind: "pad", diameter: fromMillimetres(600) });
    expect(frame.floors[0]?.live).toBeCloseTo(31.33, 2);
    expect(frame.accepted.map(({ at }) => at)).toEqual(["post@A2", undefined]);
  });
});

describe("values that cannot be read", () => {
  it("are facts that say why and where", () => {
    expect(linesOf(PAVILION.replace("leg: 27 in", "leg: 27 inn"))).toEqual([
      expect.stringMatching(/^unreadable-quantity \/members\/tie-knee\/leg "27 inn" unknown-unit at 3/),
    ]);
    expect(linesOf(PAVILION.replace("ground: 45 psf", "ground: 45"))).toEqual([
      expect.stringMatching(/^unreadable-quantity \/site\/snow\/ground "45" no-unit/),
    ]);
    expect(linesOf(SMALL.replace("[A1, A2]", "[A1, B@4 fft]"))).toEqual([
      expect.stringMatching(/^unreadable-quantity \/members\/post\/at\/1 "B@4 fft" unknown-unit at 4/),
    ]);
  });

  it("leave out the timber they place or size, and keep its name", () => {
    for (const [from, to] of [
      ["section: 8x8", "section: 8y8"],
      ["[A1, A2]", "[A1, B@4 fft]"],
      ["kind: post", "kind: pots"],
    ] as const) {
      const frame = frameOf(SMALL.replace(from, to));
      expect(frame.members).toEqual([]);
      expect([...frame.unread]).toEqual(["post"]);
    }
  });

  it("leave out the wall, bent or level they place", () => {
    const frame = frameOf(SMALL.replace("13 ft", "13 fet"));
    expect(frame.grid.walls.map(({ id }) => id)).toEqual(["A"]);
    expect(frame.unread.has("B")).toBe(true);
    expect(frameOf(PAVILION.replace("8 in, tie-top", "8 inn, tie-top")).unread.has("pier-top")).toBe(true);
  });

  it("never turn an accepted place into everywhere", () => {
    expect(frameOf(`${SMALL}accept: [{check: x, at: , because: y}]\n`).accepted).toEqual([]);
  });
});

describe("values without sense", () => {
  it("are reported and left out", () => {
    expect(linesOf(PAVILION.replace("section: 8x9", "section: 0x9"))).toEqual([
      'value-out-of-range /members/plate/section "0x9"',
    ]);
    expect(linesOf(PAVILION.replace("leg: 27 in", "leg: 0"))).toEqual([
      'value-out-of-range /members/tie-knee/leg "0"',
    ]);
    expect(linesOf(PAVILION.replace("leg: 27 in", "leg: -27 in"))).toEqual([
      'value-out-of-range /members/tie-knee/leg "-27 in"',
    ]);
    expect(linesOf(PAVILION.replace("B: 13 ft", "B: 13000 ft"))).toEqual([
      'value-out-of-range /grid/walls/B "13000 ft"',
    ]);
    expect(linesOf(PAVILION.replace("ground: 45 psf", "ground: -45 psf"))).toEqual([
      'value-out-of-range /site/snow/ground "-45 psf"',
    ]);
    expect(linesOf(PAVILION.replace("B: 13 ft", "B: -13 ft"))).toEqual([]);
  });

  const WOOD = "species: eastern-white-pine, grade: no-1";
  it.each([
    ["no wind", "speed: 107 mph", "speed: 0 mph", "/site/wind/speed"],
    ["a wind beyond any map", "speed: 107 mph", "speed: 900 mph", "/site/wind/speed"],
    ["snow beyond any map", "ground: 45 psf", "ground: 45 psi", "/site/snow/ground"],
    ["wood without weight", WOOD, `${WOOD}, weight: 0 pcf`, "/timber/frame/weight"],
    ["wood like lead", WOOD, `${WOOD}, weight: 700 pcf`, "/timber/frame/weight"],
    ["no strength", WOOD, `${WOOD}, values: {Fb: 0 psi}`, "/timber/frame/values/Fb"],
    ["strength of steel", WOOD, `${WOOD}, values: {Fb: 36000 psi}`, "/timber/frame/values/Fb"],
    ["strength of paper", WOOD, `${WOOD}, values: {Fc: 1 psi}`, "/timber/frame/values/Fc"],
    ["shear of rotten wood", WOOD, `${WOOD}, values: {Fv: 9 psi}`, "/timber/frame/values/Fv"],
    ["shear of steel", WOOD, `${WOOD}, values: {Fv: 1100 psi}`, "/timber/frame/values/Fv"],
    ["wood like foam", WOOD, `${WOOD}, weight: 1 pcf`, "/timber/frame/weight"],
    ["stiffness of steel", WOOD, `${WOOD}, values: {E: 29000000 psi}`, "/timber/frame/values/E"],
    ["people who lift nothing", "each: 80 lb", "each: 0 lb", "/crew/each"],
    ["a wall for a roof", "pitch: 7:12", "pitch: 89.9 deg", "/roof/pitch"],
    ["a flat wedge", "wedge: {species", "wedge: {slope: 0:10, species", "/joints/tie-end/wedge/slope"],
    ["a wedge that slips", "wedge: {species", "wedge: {slope: 12:12, species", "/joints/tie-end/wedge/slope"],
  ])("%s", (_, written, instead, path) => {
    expect(PAVILION).toContain(written);
    const facts = linesOf(PAVILION.replace(written, instead)).filter(
      (fact) => !fact.startsWith("missing-key"),
    );
    expect(facts).toEqual([expect.stringContaining(`value-out-of-range ${path} `)]);
  });

  it.each(["1e-9", "0.04", "1.6"])("are a specific gravity of no wood, which is not taken: %s", (G) => {
    const { frame, source } = readFrame(
      PAVILION.replace(WOOD, `${WOOD}, values: {G: ${G}}, because: tested`),
    );
    expect(source.facts).toMatchObject([{ kind: "wrong-value", path: "/timber/frame/values/G" }]);
    expect([...(frame.classes[0]?.values ?? [])]).toEqual([]);
  });

  it("are not what stands at the edge of sense", () => {
    const edges = "Fb: 40 psi, Ft: 20 psi, Fv: 10 psi, Fc-perp: 25 psi, Fc: 25 psi, G: 0.05";
    expect(linesOf(PAVILION.replace(WOOD, `${WOOD}, values: {${edges}}, because: tested`))).toEqual([]);
    for (const pitch of ["0:12", "60:12"])
      expect(linesOf(PAVILION.replace("pitch: 7:12", `pitch: ${pitch}`))).toEqual([]);
    expect(linesOf(PAVILION.replace("ground: 45 psf", "ground: 0 psf"))).toEqual([]);
    expect(linesOf(PAVILION.replace(WOOD, `${WOOD}, values: {E: 3100000 psi}, because: tested`))).toEqual([]);
  });

  it("show the bounds in inches", () => {
    const { facts } = readFrame(PAVILION.replace("leg: 27 in", "leg: 400 ft")).source;
    expect(facts).toMatchObject([{ kind: "value-out-of-range", least: 0, most: 3600, dimension: "length" }]);
    const housing = readFrame(PAVILION.replace("housing: 1/2 in", "housing: -1/2 in")).source.facts;
    expect(housing).toEqual([
      {
        kind: "value-out-of-range",
        path: "/joints/brace-ends/housing",
        text: "-1/2 in",
        dimension: "length",
        least: 0,
      },
    ]);
  });

  it("are inch sections in a millimetre file", () => {
    const metric = SMALL.replace("timber:", "units: mm\ntimber:");
    expect(linesOf(metric)).toEqual(['inch-section-in-mm /members/post/section "8x8" → 8x8 in']);
    expect(linesOf(metric.replace("8x8", "8x8 in"))).toEqual([]);
    expect(linesOf(metric.replace("8x8", "2x8 nominal"))).toEqual([]);
    expect(linesOf(metric.replace("8x8", "200x200"))).toEqual([]);
    expect(linesOf(metric.replace("8x8", "20x100 mm"))).toEqual([]);
  });
});
