/** Everything that was computed of a frame, as plain data: the reports for programs carry it. Pounds, inches, psi. */
import { noteWords } from "../core/checks/amount-words.ts";
import type { Say } from "../core/checks/say.ts";
import { bearingUse } from "../core/ground/bearing.ts";
import { sidewaysUse } from "../core/ground/sideways.ts";
import { pierHold } from "../core/ground/uplift.ts";
import type { DeflectionShare } from "../core/members/deflection-limits.ts";
import type { RafterUse } from "../core/members/rafter.ts";
import type { Model } from "../core/model/model.ts";
import type { Results } from "../core/results.ts";
import type { DeckResult, DeckUse } from "../core/roof/deck-strip.ts";
import { type RafterResult, rafterShare } from "../core/roof/rafter-results.ts";
import { appliedTotal, bearingReactions, reactionTotal } from "../core/statics/balance.ts";
import { frameCaseWords } from "../core/statics/case-words.ts";
import type { FrameResults, MemberResult, MemberUse, PierReaction } from "../core/statics/frame-results.ts";
import { type JointHold, jointHolds } from "../core/statics/joint-holds.ts";
import { loadDerivation, loadStandard } from "../core/statics/load-derivation.ts";
import type { LoadLine, LoadPattern } from "../core/statics/load-lines.ts";
import { roofAreas } from "../core/statics/load-path.ts";
import { memberForces } from "../core/statics/member-forces.ts";
import { purlinLifts } from "../core/statics/purlin-lifts.ts";
import type { SolvedCase } from "../core/statics/solve-frame.ts";
import { timbersOf } from "../core/statics/structure.ts";
import { woodsInUse } from "../core/statics/woods-in-use.ts";
import { hasForces } from "../language/hover/unsolved.ts";
import { factorOf, figure, figures, noted, sourcedOf } from "./figures-json.ts";

/** Units of every number without a name of its own. */
const UNITS = { length: "in", area: "ft2", force: "lb", moment: "lb-in", stress: "psi" } as const;

const AXES =
  "x runs along the walls from the first bent, y across the bents from the first wall, z up. Reactions act on the frame, loads too: applied and reaction of a combination cancel.";

/** What does not fit into JSON is left out. */
const finite = <K extends string>(key: K, value: number): Partial<Record<K, number>> =>
  Number.isFinite(value) ? ({ [key]: figure(value) } as Partial<Record<K, number>>) : {};

interface Most {
  readonly most: number;
  readonly caseId: string;
}

/** A largest value with its combination; 0 has none. */
const most = ({ most: value, caseId }: Most) =>
  value > 0 ? { value: figure(value), combination: caseId } : { value: 0 };

function combinationOf(solved: SolvedCase, say: Say) {
  const { frameCase, seats, combined, bracesNominal } = solved;
  const { id, combination, parts } = frameCase;
  return {
    id,
    seats,
    text: combination.text,
    words: frameCaseWords(frameCase, say),
    duration: factorOf(combination.duration, say),
    loads: parts.map(({ load, factor }) => ({ load: load.id, factor: figure(factor) })),
    status: combined.status,
    faults: combined.faults.map(({ kind }) => kind),
    dropped: timbersOf(combined.dropped, solved.frame),
    bracesBothWays: bracesNominal,
    residual: figure(combined.residual),
    applied: figures(appliedTotal(solved)),
    reaction: combined.status === "failed" ? null : figures(reactionTotal(solved)),
    reactions: bearingReactions(solved).map(({ at, timber, force }) => ({
      at,
      timber,
      force: figures(force),
    })),
  };
}

/** The share of a length that a limit of deflection is, and by what it was chosen. */
const shareOf = ({ use, divisor, length, note }: DeflectionShare, say: Say) => ({
  use,
  divisor: sourcedOf(divisor),
  length: figure(length),
  ...noted(note, say),
});

/** One check of a timber, a rafter or a deck. @param told under which combination, and what only its kind has */
function useOf<T extends { readonly combination: string; readonly words: string }>(
  use: MemberUse | RafterUse | DeckUse,
  told: T,
  say: Say,
) {
  return {
    check: use.what,
    unit: use.unit,
    ...finite("value", use.value),
    ...finite("limit", use.limit),
    ...finite("ratio", use.ratio),
    passes: use.ratio <= 1,
    ...told,
    ...(use.reference ? { reference: sourcedOf(use.reference) } : {}),
    factors: use.factors.map((f) => factorOf(f, say)),
  };
}

const memberUse = (use: MemberUse, say: Say) =>
  useOf(
    use,
    {
      combination: use.caseId,
      words: use.combination,
      at: figure(use.at),
      ...(use.place === undefined ? {} : { place: use.place }),
      ...(use.area ? { area: { ...sourcedOf(use.area), unit: "in2", ...noted(use.area.note, say) } } : {}),
      ...(use.share ? { share: shareOf(use.share, say) } : {}),
    },
    say,
  );

function woodOf({ wood }: Pick<MemberResult, "wood">) {
  return {
    group: wood.group,
    grade: wood.grade,
    assumedGrade: wood.assumedGrade,
    sizeClass: wood.sizeClass,
    status: wood.status,
  };
}

/** Forces of every timber in the model, with its checks where there are any. */
function membersOf(frame: FrameResults, say: Say) {
  const { solution, model } = frame;
  const areas = roofAreas(model, solution.loads.strips);
  return model.timbers.flatMap((timber) => {
    const forces = memberForces(solution.cases, timber.id);
    if (!forces) return [];
    const result = frame.members.get(timber.id);
    const area = areas.get(timber.id);
    return [
      {
        timber: timber.id,
        kind: timber.kind,
        width: figure(timber.width),
        depth: figure(timber.depth),
        span: figure(timber.span),
        ...(area === undefined ? {} : { roofArea: figure(area) }),
        ...(result ? { wood: woodOf(result) } : {}),
        uses: result?.uses.map((use) => memberUse(use, say)) ?? [],
        forces: Object.fromEntries(
          Object.entries(forces).map(([kind, f]) => [
            kind,
            f.value > 0
              ? { value: figure(f.value), combination: f.caseId, seats: f.seats, at: figure(f.at) }
              : { value: 0 },
          ]),
        ),
      },
    ];
  });
}

function rafterOf(result: RafterResult, say: Say) {
  const { slope, check } = result;
  const told = (use: RafterUse) => {
    const { combination: id } = use;
    const share = rafterShare(result, use);
    return {
      combination: id,
      words: check.combinations.find((c) => c.id === id)?.combination.text ?? id,
      ...(share ? { share: shareOf(share, say) } : {}),
    };
  };
  return {
    wall: slope.wall,
    rafters: slope.rafters.map(({ id }) => id),
    uses: check.worst.map((use) => useOf(use, told(use), say)),
  };
}

function deckOf(deck: DeckResult, say: Say) {
  const { on, span, thickness, kind } = deck;
  const made = { ...on, kind, span: figure(span), thickness: figure(thickness) };
  if (deck.kind === "panels") {
    const { rule, live, total, load, reserve } = deck;
    return {
      ...made,
      load,
      rating: {
        name: rule.rating,
        live: rule.load.live,
        total: rule.load.total,
        status: rule.status,
        source: rule.source,
      },
      reserve: figure(reserve),
      live: figure(live),
      total: figure(total),
      passes: live <= rule.load.live * reserve && total <= rule.load.total * reserve,
    };
  }
  return {
    ...made,
    breadth: figure(deck.breadth),
    wood: woodOf(deck),
    uses: deck.uses.map((use) => useOf(use, { combination: use.load, words: use.combination }, say)),
  };
}

/** What pulls a joint most, and what it has to hold with: lb, with all factors. */
function holdOf({ pull, by, capacity, factors, ratio, along }: JointHold, say: Say) {
  return {
    pull: figure(pull.most),
    combination: pull.caseId,
    by,
    ...(along ? { along } : {}),
    ...(capacity ? { capacity: sourcedOf(capacity) } : {}),
    factors: factors.map((f) => factorOf(f, say)),
    ...(ratio === undefined ? {} : { ...finite("ratio", ratio), passes: ratio <= 1 }),
  };
}

/** Forces of each joint, lb, and what it has to hold with. */
export function jointsOf(frame: FrameResults, say: Say) {
  const holds = jointHolds(frame);
  const byId = new Map(frame.model.joints.map((joint) => [joint.id, joint]));
  return [...frame.joints.values()].map((j) => {
    const joint = byId.get(j.joint);
    const hold = joint && holds(joint);
    return {
      joint: j.joint,
      tension: most(j.tension),
      compression: most(j.compression),
      along: most(j.alongGrain),
      across: most(j.across),
      ...(hold ? { hold: holdOf(hold, say) } : {}),
    };
  });
}

/** What a pier carries, and what the soil has to hold it with where the file says the soil. */
function pierOf({ pier, down, up, sideways, cases }: PierReaction, { frame }: Model) {
  const { soil } = frame.site;
  const [under, beside] = [bearingUse(pier, cases, soil), sidewaysUse(pier, cases, soil)];
  return {
    pier: pier.id,
    timber: pier.timber?.id ?? null,
    down: most(down),
    up: most(up),
    weightHolds: figure(pierHold(pier, up.most).held),
    sideways: most(sideways),
    ...(under
      ? {
          bearing: {
            ...finite("pressure", under.pressure),
            allowed: sourcedOf(under.allowed),
            load: figure(under.down),
            weight: figure(under.weight),
            area: figure(under.area),
            combination: under.caseId,
            ...finite("ratio", under.ratio),
            passes: under.ratio <= 1,
          },
        }
      : {}),
    ...(beside
      ? {
          soilBeside: {
            push: figure(beside.push),
            holds: figure(beside.holds),
            singleHolds: figure(beside.single),
            combination: beside.caseId,
            ...finite("ratio", beside.ratio),
            passes: beside.ratio <= 1,
          },
        }
      : {}),
  };
}

/** Where purlins are lifted off what carries them, lb, and what holds them there. */
function purlinsOf(frame: FrameResults, say: Say) {
  return purlinLifts(frame).map(({ upper, lower, pull, hold }) => ({
    purlin: upper.id,
    on: lower.id,
    uplift: most(pull),
    by: hold?.fasteners.kind ?? "nothing",
    ...(hold
      ? {
          capacity: sourcedOf({ ...hold.uplift, source: hold.uplift.reference.source }),
          factors: hold.uplift.factors.map((f) => factorOf(f, say)),
          ...(hold.uplift.value > 0 ? { ratio: figure(pull.most / hold.uplift.value) } : {}),
          passes: pull.most <= hold.uplift.value,
        }
      : {}),
  }));
}

function frameOf(frame: FrameResults, say: Say) {
  const { solution, model } = frame;
  const standing = new Set(solution.hold.pieces.map(({ timber }) => timber.id));
  return {
    loads: loadsOf(frame, say),
    woods: woodsInUse(frame.members.values()).map(({ timberClass, wood, timbers }) => ({
      class: timberClass,
      ...woodOf({ wood }),
      values: Object.fromEntries(Object.entries(wood.values).map(([key, value]) => [key, sourcedOf(value)])),
      timbers,
    })),
    combinations: solution.cases.map((solved) => combinationOf(solved, say)),
    members: membersOf(frame, say),
    unchecked: frame.unchecked.map(({ id }) => id),
    floating: model.timbers.filter(({ id }) => !standing.has(id)).map(({ id }) => id),
    joints: jointsOf(frame, say),
    purlins: purlinsOf(frame, say),
    piers: (hasForces(frame) ? frame.piers : []).map((pier) => pierOf(pier, model)),
    racking: frame.racking.map(({ toward, stands, moving }) => ({ toward, stands, moving })),
    moves: solution.mechanisms.map(({ elements, direction }) => ({
      timbers: timbersOf(elements, solution.hold),
      direction: figures(direction),
    })),
    gaps: gapsOf(frame),
  };
}

/** Loads that are in no figure of the frame, or not as the file says them. */
export const gapsOf = ({ solution }: FrameResults) =>
  solution.loads.gaps.map(({ what, ...gap }) => ({ load: what, ...gap }));

const lineOf = ({ id, symbol, what, unit, note, ...known }: LoadLine, say: Say) => ({
  id,
  ...(symbol === undefined ? {} : { symbol }),
  what: noteWords(what, say),
  ...sourcedOf(known),
  unit,
  ...noted(note, say),
});

const patternOf = ({ id, words, pressures, status, source }: LoadPattern, say: Say) => ({
  case: id,
  ...(words === undefined ? {} : { words: noteWords(words, say) }),
  pressures: pressures.map(({ on, coefficient, psf, from, to }) => ({
    on: noteWords(on, say),
    ...(coefficient === undefined ? {} : { coefficient: figure(coefficient) }),
    value: figure(psf),
    unit: "psf",
    ...(from === undefined ? {} : { from: figure(from) }),
    ...(to === undefined ? {} : { to: figure(to) }),
  })),
  status,
  source,
});

/** How every load came about. */
function loadsOf({ model, solution }: FrameResults, say: Say) {
  const standard = loadStandard(model);
  return {
    ...(standard === undefined ? {} : { standard }),
    sections: loadDerivation(model, solution.loads).map(({ part, name, path, lines, patterns }) => ({
      part,
      ...(name === undefined ? {} : { name }),
      path,
      lines: lines.map((line) => lineOf(line, say)),
      cases: patterns.map((pattern) => patternOf(pattern, say)),
    })),
  };
}

/** @returns what schemas/forces.schema.json calls `results`; `frame` is null while the frame is not whole */
export function resultsJson(results: Results, say: Say) {
  return {
    units: UNITS,
    axes: AXES,
    rafters: results.rafters.map((r) => rafterOf(r, say)),
    decks: results.decks.map((d) => deckOf(d, say)),
    raftersSkipped: results.skipped.map(({ because }) => because),
    frame: results.frame ? frameOf(results.frame, say) : null,
  };
}
