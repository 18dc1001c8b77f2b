/** Frames that the tests of this folder read. */

/** A small pavilion that uses most of the language. */
export const PAVILION = `frame: Cider-press pavilion
format: 1
units: inch
basis: {loads: asce-7-16, risk-category: i}
site:
  snow: {ground: 45 psf, exposure: partially-exposed, thermal: open}
  wind: {speed: 107 mph, exposure: C, flow: clear}
  frost-depth: 32 in
  soil: sand
  ground: {1: 0, 2: -4 in, 3: -11 in}     # height of the ground along each bent; or by wall; a post's own key wins: A3: -13 in
timber:
  frame:   {species: eastern-white-pine, grade: no-1, seasoning: green, surface: rough}
  rafters: {species: eastern-hemlock-tamarack, grade: no-2, seasoning: dry, surface: rough}
  pegs:    {species: white-oak}
mill: {longest-cut: 21 ft, kerf: 3/32 in, logs: [{species: eastern-white-pine, small-end: 19 in, length: 22 ft, count: 9}]}
grid:
  walls: {A: 0, B: 13 ft}
  bents: {1: 0, 2: 9 ft, 3: 18 ft}
  levels: {pier-top: 8 in, tie-top: 7 ft 10 in, eave: 9 ft 4 in}
members:
  post:      {kind: post, section: 8x8, at: [A1, A2, A3, B1, B2, B3], from: pier-top, to: plate}
  plate:     {kind: plate, section: 8x9, walls: [A, B], from: 1, to: 3, top: eave, overhang: 12 in}
  tie:       {kind: tie, section: 8x12, bents: [1, 2, 3], from: A, to: B, top: tie-top}
  king-post: {kind: king-post, section: 8x8, bents: [1, 2, 3], from: tie, to: ridge}
  ridge:     {kind: ridge, section: 6x9, from: 1, to: 3, overhang: 12 in}
  knee:      {kind: brace, section: 4x8, between: [post, plate], leg: 36 in, curve: {radius: 100 in}}
  tie-knee:  {kind: brace, section: 4x6, between: [post, tie], leg: 27 in}
  ridge-knee: {kind: brace, section: 4x6, between: [king-post, ridge], leg: 24 in}
joints:
  post-head:   {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 6 1/2 in}, pegs: {count: 2, diameter: 3/4 in, draw: 3/32 in}}
  tie-end:     {kind: wedged-half-dovetail, of: tie, into: post, housing: 3/4 in, tenon: {thickness: 2 in}, drop: 1 1/4 in, wedge: {species: white-oak}, pegs: {count: 4, diameter: 3/4 in}}
  king-foot:   {kind: mortise-and-tenon, of: king-post, into: tie, tenon: {thickness: 2 in, length: 6 1/2 in}, pegs: {count: 2, diameter: 3/4 in}}
  king-head:   {kind: mortise-and-tenon, of: king-post, into: ridge, tenon: {thickness: 1 1/2 in, length: 6 1/2 in}, pegs: {count: 2, diameter: 3/4 in}}
  brace-ends:  {kind: brace-tenon, of: [knee, tie-knee, ridge-knee], into: [post, plate, tie, king-post, ridge], housing: 1/2 in, tenon: {thickness: 1 1/2 in}, pegs: {count: 1, diameter: 3/4 in}}
roof:
  kind: gable
  pitch: 7:12
  rafters: {section: 3x7, spacing: 30 in, seat: {kind: birds-mouth}, head: {kind: housed, into: ridge}, overhang: {eave: 18 in, rake: 12 in}, fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 10 in}}
  deck: {kind: boards, thickness: 1 in}
  covering: {kind: standing-seam, coverage: 16 in}
piers:
  all: {under: post, kind: tube, diameter: 16 in, depth: 50 in, lateral: doubled, footing: {diameter: 24 in, thickness: 12 in}, anchor: {kind: embedded-strap, stand-off: 1 in}, rebar: {count: 3, size: 4}}
crew: {people: 2, each: 80 lb, machine: {kind: forks, limit: 1500 lb}}
prices: {concrete-bag: 7.10, peg: 1.80}
# accept: [{check: post-slender, at: post@A2, because: "reviewed by the engineer, May 2027"}]
`;

/** The least that is a frame. */
export const SMALL = `timber: {frame: {species: eastern-white-pine}}
grid:
  walls: {A: 0, B: 13 ft}
  bents: {1: 0, 2: 9 ft}
members:
  post: {kind: post, section: 8x8, at: [A1, A2], from: 0, to: 8 ft}
`;
