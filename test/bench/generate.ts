/** Makes the text of clean frames of any size, for measuring: a long open shed with as many bents as it needs. */

export interface FrameShape {
  /** at least 2 */
  readonly bents: number;
  /** at least 2; inner walls carry posts under the ties */
  readonly walls: number;
  /** knees between posts and plates, posts and ties, king-posts and ridge */
  readonly braces: boolean;
  /** in each bay, between the ties */
  readonly joists: number;
  /** on each slope */
  readonly rafters: number;
  /** half the usual bay, with a floor on ties of its own near the ground; as many joists there as above */
  readonly dense?: boolean;
}

const bayFeet = ({ dense }: Pick<FrameShape, "dense">): number => (dense ? 4.5 : 9);
const WIDTH_FEET = 13;
/** what the rafters of such a shed may stand apart, feet */
const RAFTER_FEET = 2.5;
const RAKE_FEET = 1;

/** How many timbers a frame of this shape has. */
export function timbersOf({ bents, walls, braces, joists, rafters, dense }: FrameShape): number {
  const posts = bents * walls;
  const floor = dense ? bents + joists * (bents - 1) : 0;
  const long = 2 + 1;
  const knees = braces ? 4 * (bents - 1) + 2 * bents + 2 * (bents - 1) : 0;
  return posts + long + 2 * bents + knees + joists * (bents - 1) + floor + 2 * rafters;
}

/** No place of a frame lies farther than so many feet from the first bent. */
const LONGEST_FEET = 300;

/** What no frame of the usual bay exceeds with joists as far apart as they are laid. */
const MOST_OF_USUAL_BAY = 1000;

/**
 * The largest frame that has no more than so many timbers (33 at least): first bents, then joists; beyond what a frame of
 * the usual bay holds, bents half as far apart with a second floor of joists.
 */
export function shapeOf(timbers: number): FrameShape {
  const dense = timbers > MOST_OF_USUAL_BAY;
  const bay = bayFeet({ dense });
  const shape = (bents: number): FrameShape => ({
    bents,
    walls: 2,
    braces: true,
    joists: 0,
    rafters: Math.ceil((bay * (bents - 1) + 2 * RAKE_FEET) / RAFTER_FEET) + 1,
    ...(dense ? { dense } : {}),
  });
  const most = Math.floor(LONGEST_FEET / bay) + 1;
  let bents = 2;
  while (bents < most && timbersOf(shape(bents + 1)) <= timbers) bents++;
  const best = shape(bents);
  const left = timbers - timbersOf(best);
  return { ...best, joists: Math.max(0, Math.floor(left / (bents - 1) / (dense ? 2 : 1))) };
}

/** A frame file of this shape; it has neither errors nor warnings. */
export function frameText(shape: FrameShape): string {
  const { bents, walls, braces, joists, rafters, dense } = shape;
  const bay = bayFeet(shape);
  const [knee, ridgeKnee] = dense ? [20, 16] : [36, 24];
  // the short knees of narrow bays come down to where the ties of wide ones lie
  const tieTop = dense ? "6 ft 9 in" : "7 ft 10 in";
  const bentNames = Array.from({ length: bents }, (_, i) => String(i + 1));
  const wallNames = Array.from({ length: walls }, (_, i) => String.fromCharCode(65 + i));
  const [first = "A", last = "B"] = [wallNames[0], wallNames.at(-1)];
  const inner = wallNames.slice(1, -1);
  const places = (names: readonly string[]): string =>
    names.flatMap((wall) => bentNames.map((bent) => wall + bent)).join(", ");
  const all = bentNames.join(", ");
  const carriers = dense ? ["tie", "floor-tie"] : ["tie"];
  const lines = [
    `frame: Long shed of ${bents} bents`,
    "format: 1",
    "units: inch",
    "basis: {loads: asce-7-16, risk-category: i}",
    "site:",
    "  snow: {ground: 45 psf, exposure: partially-exposed, thermal: open}",
    "  wind: {speed: 107 mph, exposure: C, flow: clear}",
    "  frost-depth: 32 in",
    "  soil: sand",
    `  ground: {1: 0, ${bents}: -${bents} in}`,
    "timber:",
    "  frame: {species: eastern-white-pine, grade: no-1, seasoning: green, surface: rough}",
    "  rafters: {species: eastern-hemlock-tamarack, grade: no-2, seasoning: dry, surface: rough}",
    "grid:",
    `  walls: {${wallNames.map((name, i) => `${name}: ${(WIDTH_FEET * i) / (walls - 1)} ft`).join(", ")}}`,
    `  bents: {${bentNames.map((name, i) => `${name}: ${bay * i} ft`).join(", ")}}`,
    `  levels: {pier-top: 8 in, floor: 2 ft 6 in, tie-top: ${tieTop}, eave: 9 ft 4 in}`,
    "members:",
    `  post: {kind: post, section: 8x8, at: [${places([first, last])}], from: pier-top, to: plate}`,
    `  plate: {kind: plate, section: 8x9, walls: [${first}, ${last}], from: 1, to: ${bents}, top: eave, overhang: 12 in}`,
    `  tie: {kind: tie, section: 8x12, bents: [${all}], from: ${first}, to: ${last}, top: tie-top}`,
    ...(dense
      ? [`  floor-tie: {kind: tie, section: 8x12, bents: [${all}], from: ${first}, to: ${last}, top: floor}`]
      : []),
    `  king-post: {kind: king-post, section: 8x8, bents: [${all}], from: tie, to: ridge}`,
    `  ridge: {kind: ridge, section: 6x9, from: 1, to: ${bents}, overhang: 12 in}`,
    ...(inner.length > 0
      ? [`  prop: {kind: post, section: 8x8, at: [${places(inner)}], from: pier-top, to: tie}`]
      : []),
    ...(braces
      ? [
          `  knee: {kind: brace, section: 4x8, between: [post, plate], leg: ${knee} in, curve: {radius: 100 in}}`,
          "  tie-knee: {kind: brace, section: 4x6, between: [post, tie], leg: 27 in}",
          `  ridge-knee: {kind: brace, section: 4x6, between: [king-post, ridge], leg: ${ridgeKnee} in}`,
        ]
      : []),
    ...(joists > 0 ? carriers.flatMap((tie) => joistLines(tie, bentNames, joists)) : []),
    "joints:",
    "  post-head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 6 1/2 in}, pegs: {count: 2, diameter: 1 in}}",
    `  tie-end: {kind: wedged-half-dovetail, of: [${carriers.join(", ")}], into: post, housing: 3/4 in, tenon: {thickness: 2 in}, drop: 1 1/4 in, wedge: {species: white-oak}, pegs: {count: 4, diameter: 3/4 in}}`,
    "  king-foot: {kind: mortise-and-tenon, of: king-post, into: tie, tenon: {thickness: 2 in, length: 6 in}, pegs: {count: 2, diameter: 3/4 in}}",
    "  king-head: {kind: mortise-and-tenon, of: king-post, into: ridge, tenon: {thickness: 1 1/2 in, length: 6 in}, pegs: {count: 2, diameter: 3/4 in}}",
    ...(inner.length > 0
      ? [
          "  prop-head: {kind: mortise-and-tenon, of: prop, into: tie, tenon: {thickness: 2 in, length: 4 in}, pegs: {count: 2, diameter: 3/4 in}}",
        ]
      : []),
    ...(braces
      ? [
          "  brace-ends: {kind: brace-tenon, of: [knee, tie-knee, ridge-knee], into: [post, plate, tie, king-post, ridge], housing: 7/8 in, tenon: {thickness: 1 1/2 in}, pegs: {count: 1, diameter: 3/4 in}}",
        ]
      : []),
    ...(joists > 0
      ? [`  joist-ends: {kind: pocket, of: joist, into: [${carriers.join(", ")}], housing: 1 1/2 in}`]
      : []),
    "roof:",
    "  kind: gable",
    "  pitch: 7:12",
    `  rafters: {section: 3x7, count: ${rafters}, seat: {kind: birds-mouth}, head: {kind: housed, into: ridge, fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 8 in}}, overhang: {eave: 18 in, rake: 12 in}, fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 10 in}}`,
    "  deck: {kind: boards, thickness: 1 in}",
    "  covering: {kind: standing-seam, coverage: 16 in}",
    "piers:",
    "  all: {under: post, kind: tube, diameter: 18 in, depth: 66 in, lateral: doubled, footing: {diameter: 28 in, thickness: 12 in}, anchor: {kind: embedded-strap, stand-off: 1 in}}",
    ...(inner.length > 0
      ? [
          "  inner: {under: prop, kind: tube, diameter: 18 in, depth: 66 in, anchor: {kind: embedded-strap, stand-off: 1 in}}",
        ]
      : []),
  ];
  return `${lines.join("\n")}\n`;
}

function joistLines(tie: string, bents: readonly string[], count: number): string[] {
  const name = tie === "tie" ? "joist" : `${tie}-joist`;
  return bents
    .slice(1)
    .map(
      (bent, i) =>
        `  ${name}-${i + 1}: {kind: joist, section: 4x6, between: [${tie}@${i + 1}, ${tie}@${bent}], from: 1 ft 6 in, to: 11 ft 6 in, count: ${count}}`,
    );
}
