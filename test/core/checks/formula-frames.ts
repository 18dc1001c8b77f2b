/** Frames in which the checks fire that show their formula: each is broken in one way, or in a few at once. */
import { readFileSync } from "node:fs";
import { ROOFED } from "../../roofed-shed.ts";
import { SHED } from "../../shed.ts";
import { roofOf } from "../roof/roofs.ts";
import { loft } from "../statics/members.ts";
import { dovetailed, gate, pavilion, scarfed, spliced, THREE_BENTS } from "./gate.ts";

const POST = "post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}";
const PLATE = "plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}";
const HEAD = "head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}";

/** @param keys of the joint between post and plate */
const head = (keys: string): string =>
  gate({ joints: `joints: {head: {kind: mortise-and-tenon, of: post, into: plate, ${keys}}}\n` });

/** @param members besides post and plate; @param joints besides the post's */
const withMore = (members: string, joints = ""): string =>
  gate({
    members: `members:\n  ${POST}\n  ${PLATE}\n  ${members}\n`,
    joints: `joints:\n  ${HEAD}\n  ${joints}\n`,
  });

const post = (keys: string): string =>
  gate({ members: `members:\n  ${POST.replace("}", `, ${keys}}`)}\n  ${PLATE}\n` });

const logs = (one: string): string =>
  gate({ mill: `mill: {longest-cut: 100 in, logs: [{species: eastern-white-pine, ${one}, count: 9}]}\n` });

const piers = (...entries: readonly string[]): string =>
  gate({ piers: `piers:\n${entries.map((entry) => `  ${entry}\n`).join("")}` });

const TUBE = "under: post, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}";

/** @param rafters keys of the rafters, in place of the usual ones; @param deck its keys; @param more of the roof */
function roofed(
  rafters: Readonly<Record<"section" | "spacing", string>> &
    Readonly<Partial<Record<"seat" | "overhang", string>>>,
  deck = "kind: boards, thickness: 1 in",
  more = "pitch: 8:12, covering: {kind: standing-seam}",
  timber?: string,
): string {
  const keys = {
    seat: "{kind: birds-mouth}",
    head: "{kind: housed, into: ridge}",
    overhang: "{eave: 12 in, rake: 12 in}",
    ...rafters,
  };
  const all = Object.entries(keys).map(([key, text]) => `${key}: ${text}`);
  return pavilion({
    roof: `roof: {kind: gable, ${more}, rafters: {${all.join(", ")}}, deck: {${deck}}}\n`,
    ...(timber === undefined ? {} : { timber }),
  });
}

const girt = (keys: string): string =>
  withMore(
    "girt: {kind: girt, section: 6x8, walls: [A], from: 1, to: 2, top: 4 ft}",
    `end: {kind: wedged-half-dovetail, of: girt, into: post, ${keys}}`,
  );

const brace = (keys: string, tenon = ""): string =>
  withMore(
    `knee: {kind: brace, between: [post, plate], ${keys}}`,
    `knees: {kind: brace-tenon, of: knee, into: [post, plate]${tenon}}`,
  );

/** Girts from both sides of the middle one of three posts. */
const girts = (size: number, keys: string): string =>
  gate({
    grid: THREE_BENTS,
    members: `
      members:
        post: {kind: post, section: ${size}x${size}, at: [A1, A2, A3], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 3, top: eave}
        girt: {kind: girt, section: 6x6, walls: [A], from: 1, to: 3, top: 5 ft}
    `,
    joints: `joints:\n  ${HEAD}\n  ends: {kind: mortise-and-tenon, of: girt, into: post, ${keys}}\n`,
  });

/** The shed under rafters, its ties on wedged half-dovetails. @param top level of the ties */
const wedgedTie = (top: string): string =>
  ROOFED.replace(
    /^ {2}tie-end: .*$/m,
    "  tie-end: {kind: wedged-half-dovetail, of: tie, into: post, tenon: {thickness: 2 in}, drop: 1 in, pegs: {count: 4, diameter: 3/4 in}}",
  ).replace("tie-top: 7 ft", `tie-top: ${top}`);

/** The same shed with joists that tie its plates together. @param joint of their ends, but for its timbers */
const tiedJoists = (joint: string, seasoning = "green"): string =>
  ROOFED.replace("seasoning: green", `seasoning: ${seasoning}`).replace(
    "joints:\n",
    `  joist: {kind: joist, section: 4x6, between: [plate@A, plate@B], from: 2 ft, to: 7 ft, count: 3}\njoints:\n  joist-end: {of: joist, into: plate, ${joint}}\n`,
  );

const screwed = (keys: string): string =>
  SHED.replace("seasoning: green", "seasoning: dry").replace(
    /^ {2}knee-ends: .*$/m,
    `  knee-ends: {kind: screwed-brace, of: [knee, tie-knee], into: [post, plate, tie], screws: {${keys}}}`,
  );

const held = (fasten: string, heads = ""): string =>
  ROOFED.replace(/, fasten: \{[^}]*\}/, `${heads}, fasten: {${fasten}}`);

const hung = (joint: string, live: string): string =>
  loft("4x8", live).replace("joints:\n", `joints:\n  joist-end: {of: joist, into: tie, ${joint}}\n`);

const given = (text: string, values: string): string =>
  text.replace("seasoning: green}", `seasoning: green, values: {${values}}, because: "for a test"}`);

const SHED_STILL = SHED.replace(/ {2}wind: .*\n/, "");

/** A frame file of the tests or samples. */
const file = (path: string): string => readFileSync(`${path}.frame.yaml`, "utf8");

export const FORMULA_FRAMES: readonly string[] = [
  `frame: ${"x".repeat(1_000_001)}`,
  gate({
    grid: "grid:\n  walls: {A: 0, B: 0}\n  bents: {1: 0, 2: 9 ft, 3: 8 ft}\n  levels: {pier-top: 8 in, eave: 8 ft}\n",
  }),
  gate({
    grid: "grid:\n  walls: {A: 0, B: 10 ft}\n  bents: {1: 0, 2: 9 ft}\n  levels: {pier-top: 8 in, eave: 6 ft 6 in}\n",
  }),
  withMore("stub: {kind: post, section: 6x6, at: [B1], from: 3 ft, to: 34 in}"),
  withMore("rail: {kind: beam, section: 4x6, walls: [A], from: -2 ft, to: 11 ft, top: 4 ft}"),
  withMore(
    "rail: {kind: joist, section: 3x6, between: [post@A1, post@A2], from: 0, to: 8 in, top: 4 ft, count: 4}",
  ),
  withMore("rail: {kind: joist, section: 2x6, between: [post@A1, post@A2], top: 4 ft, spacing: 0.01 in}"),
  withMore("knee: {kind: brace, section: 4x6, between: [post, plate], leg: 9 ft}"),
  brace("section: 4x6, leg: 8 in"),
  brace("section: 4x6, legs: {post: 42 in, plate: 24 in}"),
  brace("section: 4x4, leg: 30 in, curve: {radius: 30 in}"),
  brace("section: 4x6, leg: 30 in", ", tenon: {width: 8 5/8 in}"),
  gate({ joints: "joints: {post-to-plate: {kind: brace-tenon, of: post, into: post}}\n" }),
  gate({ mill: "mill: {longest-cut: 100 in}\n" }),
  logs("small-end: 10 in, length: 20 ft"),
  logs("small-end: 12 in, length: 90 in"),
  post("measured: {width: 7 1/2 in, depth: 8 9/16 in}"),
  post("measured: {width: 8 in, depth: 8 in, at: 20 ft}"),
  // sizes of joints
  head("housing: 7 in, tenon: {thickness: 2 in, length: 3 in}"),
  head("housing: 2 1/2 in"),
  head("tenon: {length: 1/4 in}"),
  head("tenon: {length: 4 in, width: 12 in}"),
  head("tenon: {thickness: 3/4 in, length: 8 in, set-in: 1/2 in}"),
  head("tenon: {thickness: 3 in, length: 6 in}, pegs: {count: 4, diameter: 3/4 in}"),
  head("tenon: {thickness: 2 in, length: 6 in}, pegs: {count: 1, diameter: 2 in}"),
  head("tenon: {thickness: 2 in, length: 6 in}, pegs: {count: 1, diameter: 1 3/8 in}"),
  head("tenon: {thickness: 2 in, length: 6 in}, pegs: {count: 1, diameter: 7/16 in}"),
  head("tenon: {length: 6 in}, pegs: {count: 1, diameter: 3/4 in, draw: 5/32 in}"),
  head("tenon: {length: 6 in}, pegs: {count: 1, diameter: 3/4 in, draw: 1 in}"),
  girt("drop: 4 in"),
  girt("tenon: {thickness: 2 in, length: 4 in}"),
  girt("drop: 1/4 in"),
  girt("drop: 2 1/16 in"),
  girt("wedge: {slope: 1:5, length: 7 in}"),
  girt("wedge: {slope: 1:25, length: 9 in}"),
  girt("wedge: {length: 100 in}"),
  dovetailed("depth: 6 1/2 in, length: 7 1/2 in, flare: 2 in}}"),
  dovetailed("depth: 6 in, length: 4 in, flare: 1 in}}"),
  dovetailed("depth: 3 in, length: 3 in, flare: 1/16 in}}"),
  girts(8, "housing: 1/2 in, tenon: {thickness: 2 in, length: 4 in}"),
  girts(6, "housing: 1 in, tenon: {thickness: 2 in, length: 2 in}, pegs: {count: 0}"),
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave}
        girt: {kind: girt, section: 6x6, walls: [A], from: 1, to: 2, top: 4 ft}
        rail: {kind: girt, section: 6x6, bents: [1], from: A, to: B, top: 3 ft 6 in}
    `,
    joints: `joints:\n  ${HEAD}\n  ends: {kind: mortise-and-tenon, of: [girt, rail], into: post, tenon: {thickness: 1 1/2 in, length: 5 in}, pegs: {count: 1}}\n`,
  }),
  spliced("8 ft", "half-lap-scarf"),
  spliced("33 in", "bladed-scarf"),
  spliced("17 ft 6 in", "bladed-scarf"),
  spliced("17 ft", "stop-splayed-scarf"),
  scarfed("9 ft", "bladed-scarf", ", lap: 15 in, blade: {thickness: 8 in, length: 8 in}"),
  scarfed("9 ft", "bladed-scarf", ", blade: {thickness: 5 in}"),
  scarfed("9 ft", "stop-splayed-scarf", ", lap: 2 in, butt: 5 in"),
  // ground
  gate({ site: "site: {frost-depth: 40 1/16 in, soil: sand, ground: {1: -3 in, 2: 4 in}}\n" }),
  piers(
    "all: {under: post, kind: tube, diameter: 12 in, depth: 20 in, top: 6 in, anchor: {kind: embedded-strap}}",
  ),
  piers(`one: {${TUBE}}`, `two: {${TUBE}}`),
  gate({
    site: "site: {frost-depth: 30 in, soil: bedrock}\n",
    piers: `piers: {all: {${TUBE.replace("40 in", "8 in")}}}\n`,
  }),
  ...["tube, diameter: 6 in", "tube, diameter: 3 in", "pad, width: 14 in"].map((shape) =>
    piers(`all: {under: post, kind: ${shape}, depth: 40 in, rebar: {count: 12, size: 5}}`),
  ),
  withMore(
    "rail: {kind: girt, section: 6x6, walls: [A], from: 1, to: 2, top: 16 in}",
    "rail-end: {kind: mortise-and-tenon, of: rail, into: post, tenon: {thickness: 1 1/2 in, length: 4 in}}",
  ),
  // roofs
  roofed({ section: "3x8", spacing: "24 in" }, undefined, "pitch: 3:12, covering: {kind: slate}"),
  roofed(
    { section: "3x8", spacing: "24 in" },
    undefined,
    "pitch: 8:12, covering: {kind: ribbed-steel, coverage: 26 in}",
  ),
  roofed({ section: "6x8", spacing: "54 in" }),
  roofed({ section: "4x8", spacing: "36 in" }, "kind: boards, thickness: 1 in, laid: diagonal"),
  roofed({ section: "4x8", spacing: "60 in" }, "kind: boards, thickness: 1 1/2 in"),
  roofed({ section: "4x8", spacing: "24 in" }, "kind: boards, thickness: 1/2 in"),
  roofed({ section: "4x8", spacing: "24 in" }, "kind: panels, thickness: 1/4 in"),
  roofed({ section: "4x8", spacing: "36 in" }, "kind: panels, thickness: 1/2 in"),
  roofed({ section: "4x8", spacing: "31 in" }, "kind: panels, thickness: 1/2 in"),
  // decks under more load than they carry: bending, deflection, a person, both loads of panels
  roofOf({ deck: "kind: boards, thickness: 5/8 in", ground: 300 }),
  roofOf({ deck: "kind: boards, thickness: 1 in", spacing: "52 in", ground: 110 }),
  roofOf({ deck: "kind: purlins, spacing: 24 in, thickness: 5/8 in", covering: "ribbed-steel" }),
  roofOf({ deck: "kind: panels, thickness: 7/16 in", ground: 150 }),
  roofOf({ deck: "kind: panels, thickness: 1/2 in", spacing: "36 in", covering: "clay-tile", ground: 60 }),
  roofed({ section: "4x8", spacing: "24 in", overhang: "{eave: 12 in, rake: 6 ft}" }),
  roofed({ section: "3x8", spacing: "24 in", overhang: "{eave: 12 in, rake: 3 ft}" }, "kind: boards"),
  ...["5 in", "12 in"].map((length) =>
    roofed({ section: "3x8", spacing: "30 in", seat: `{kind: birds-mouth, length: ${length}}` }),
  ),
  ...["length: 7 in, housing: 1/4 in", "housing: 3 in", "form: square, housing: 3 in"].map((keys) =>
    roofed({ section: "3x8", spacing: "30 in", seat: `{kind: step-lap, ${keys}}` }),
  ),
  file("test/frames/wagon-shed")
    .replace("kind: step-lap", "kind: step-lap, length: 1 in")
    .replace("25 psf", "90 psf"),
  file("test/frames/wagon-shed")
    .replace("kind: step-lap", "kind: step-lap, length: 1 in, form: square")
    .replace("25 psf", "90 psf"),
  roofed({ section: "2x3", spacing: "48 in" }),
  ...["Fb: 9000 psi, Fv: 900 psi, E: 250000 psi", "Fb: 9000 psi, Fv: 20 psi, E: 9000000 psi"].map((values) =>
    roofed(
      { section: "2x3", spacing: "30 in", overhang: "{eave: 30 in, rake: 12 in}" },
      undefined,
      undefined,
      `timber:\n  frame: {species: eastern-white-pine, grade: no-1}\n  rafters: {species: eastern-hemlock-tamarack, grade: no-2, seasoning: dry, values: {${values}}, because: for a test}\n`,
    ),
  ),
  gate({
    head: "frame: Lean-to\nformat: 1\nbasis: {loads: asce-7-16, risk-category: i}\n",
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        prop: {kind: post, section: 8x8, at: [B1, B2], from: pier-top, to: high}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave, overhang: 12 in}
        high: {kind: plate, section: 8x8, walls: [B], from: 1, to: 2, top: 11 ft, overhang: 12 in}
    `,
    roof: "roof: {kind: shed, high: B, pitch: 5:12, rafters: {section: 3x8, spacing: 24 in}, deck: {kind: boards}, covering: {kind: standing-seam}}\n",
  }),
  ...["A: {}, B: {}, 1: {}, 2: {}", "A: {}, B: {}, 1: {}", "A: {openings: 60 ft²}"].map((sides) =>
    pavilion({ accept: `siding: {${sides}}\n` }),
  ),
  held("kind: screws, count: 1, diameter: 1/4 in, length: 9 in"),
  held("kind: nails, count: 3, diameter: 0.162 in, length: 3 1/2 in"),
  held("kind: nails, count: 9, diameter: 0.162 in, length: 1 in"),
  ...[
    "kind: screws, count: 1, diameter: 1/4 in, length: 9 in",
    "kind: nails, count: 3, diameter: 0.162 in, length: 3 1/2 in",
  ].map((fasten) =>
    file("test/frames/purlins-on-principals").replace(
      "joints:\n",
      `joints:\n  top: {kind: housed, of: principal, into: ridge, fasten: {${fasten}}}\n`,
    ),
  ),
  // anchors
  ...[
    "capacity: {uplift: 100 lb, sideways: 100 lb, down: 100 lb, because: a sheet}",
    "plate: 1 in",
    "strap: {thickness: 1/64 in, width: 1 in}, bolts: {count: 1, diameter: 1/4 in}",
    "strap: {thickness: 1/4 in, width: 2 in, height: 4 in}, bolts: {count: 2, diameter: 3/4 in, up: 2 in, spacing: 2 in}",
    "strap: {thickness: 3/4 in, width: 3 in}, screws: {count: 1, diameter: 0.1 in, length: 2 in}",
    "strap: {thickness: 1/32 in, width: 1/2 in}",
    "strap: {thickness: 3/16 in, width: 20 in, let-in: 5 in}, bolts: {count: 2, diameter: 1/2 in}",
    "strap: {thickness: 1/4 in, width: 2 in}, screws: {count: 2, diameter: 1/2 in, length: 12 in}",
    "strap: {thickness: 5 in, width: 2 in, place: in-kerf}, bolts: {count: 1, diameter: 1/4 in}",
  ].map((more) =>
    ROOFED.replace("100 mph, exposure: B", "115 mph, exposure: C").replace(
      "stand-off: 1 in}",
      `stand-off: 1 in, ${more}}`,
    ),
  ),
  // a post is missing at a corner, and in the middle of a wall
  file("samples/cider-press-pavilion").replace("at: [A1, A2,", "at: [A2,"),
  // purlins
  ...[
    "screws, count: 1, diameter: 1/4 in, length: 8 in",
    "nails, count: 3, diameter: 0.162 in, length: 3 1/2 in",
  ].map((fasten) =>
    file("test/frames/purlins-on-principals").replace(
      "spacing: 36 in}",
      `spacing: 36 in, fasten: {kind: ${fasten}}}`,
    ),
  ),
  // forces
  SHED.replace(/ {2}tie-end: .*/, "  tie-end: {kind: housed, of: tie, into: post}"),
  ROOFED.replace("100 mph", "115 mph").replace(
    /kind: tube, diameter: 14 in, depth: 48 in/,
    "kind: pad, width: 10 in, depth: 34 in",
  ),
  wedgedTie("7 ft 8 1/4 in"),
  ...["", ", dovetail: {flare: 1/16 in}"].map((keys) => tiedJoists(`kind: housed-dovetail${keys}`)),
  tiedJoists("kind: housed-dovetail", "dry"),
  tiedJoists("kind: corner-half-lap"),
  ...[
    "kind: tube, diameter: 12 in, depth: 34 in",
    "kind: tube, diameter: 12 in, depth: 24 in, lateral: doubled, footing: {diameter: 14 in, thickness: 6 in}, rebar: {count: 4, size: 11}",
    "kind: tube, diameter: 16 in, depth: 62 in, lateral: doubled, footing: {diameter: 40 in, thickness: 6 in}",
    "kind: pad, width: 22 in, depth: 6 in",
    "kind: pad, width: 16 in, depth: 1 in",
  ].map((pier) =>
    ROOFED.replace("100 mph", "115 mph")
      .replace("soil: sand", "soil: clay")
      .replace(/kind: tube, diameter: 14 in, depth: 48 in/, pier),
  ),
  screwed("count: 1, diameter: 1/4 in, length: 6 in"),
  screwed("count: 2, diameter: 5/16 in, length: 4 in"),
  screwed("count: 2, diameter: 1/4 in, length: 6 in"),
  screwed("count: 24, diameter: 5/16 in, length: 16 in"),
  loft("4x6", "200 psf, deck: {kind: boards, thickness: 1 in}"),
  loft("8x8", "1000 psf"),
  // posts and joists that buckle, past what any formula of both stresses gives
  loft("8x8", "1000 psf").replace("post: {kind: post, section: 8x8", "post: {kind: post, section: 4x4"),
  loft("1x14", "900 psf"),
  loft("4x12", "200 psf").replaceAll("count: 2, diameter: 3/4 in", "count: 1, diameter: 1/2 in"),
  given(loft("4x6"), "E: 200000 psi"),
  given(loft("6x10", "60 psf"), "Fc-perp: 25 psi"),
  given(loft("6x10", "60 psf"), "Fv: 20 psi"),
  given(loft("6x10", "60 psf"), "Fc: 30 psi"),
  given(loft("6x10", "400 psf"), "Ft: 20 psi, Fb: 9000 psi"),
  hung("kind: pocket, housing: 1/2 in", "150 psf"),
  SHED_STILL.replace("post: {kind: post, section: 8x8", "post: {kind: post, section: 5x5")
    .replace("leg: 30 in", "leg: 12 in")
    .replace("tie-top: 7 ft", "tie-top: 12 ft")
    .replace("eave: 8 ft 6 in", "eave: 14 ft"),
  file("test/frames/king-post-truss").replace(/ground: \d+ psf/, "ground: 240 psf"),
  // screws that end in the purlin
  file("test/frames/king-post-truss").replace("length: 12 in}}", "length: 2 in}}"),
  file("test/frames/loft"),
  file("samples/wrong-on-purpose"),
  file("samples/cider-press-pavilion").replace("8x12", "6x6"),
];

/** The same frame in millimetres: what it says in inches it keeps, with the unit that it then needs. */
export const inMillimetres = (text: string): string =>
  text
    .replace(/^units: inch\n/m, "")
    .replace(/^format: 1$/m, "format: 1\nunits: mm")
    .replace(/section: ([\d /]+x[\d /]*\d)(?=[,}\n])/g, "section: $1 in");
