/** The shed where it snows: for tests that give it a roof. */
export const SHED_IN_SNOW = `frame: Wood shed
format: 1
units: inch
basis: {loads: asce-7-16, risk-category: i}
site:
  snow: {ground: 30 psf, exposure: partially-exposed, thermal: open}
  wind: {speed: 100 mph, exposure: B, flow: clear}
  frost-depth: 32 in
  soil: sand
timber:
  frame: {species: eastern-white-pine, grade: no-1, seasoning: green}
grid:
  walls: {A: 0, B: 10 ft}
  bents: {1: 0, 2: 9 ft}
  levels: {pier-top: 8 in, tie-top: 7 ft, eave: 8 ft 6 in}
members:
  post: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}
  plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave, overhang: 12 in}
  tie: {kind: tie, section: 8x10, bents: [1, 2], from: A, to: B, top: tie-top}
  knee: {kind: brace, section: 4x6, between: [post, plate], leg: 30 in}
  tie-knee: {kind: brace, section: 4x6, between: [post, tie], leg: 30 in}
joints:
  post-head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}, pegs: {count: 2, diameter: 3/4 in}}
  tie-end: {kind: mortise-and-tenon, of: tie, into: post, housing: 1/2 in, tenon: {thickness: 2 in, length: 4 in}, pegs: {count: 2, diameter: 3/4 in}}
  knee-ends: {kind: brace-tenon, of: [knee, tie-knee], into: [post, plate, tie], housing: 1/2 in, tenon: {thickness: 1 1/2 in}, pegs: {count: 1, diameter: 3/4 in}}
piers:
  all: {under: post, kind: tube, diameter: 14 in, depth: 48 in, lateral: doubled, anchor: {kind: embedded-strap, stand-off: 1 in}}
`;

/** A small sound frame that tests start from and break in one place. It has no roof, so its site gives no snow. */
export const SHED = SHED_IN_SNOW.replace(/^ {2}snow: .*\n/m, "");
