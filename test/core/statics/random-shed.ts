/** Sheds of any usual size that look the same from either side and from either end, for property tests. */
import fc from "fast-check";

export interface Shed {
  /** feet */
  readonly width: number;
  /** feet */
  readonly bay: number;
  readonly bents: number;
  /** inches of rise in a foot */
  readonly pitch: number;
  /** inches */
  readonly leg: number;
  /** on each slope */
  readonly rafters: number;
  readonly tieDepth: number;
  /** psf */
  readonly snow: number;
  /** mph */
  readonly wind: number;
}

export const sheds: fc.Arbitrary<Shed> = fc.record({
  width: fc.integer({ min: 10, max: 15 }),
  bay: fc.integer({ min: 8, max: 11 }),
  bents: fc.integer({ min: 2, max: 3 }),
  pitch: fc.integer({ min: 4, max: 9 }),
  leg: fc.integer({ min: 26, max: 36 }),
  rafters: fc.integer({ min: 5, max: 9 }),
  tieDepth: fc.integer({ min: 9, max: 13 }),
  snow: fc.integer({ min: 20, max: 70 }),
  wind: fc.integer({ min: 95, max: 130 }),
});

export function shedText(shed: Shed): string {
  const bents = Array.from({ length: shed.bents }, (_, n) => n + 1);
  const places = ["A", "B"].flatMap((wall) => bents.map((bent) => wall + bent)).join(", ");
  const along = `from: 1, to: ${shed.bents}`;
  return `frame: Shed
format: 1
units: inch
basis: {loads: asce-7-16, risk-category: ii}
site:
  snow: {ground: ${shed.snow} psf, exposure: partially-exposed, thermal: open}
  wind: {speed: ${shed.wind} mph, exposure: B, flow: clear}
  frost-depth: 36 in
  soil: sand
timber:
  frame: {species: eastern-white-pine, grade: no-1, seasoning: green}
  pegs:  {species: white-oak}
grid:
  walls: {A: 0, B: ${shed.width} ft}
  bents: {${bents.map((b) => `${b}: ${(b - 1) * shed.bay} ft`).join(", ")}}
  levels: {pier-top: 8 in, tie-top: 7 ft 10 in, eave: 9 ft 4 in}
members:
  post:  {kind: post, section: 8x8, at: [${places}], from: pier-top, to: plate}
  plate: {kind: plate, section: 8x9, walls: [A, B], ${along}, top: eave, overhang: 12 in}
  tie:   {kind: tie, section: 8x${shed.tieDepth}, bents: [${bents.join(", ")}], from: A, to: B, top: tie-top}
  king:  {kind: king-post, section: 8x8, bents: [${bents.join(", ")}], from: tie, to: ridge}
  ridge: {kind: ridge, section: 6x9, ${along}, overhang: 12 in}
  knee:  {kind: brace, section: 4x8, between: [post, plate], leg: ${shed.leg} in}
  tie-knee:   {kind: brace, section: 4x6, between: [post, tie], leg: 27 in}
  ridge-knee: {kind: brace, section: 4x6, between: [king, ridge], leg: 24 in}
roof:
  kind: gable
  pitch: ${shed.pitch}:12
  rafters: {section: 3x7, count: ${shed.rafters}, seat: {kind: birds-mouth}, head: {kind: housed, into: ridge}, overhang: {eave: 18 in, rake: 12 in}}
  deck: {kind: boards, thickness: 1 in}
  covering: {kind: standing-seam, coverage: 16 in}
piers:
  all: {under: post, kind: tube, diameter: 16 in, depth: 50 in, lateral: doubled, anchor: {kind: embedded-strap, stand-off: 1 in}}
`;
}
