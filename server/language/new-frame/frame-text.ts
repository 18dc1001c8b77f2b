/** The file that a design makes: short, and commented in plain words. */
import type { Say } from "../../core/checks/say.ts";
import type { Units } from "../../core/frame/frame.ts";
import { fromInches, fromMillimetres } from "../../core/quantity/length.ts";
import { formatSection, printExact } from "../../core/quantity/quantity.ts";
import { wrapped } from "../../core/text/wrapped.ts";
import type { Answers } from "./answers.ts";
import {
  type Brace,
  type Design,
  footingThickness,
  highKneeLeg,
  type JointName,
  type Lying,
  type Sides,
  TIE_DROP,
} from "./design.ts";

/** Stands in the file while nobody knows the wood: none that is asked about is allowed less bending (NDS Supplement Table 4D, remembered). */
const ASSUMED = "eastern-white-pine";
/** Levels of the file, inches. */
const PIER_TOP = 8;
const MM = 25.4;
const COMMENT_WIDTH = 66;

interface Pen {
  readonly say: Say;
  readonly answers: Answers;
  readonly design: Design;
  /** inches → as the file has lengths: whole sixteenths, or whole millimetres */
  readonly length: (inches: number) => string;
  readonly section: (sides: Sides) => string;
  readonly post: string;
  readonly lying: (name: Lying) => string;
  /** @param leg inches; that of the design unless told */
  readonly brace: (name: Brace, leg?: number) => string;
  readonly pegs: (name: JointName) => string;
}

/**
 * @param woods what is to be said of how well the design values of its woods are known, as its check found them
 * @returns the text of the frame file, ended by a line end
 */
export function frameText(answers: Answers, design: Design, say: Say, woods: readonly string[] = []): string {
  const pen = penOf(answers, design, say);
  return [
    ...head(pen, woods),
    ...site(pen),
    ...timber(pen),
    ...grid(pen),
    `members:${aside(headroom(pen))}`,
    ...(answers.roof === "gable" ? gableMembers(pen) : shedMembers(pen)),
    "joints:",
    ...joints(pen),
    ...roof(pen),
    ...piers(pen),
    ...questions(pen),
    "",
  ].join("\n");
}

function penOf(answers: Answers, design: Design, say: Say): Pen {
  const { units } = answers;
  const { gauge, depths, ridgeWidth, braces, legs, pegs } = design;
  const length = (inches: number): string => written(inches, units);
  const section = ([width, depth]: Sides): string =>
    formatSection({ width: whole(width, units), depth: whole(depth, units) }, units);
  return {
    say,
    answers,
    design,
    length,
    section,
    post: section([gauge, gauge]),
    lying: (name) => section([name === "ridge" ? ridgeWidth : gauge, depths[name]]),
    brace: (name, leg = legs[name]) =>
      `section: ${section(braces[name])}, leg: ${length(usual(answers, leg))}`,
    pegs: (name) => `pegs: {count: ${pegs[name].count}, diameter: ${length(pegs[name].diameter)}}`,
  };
}

function whole(inches: number, units: Units): ReturnType<typeof fromInches> {
  return units === "inch"
    ? fromInches(Math.round(inches * 16) / 16)
    : fromMillimetres(Math.round(inches * MM));
}

/** In a millimetre file the unit is left out. */
function written(inches: number, units: Units): string {
  const text = printExact(whole(inches, units), units);
  return units === "inch" ? text : text.replace(/ mm$/, "");
}

/** A comment behind what it is about; a translation may have any shape. */
function aside(text: string): string {
  return `   # ${text.replace(/\s+/g, " ")}`;
}

/** Free words as a value in an inline map. */
function inMap(text: string): string {
  return /^[\p{L}\d ;()-]+$/u.test(text) ? text : JSON.stringify(text);
}

/** A comment in lines of the usual width. */
function commented(text: string, indent = ""): string[] {
  return wrapped(text, COMMENT_WIDTH).map((line) => `${indent}# ${line}`);
}

function head({ say, answers, length }: Pen, woods: readonly string[]): string[] {
  const { roof, width, length: long, units } = answers;
  const name = roof === "gable" ? "Gable" : "Shed";
  const [thick, thin] = [length(usual(answers, 2)), length(usual(answers, 1.125))];
  const { snow, wind, frost, species, mill } = answers;
  const known = snow && wind && frost !== undefined && species !== undefined && mill;
  return [
    ...commented(
      say.text(
        "Try this: in {joint} below, change the thickness of the tenon from {thick} to {thin}. You will be told that it is too thin.",
        { joint: "post-head", thick, thin },
      ),
    ),
    ...commented(
      known
        ? say.text("Sections and joints were worked out to pass every check for your answers.")
        : say.text("Sections and joints were worked out to pass every check for what is known so far."),
    ),
    ...commented(say.text("The checks are rules, not a permit: have the frame looked at before you build.")),
    ...woods.flatMap((sentence) => commented(sentence)),
    `frame: ${name} ${length(width)} by ${length(long)}`,
    "format: 1",
    `units: ${units}`,
    `basis: {loads: asce-7-16, risk-category: i}${aside(say.text("i: sheds and barns; ii: where people live or gather"))}`,
  ];
}

/** What nobody was asked for is said where it stands: it looks like any other value of the site. */
function usualSite({ say, answers, length }: Pick<Pen, "say" | "answers" | "length">): string[] {
  const { snow, wind, frost, usual } = answers;
  const instead = {
    snow: say.text("ground snow load by ASCE 7-16 (instead of {value})", { value: snow?.text ?? "" }),
    wind: say.text("wind speed by ASCE 7-16, risk category I (instead of {value})", {
      value: wind?.text ?? "",
    }),
    frost: say.text("frost depth (instead of {value})", { value: length(frost ?? 0) }),
  };
  if (usual.size === 0) return [];
  const words = say.text(
    "Not yet of this site: usual values stand here, and the true ones may be much higher. Ask the building department for: {values}. Write them here and remove this comment.",
    { values: [...usual].map((id) => instead[id]).join("; ") },
  );
  return commented(words, "  ");
}

/** How high one walks: pier tops and levels of these frames stand over level ground at height 0. */
function headroom({ say, answers, design }: Pen): string {
  const tie = answers.eave - usual(answers, TIE_DROP) - design.depths.tie;
  const knee = tie - usual(answers, design.legs["tie-knee"]);
  return say.text(
    "one walks under the ties with {tie} of room; the feet of the tie-knees come down to {knee}",
    {
      tie: say.length(tie),
      knee: say.length(knee),
    },
  );
}

function site({ say, answers, length }: Pen): string[] {
  const { snow, wind, frost } = answers;
  return [
    "site:",
    ...usualSite({ say, answers, length }),
    `  snow: {${snow ? `ground: ${snow.text}, ` : ""}exposure: partially-exposed, thermal: open}`,
    `  wind: {${wind ? `speed: ${wind.text}, ` : ""}exposure: C, flow: clear}${aside(say.text("C: open country, B: woods or houses; clear: nothing stacked under half of the roof"))}`,
    ...(frost === undefined ? [] : [`  frost-depth: ${length(frost)}`]),
    `  soil: clay${aside(say.text("the weakest that is usual: dig a hole where a pier will stand, and look"))}`,
  ];
}

function timber({ say, answers, length }: Pen): string[] {
  const species = answers.species ?? ASSUMED;
  const { mill } = answers;
  return [
    `timber:${aside(say.text("no-2 is assumed where nobody has graded it: ask whether that is accepted"))}`,
    `  frame:   {species: ${species}, grade: no-2, seasoning: green, surface: rough}`,
    `  rafters: {species: ${species}, grade: no-2, seasoning: green, surface: rough}`,
    "  pegs:    {species: white-oak}",
    ...(mill ? [`mill: {longest-cut: ${length(mill.longest)}}${logWords(mill.log, say, length)}`] : []),
  ];
}

/** A list of logs says how many there are too, which nobody was asked. */
function logWords(log: number | undefined, say: Say, length: Pen["length"]): string {
  if (log === undefined) return "";
  return `${aside(say.text("every section comes out of a log of {log} at the small end", { log: length(log) }))}`;
}

function bents({ bays }: Answers): number[] {
  return Array.from({ length: bays + 1 }, (_, i) => i + 1);
}

function grid({ answers, length }: Pen): string[] {
  const { width, length: long, bays, eave, roof, pitch } = answers;
  const lines = bents(answers).map((bent, i) => `${bent}: ${i === 0 ? 0 : length((long * i) / bays)}`);
  const levels = [
    `pier-top: ${length(usual(answers, PIER_TOP))}`,
    `tie-top: ${length(eave - usual(answers, TIE_DROP))}`,
  ];
  if (roof === "gable") levels.push(`eave: ${length(eave)}`);
  else levels.push(`low: ${length(eave)}`, `high: ${length(eave + (width * pitch.rise) / 12)}`);
  return [
    "grid:",
    `  walls: {A: 0, B: ${length(width)}}`,
    `  bents: {${lines.join(", ")}}`,
    `  levels: {${levels.join(", ")}}`,
  ];
}

function at(answers: Answers, ...walls: readonly string[]): string {
  return `[${walls.flatMap((wall) => bents(answers).map((bent) => wall + bent)).join(", ")}]`;
}

function gableMembers({ answers, design, length, post, lying, brace }: Pen): string[] {
  const last = answers.bays + 1;
  const all = `bents: [${bents(answers).join(", ")}]`;
  const along = `from: 1, to: ${last}`;
  const over = `overhang: ${length(usual(answers, design.rake))}`;
  return [
    `  post:       {kind: post, section: ${post}, at: ${at(answers, "A", "B")}, from: pier-top, to: plate}`,
    `  plate:      {kind: plate, section: ${lying("plate")}, walls: [A, B], ${along}, top: eave, ${over}}`,
    `  tie:        {kind: tie, section: ${lying("tie")}, ${all}, from: A, to: B, top: tie-top}`,
    `  king-post:  {kind: king-post, section: ${post}, ${all}, from: tie, to: ridge}`,
    `  ridge:      {kind: ridge, section: ${lying("ridge")}, ${along}, ${over}}`,
    `  knee:       {kind: brace, between: [post, plate], ${brace("knee")}}`,
    `  tie-knee:   {kind: brace, between: [post, tie], ${brace("tie-knee")}}`,
    `  ridge-knee: {kind: brace, between: [king-post, ridge], ${brace("ridge-knee")}}`,
  ];
}

function shedMembers({ answers, design, length, post, lying, brace }: Pen): string[] {
  const last = answers.bays + 1;
  const along = `from: 1, to: ${last}`;
  const over = `overhang: ${length(usual(answers, design.rake))}`;
  return [
    `  low-post:   {kind: post, section: ${post}, at: ${at(answers, "A")}, from: pier-top, to: low-plate}`,
    `  high-post:  {kind: post, section: ${post}, at: ${at(answers, "B")}, from: pier-top, to: high-plate}`,
    `  low-plate:  {kind: plate, section: ${lying("low-plate")}, walls: [A], ${along}, top: low, ${over}}`,
    `  high-plate: {kind: plate, section: ${lying("high-plate")}, walls: [B], ${along}, top: high, ${over}}`,
    `  tie:        {kind: tie, section: ${lying("tie")}, bents: [${bents(answers).join(", ")}], from: A, to: B, top: tie-top}`,
    `  low-knee:   {kind: brace, between: [low-post, low-plate], ${brace("knee")}}`,
    `  high-knee:  {kind: brace, between: [high-post, high-plate], ${brace("knee", highKneeLeg(answers, design))}}`,
    `  low-tie-knee:  {kind: brace, between: [low-post, tie], ${brace("tie-knee")}}`,
    `  high-tie-knee: {kind: brace, between: [high-post, tie], ${brace("tie-knee")}}`,
  ];
}

/** The trade's inches in an inch file, round millimetres in the other. */
function usual({ units }: Answers, inches: number): number {
  return units === "inch" ? inches : (Math.round(inches * 5) * 5) / MM;
}

function joints({ answers, design, length, pegs }: Pen): string[] {
  const size = (inches: number): string => length(usual(answers, inches));
  const gable = answers.roof === "gable";
  const posts = gable ? "post" : "[low-post, high-post]";
  const plates = gable ? "plate" : "[low-plate, high-plate]";
  const knee = (name: Brace, of: string, into: string): string => {
    const joint = `${name}-ends` as const;
    return `  ${joint}: {kind: brace-tenon, of: ${of}, into: ${into}, housing: ${size(design.housings[name])}, tenon: {thickness: ${size(1.5)}}, ${pegs(joint)}}`;
  };
  const long = `tenon: {thickness: ${size(2)}, length: ${size(6.5)}}`;
  const wedged = `housing: ${size(0.75)}, tenon: {thickness: ${size(2)}}, drop: ${size(1.25)}, wedge: {species: white-oak}`;
  return [
    `  post-head: {kind: mortise-and-tenon, of: ${posts}, into: ${plates}, ${long}, ${pegs("post-head")}}`,
    `  tie-end: {kind: wedged-half-dovetail, of: tie, into: ${posts}, ${wedged}, ${pegs("tie-end")}}`,
    ...(gable
      ? [
          `  king-foot: {kind: mortise-and-tenon, of: king-post, into: tie, ${long}, ${pegs("king-foot")}}`,
          `  king-head: {kind: mortise-and-tenon, of: king-post, into: ridge, tenon: {thickness: ${size(1.5)}, length: ${size(6.5)}}, ${pegs("king-head")}}`,
          knee("knee", "knee", "[post, plate]"),
          knee("tie-knee", "tie-knee", "[post, tie]"),
          knee("ridge-knee", "ridge-knee", "[king-post, ridge]"),
        ]
      : [
          knee("knee", "[low-knee, high-knee]", "[low-post, high-post, low-plate, high-plate]"),
          knee("tie-knee", "[low-tie-knee, high-tie-knee]", "[low-post, high-post, tie]"),
        ]),
  ];
}

function roof({ answers, design, length, section }: Pen): string[] {
  const screws = (end: keyof Design["screws"]): string =>
    `fasten: {kind: screws, count: ${design.screws[end].count}, diameter: ${length(5 / 16)}, length: ${length(design.screws[end].length)}}`;
  const gable = answers.roof === "gable";
  const head = gable ? `, head: {kind: housed, into: ridge, ${screws("head")}}` : "";
  const high = gable ? "" : `, high: ${length(usual(answers, 12))}`;
  const overhang = `overhang: {eave: ${length(usual(answers, 12))}, rake: ${length(usual(answers, design.rake))}${high}}`;
  return [
    "roof:",
    `  kind: ${answers.roof}`,
    gable ? `  pitch: ${answers.pitch.text}` : "  high: B",
    `  rafters: {section: ${section(design.rafter)}, spacing: ${length(usual(answers, design.rafterSpacing))}, seat: {kind: birds-mouth}${head}, ${overhang}, ${screws("seat")}}`,
    `  deck: {kind: boards, thickness: ${length(usual(answers, 1))}}`,
    `  covering: {kind: standing-seam, coverage: ${length(usual(answers, 16))}}`,
  ];
}

function piers({ say, answers, design, length }: Pen): string[] {
  const { diameter, depth, footing: wide } = design.pier;
  const footing = `footing: {diameter: ${length(usual(answers, wide))}, thickness: ${length(usual(answers, footingThickness(design.pier)))}}`;
  const under = answers.roof === "gable" ? "post" : "[low-post, high-post]";
  return [
    `piers:${aside(say.text("lateral: doubled holds where the top may move half an inch (IBC 1806.3.4)"))}`,
    `  all: {under: ${under}, kind: tube, diameter: ${length(usual(answers, diameter))}, depth: ${length(usual(answers, depth))}, lateral: doubled, ${footing}, anchor: {kind: embedded-strap, stand-off: ${length(usual(answers, 1))}}, rebar: {count: 3, size: 4}}`,
  ];
}

/** What the file has no key to leave open in: each is a warning until the builder has asked. */
function questions({ say, answers: { species, mill } }: Pen): string[] {
  const open = [
    ...(species === undefined
      ? [say.text("which wood the frame is sawn from; {species} is assumed", { species: ASSUMED })]
      : []),
    ...(mill === undefined ? [say.text("how long and how thick the mill can cut; no limit is assumed")] : []),
  ];
  const lines = open.map((what) => `  - {what: ${inMap(what)}, whom: ${inMap(say.text("the sawyer"))}}`);
  return open.length === 0 ? [] : [`ask:${aside(say.text("remove a line when you know"))}`, ...lines];
}
