/** What each kind of finding changes in a design. A finding that nothing here can mend leaves the design as it is. */
import type { Edit, Finding } from "../../core/checks/check.ts";
import { mortiseMeetsAnchor } from "../../core/checks/joinery/mortise-meets-anchor.ts";
import { mortisesCollide } from "../../core/checks/joinery/mortises-collide.ts";
import { pegDistanceShort } from "../../core/checks/joinery/peg-distance-short.ts";
import { pegInOtherJoint } from "../../core/checks/joinery/peg-in-other-joint.ts";
import { pegsCrowded } from "../../core/checks/joinery/pegs-crowded.ts";
import { inches } from "../../core/quantity/length.ts";
import { parseLength } from "../../core/quantity/quantity.ts";
import { SIZED_CHECKS } from "../../core/sizing/entry.ts";
import type { Answers } from "./answers.ts";
import {
  type Brace,
  type Design,
  deepest,
  FOOTING_WIDER,
  type JointName,
  type Lying,
  longestLeg,
  MOST_DEEP,
  MOST_SLENDER,
  type Pier,
  RAKES,
  type Sides,
  sideStep,
  TIE_DROP,
  usualSide,
} from "./design.ts";

/** The largest that are proposed, inches. Common practice, no source. */
const MOST = { gauge: 12, brace: 10, rafter: 14, tube: 36, pier: 84, footing: 60 } as const;
const MM = 25.4;
const LEAST_SPACING = 14;
const LEG_STEP = 6;
const LEAST_LEG = 18;
const CLASH_STEP = 3;
/** More than a finding asks for, so that what shifts with it is met at once. */
const MARGIN = 1.03;

const LYING: ReadonlySet<string> = new Set<Lying>(["plate", "low-plate", "high-plate", "tie", "ridge"]);

/**
 * @returns the design with the finding's remedy; the very same where there is none left
 */
export function remedied(design: Design, finding: Finding, answers: Answers): Design {
  const { path, check } = finding;
  const ratio = Math.max(1, (finding.value ?? 1) / (finding.limit || 1));
  const [, section = "", name = "", key = ""] = path.split("/");
  if (check === "longer-than-mill")
    return withShorterRake(design, (finding.value ?? 0) - (finding.limit ?? 0));
  if (CLASHES.has(check)) return withClearKnee(design, answers);
  if (check === "timbers-overlap") return withDeeperRidge(design, answers);
  if (section === "members" && SIZED_CHECKS.has(check) && key === "section")
    return withLargerMember(design, name, check, ratio, answers);
  if (section === "roof") return withStrongerRafters(design, finding, ratio, answers);
  if (section === "joints") return withStrongerJoint(design, name, finding, ratio, answers);
  if (section === "piers") return byFixes(design, finding, answers) ?? withLargerPier(design, ratio);
  return design;
}

/** Joints that meet inside a post: the feet of its knees come up or down with their legs. */
const CLASHES: ReadonlySet<string> = new Set([mortisesCollide.meta.id, pegInOtherJoint.meta.id]);

/** What there is to mend at once: while joints meet, how strong they are is nothing to go by. */
export function worstOf(findings: readonly Finding[]): readonly Finding[] {
  const clashes = findings.filter(({ check }) => CLASHES.has(check));
  return clashes.length > 0 ? clashes.slice(0, 1) : findings;
}

function withShorterLeg(design: Design, brace: Brace): Design {
  const leg = design.legs[brace] - CLASH_STEP;
  return leg < LEAST_LEG ? design : { ...design, legs: { ...design.legs, [brace]: leg } };
}

/** A foot that meets the tie goes below it where the leg may be that long, one that meets the tie's own knee comes up. */
function withClearKnee(design: Design, answers: Answers): Design {
  const { depths, legs, braces } = design;
  const plate = answers.roof === "gable" ? depths.plate : depths["low-plate"];
  const foot = braces.knee[1] * Math.SQRT2 + 1;
  const below = Math.ceil(TIE_DROP - plate + depths.tie + foot);
  return legs.knee < below && below <= longestLeg(answers, "knee")
    ? { ...design, legs: { ...legs, knee: below } }
    : withShorterLeg(design, "knee");
}

/** Pegs that come too near the edge of a brace's tenon ask for a deeper brace. */
function withDeeperBrace(design: Design, brace: Brace, answers: Answers): Design {
  const [width, depth] = design.braces[brace];
  const deeper = depth + sideStep(answers.units);
  return deeper > MOST.brace + 1e-6
    ? design
    : { ...design, braces: { ...design.braces, [brace]: [width, deeper] } };
}

/** Rafters that reach below a ridge meet the knees under it. */
function withDeeperRidge(design: Design, answers: Answers): Design {
  const ridge = Math.min(design.depths.ridge + sideStep(answers.units), deepest(design.ridgeWidth, answers));
  return ridge > design.depths.ridge ? { ...design, depths: { ...design.depths, ridge } } : design;
}

/** What a plate or ridge is too long by, taken off both of its ends; the very same where that is not enough. */
function withShorterRake(design: Design, over: number): Design {
  const rake = RAKES.find((one) => 2 * (design.rake - one) >= over - 1e-6);
  return rake === undefined ? design : { ...design, rake };
}

/** Strength grows with the depth squared, stiffness with its cube; one step at least. */
function grown(side: number, ratio: number, power: number, { units }: Answers): number {
  const wanted = usualSide(side * (ratio * MARGIN) ** (1 / power), units);
  return Math.max(wanted, usualSide(side + sideStep(units) / 2, units));
}

function withLargerMember(
  design: Design,
  name: string,
  check: string,
  ratio: number,
  answers: Answers,
): Design {
  const brace = braceOf(name);
  if (brace) return withStouterBrace(design, brace, ratio, answers);
  if (!LYING.has(name)) return withWiderFrame(design, ratio, answers);
  const lying = name as Lying;
  const width = lying === "ridge" ? design.ridgeWidth : design.gauge;
  const depth = grown(design.depths[lying], ratio, check === "timber-sags" ? 3 : 1.7, answers);
  if (depth <= MOST_DEEP + 1e-6 && depth <= width * MOST_SLENDER + 1e-6 && fitsLog(width, depth, answers))
    return { ...design, depths: { ...design.depths, [lying]: depth } };
  if (lying === "ridge" && design.ridgeWidth < design.gauge - 1e-6)
    return { ...design, ridgeWidth: grown(width, ratio, 1, answers) };
  // as deep as it may be, and then wider
  const most = deepest(width, answers);
  const deeper = { ...design, depths: { ...design.depths, [lying]: Math.max(most, design.depths[lying]) } };
  const left = ratio / (deeper.depths[lying] / design.depths[lying]) ** 1.7;
  const wider = left > 1 ? withWiderFrame(deeper, left ** 3, answers) : deeper;
  return wider.gauge === design.gauge && deeper.depths[lying] === design.depths[lying] ? design : wider;
}

function fitsLog(width: number, depth: number, { mill }: Answers): boolean {
  return mill?.log === undefined || Math.hypot(width, depth) <= mill.log;
}

/** Posts take bending both ways: with the cube of their side. */
function withWiderFrame(design: Design, ratio: number, answers: Answers): Design {
  const gauge = grown(design.gauge, ratio, 3, answers);
  const most = Math.max(gauge, ...Object.values(design.depths));
  if (gauge > MOST.gauge + 0.5 || !fitsLog(gauge, most, answers)) return design;
  return { ...design, gauge };
}

function withStouterBrace(design: Design, brace: Brace, ratio: number, answers: Answers): Design {
  const [width, depth] = design.braces[brace];
  const wider = Math.min(grown(width, ratio, 1, answers), usualSide(design.gauge - 2, answers.units));
  if (wider <= width + 1e-6) return withLongerLeg(design, brace, answers);
  const sides: Sides = [wider, Math.max(depth, usualSide(wider + 2, answers.units))];
  return { ...design, braces: { ...design.braces, [brace]: sides } };
}

/** The same design with other legs of the knees under the plates, the nearest first. */
export function* otherLegs(design: Design, answers: Answers): Generator<Design> {
  const longest = longestLeg(answers, "knee");
  for (const change of [-2, 2, -4, 4, -6, 6]) {
    const knee = design.legs.knee + change;
    if (knee >= LEAST_LEG && knee <= longest) yield { ...design, legs: { ...design.legs, knee } };
  }
}

function withLongerLeg(design: Design, brace: Brace, answers: Answers): Design {
  const leg = Math.min(design.legs[brace] + LEG_STEP, longestLeg(answers, brace));
  return leg > design.legs[brace] ? { ...design, legs: { ...design.legs, [brace]: leg } } : design;
}

/** `low-tie-knee` is a knee of the tie. */
function braceOf(name: string): Brace | undefined {
  const found = /(?:^|-)((?:tie-|ridge-)?knee)(?:-ends)?$/.exec(name)?.[1];
  return found as Brace | undefined;
}

function withStrongerRafters(design: Design, finding: Finding, ratio: number, answers: Answers): Design {
  const fixed = byFixes(design, finding, answers);
  if (fixed) return fixed;
  const [width, depth] = design.rafter;
  const closer = (by: number): Design => {
    const spacing = Math.max(LEAST_SPACING, Math.floor(design.rafterSpacing / Math.max(by, 1.1)));
    return spacing < design.rafterSpacing ? { ...design, rafterSpacing: spacing } : design;
  };
  if (finding.check === "rafter-overspanned" || finding.path.endsWith("/section")) {
    const deeper = grown(depth, ratio, finding.unit === "in" ? 3 : 2, answers);
    if (deeper <= Math.min(MOST.rafter, width * 3) + 1e-6) return { ...design, rafter: [width, deeper] };
    return width < usualSide(4, answers.units) - 1e-6
      ? { ...design, rafter: [usualSide(4, answers.units), depth] }
      : closer(ratio);
  }
  if (finding.check === "bearing-crushed" && width < usualSide(5, answers.units) - 1e-6)
    return { ...design, rafter: [grown(width, ratio, 1, answers), depth] };
  return closer(ratio);
}

const NEAR_EDGE: ReadonlySet<string> = new Set([pegsCrowded.meta.id, pegDistanceShort.meta.id]);

function withStrongerJoint(
  design: Design,
  name: string,
  finding: Finding,
  ratio: number,
  answers: Answers,
): Design {
  const brace = braceOf(name);
  if (brace && finding.check === "bearing-crushed") return withLargerToe(design, brace, ratio, answers);
  if (brace && finding.check === mortiseMeetsAnchor.meta.id) return withShorterLeg(design, brace);
  if (brace && NEAR_EDGE.has(finding.check)) return withDeeperBrace(design, brace, answers);
  const fixed = byFixes(design, finding, answers);
  if (fixed) return fixed;
  if (brace) return withLongerLeg(design, brace, answers);
  if (name === "tie-end") {
    const longer = withLongerLeg(design, "tie-knee", answers);
    return longer === design ? withWiderFrame(design, ratio, answers) : longer;
  }
  if (name === "post-head") {
    const longer = withLongerLeg(design, "knee", answers);
    return longer === design ? withWiderFrame(design, ratio, answers) : longer;
  }
  return withWiderFrame(design, ratio, answers);
}

/** A brace presses with the end of its thickness, as deep as it is housed. */
function withLargerToe(design: Design, brace: Brace, ratio: number, answers: Answers): Design {
  const stouter = withStouterBrace(design, brace, ratio, answers);
  if (stouter.braces !== design.braces) return stouter;
  const housing = Math.min(1, design.housings[brace] + 0.25);
  if (housing > design.housings[brace])
    return { ...design, housings: { ...design.housings, [brace]: housing } };
  return stouter === design ? withWiderFrame(design, ratio, answers) : stouter;
}

function withLargerPier(design: Design, ratio: number): Design {
  const { diameter, depth } = design.pier;
  return diameter < MOST.tube
    ? withPier(design, { diameter: Math.min(MOST.tube, Math.ceil(diameter * Math.sqrt(ratio))) })
    : withPier(design, { depth: Math.max(depth, Math.min(MOST.pier, depth + 12)) });
}

/** A footing stays wider than its tube. @returns the very same where nothing changes */
function withPier(design: Design, change: Partial<Pier>): Design {
  const { pier } = design;
  const { diameter, depth, footing } = { ...pier, ...change };
  const wide = Math.max(footing, diameter + FOOTING_WIDER);
  const same = diameter === pier.diameter && depth === pier.depth && wide === pier.footing;
  return same ? design : { ...design, pier: { diameter, depth, footing: wide } };
}

/** The first of the check's own fixes that changes something that a design holds. */
function byFixes(design: Design, finding: Finding, answers: Answers): Design | undefined {
  for (const { edits } of finding.fixes()) {
    const changed = edits.reduce<Design>((before, edit) => edited(before, edit, answers), design);
    if (changed !== design) return changed;
  }
  return undefined;
}

/** The thickness of a footing follows its diameter. */
const PIER_KEYS: Readonly<Record<string, keyof Pier>> = {
  "/piers/all/diameter": "diameter",
  "/piers/all/depth": "depth",
  "/piers/all/footing/diameter": "footing",
};

function edited(design: Design, edit: Edit, answers: Answers): Design {
  if (edit.kind !== "replace") return design;
  const { path, text } = edit;
  const size = lengthOf(text, answers);
  const pegs = /^\/joints\/([a-z-]+)\/pegs\/(count|diameter)$/.exec(path);
  if (pegs) {
    const name = pegs[1] as JointName;
    const change = pegs[2] === "count" ? { count: Number(text) } : { diameter: size };
    return { ...design, pegs: { ...design.pegs, [name]: { ...design.pegs[name], ...change } } };
  }
  const pier = PIER_KEYS[path];
  if (pier && size <= MOST[pier === "depth" ? "pier" : pier === "diameter" ? "tube" : pier] + 1e-6)
    // the file of a design has 25 mm where the design has an inch
    return withPier(design, { [pier]: answers.units === "mm" ? size * (MM / 25) : size });
  const screws = /^\/roof\/rafters(\/head)?\/fasten$/.exec(path);
  const found = /count: (\d+).*length: ([^,}]+)/.exec(text);
  const reach = /^\/roof\/rafters(\/head)?\/fasten\/length$/.exec(path);
  if (reach) {
    const end = reach[1] ? "head" : "seat";
    return { ...design, screws: { ...design.screws, [end]: { ...design.screws[end], length: size } } };
  }
  if (screws && found) {
    const sized = { count: Number(found[1]), length: lengthOf(found[2] ?? "", answers) };
    return { ...design, screws: { ...design.screws, [screws[1] ? "head" : "seat"]: sized } };
  }
  return design;
}

function lengthOf(text: string, { units }: Answers): number {
  const read = parseLength(text, units);
  return read.ok ? inches(read.value) : 0;
}
