import type { CaseFault } from "../../analysis/faults.ts";
import type { Model, Timber } from "../../model/model.ts";
import { solidOf } from "../../model/solid.ts";
import { unsupportedEnds } from "../../model/unsupported.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults, RackingResult } from "../../statics/frame-results.ts";
import type { FrameSolution } from "../../statics/solve-frame.ts";
import { timbersOf } from "../../statics/structure.ts";
import { defineCheck, type Found } from "../check.ts";
import type { Say } from "../say.ts";

/** It racks under its own weight, or a combination of loads has no answer. */
type Data = Racks | Unanswered;

interface Unanswered {
  readonly kind: "unanswered";
  readonly cases: number;
  /** id of the combination that is named */
  readonly first: string;
  readonly solution: FrameSolution;
  readonly why: CaseFault["kind"];
  readonly moving: readonly string[];
}

interface Racks {
  readonly kind: "racks";
  /** braces hold it, but it yields too far: by so many inches, or farther than the frame is high */
  readonly soft: number | "beyond" | undefined;
  readonly along: "walls" | "bents";
  readonly timbers: readonly string[];
  readonly bents: readonly string[];
  readonly walls: readonly string[];
  /** the posts stand, and what they carry moves on them */
  readonly aloft: boolean;
  /** of what moves aloft */
  readonly ridge: string | undefined;
  /** two rows of posts or more, and nothing level joins any of those that move across the bents */
  readonly untied: boolean;
  /** combinations without an answer, of all; undefined = another finding of this check says it, or there are none */
  readonly unanswered: { readonly failed: number; readonly count: number } | undefined;
}

/** How many timbers a message names. */
const NAMED = 4;

const WHY: Readonly<Record<CaseFault["kind"], string>> = {
  mechanism: "braces that only push let go, and nothing is left to hold it",
  slack: "it rests on braces that carry nothing",
  unsettled: "no set of pushing braces agrees with its forces",
  inaccurate: "its forces do not balance closely enough to be trusted",
  input: "it holds a size that no analysis can take",
};

function wayOf(racking: RackingResult): Racks["along"] {
  return racking.toward.endsWith("x") ? "walls" : "bents";
}

/** How much of a timber's direction has to go that way. */
const THAT_WAY = 0.3;

/** Whether it goes along the walls, or across the bents. */
const goes = ({ axis }: Timber, along: Racks["along"]): boolean =>
  Math.abs(axis[along === "walls" ? 0 : 1]) > THAT_WAY;

/** Whether some brace stands that way at all: without one there is nothing that could be too soft. */
const braces = (timbers: Iterable<Timber>, along: Racks["along"]): boolean =>
  [...timbers].some((timber) => (timber.kind === "brace" || timber.kind === "strut") && goes(timber, along));

/** A lean past the frame's own height is no length that anybody could measure: what stands that way braces nothing. */
function softOf({ lean }: RackingResult, { timbers }: Model): number | "beyond" {
  const solids = timbers.map(solidOf);
  const height =
    Math.max(...solids.map(({ high }) => high[2])) - Math.min(...solids.map(({ low }) => low[2]));
  return lean > height ? "beyond" : lean;
}

/** What is joined to these posts: a brace aloft, between king posts and a ridge, holds none of them. */
function joinedTo(posts: readonly Timber[], { joints }: Model): ReadonlySet<Timber> {
  const ids = new Set(posts.map(({ id }) => id));
  return new Set(
    joints.flatMap(({ of, into }) => [...(ids.has(into.id) ? [of] : []), ...(ids.has(of.id) ? [into] : [])]),
  );
}

/** Whether nothing level goes from a row of posts to the next, where there is one. */
function untiedAcross(posts: readonly Timber[], joined: ReadonlySet<Timber>, model: Model): boolean {
  const rows = new Set(model.timbers.flatMap((t) => (t.kind === "post" ? t.walls : [])));
  return (
    posts.length > 0 &&
    rows.size > 1 &&
    ![...joined].some((t) => goes(t, "bents") && Math.abs(t.axis[2]) < THAT_WAY)
  );
}

export const frameRacks = defineCheck<"results", Data>({
  meta: {
    id: "frame-racks",
    title: "The frame racks",
    level: "error",
    area: "members",
    source: {
      text: "statics: the frame under its own weight and two percent of it sideways, braces that only push; the 2 % is common practice, no source",
      status: "common-practice",
    },
    explanation: {
      what: "Nothing holds the frame upright in one direction: joints turn like hinges, and no brace stands against it.",
      why: "It folds up sideways under the first wind, or while it is raised.",
      remedy:
        "Put a brace into at least one corner that stands against each way: pairs of knees in a bent, pairs of knees along each wall. Brace a ridge to the posts under it, or lay the deck of structural panels or diagonally.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    if (!frame) return;
    const { failed, cases } = frame.solution;
    if (failed.length === 0 && frame.racking.every(({ stands }) => stands)) return;
    const seen = new Set<Racks["along"]>();
    const loose = unsupportedEnds(frame.model);
    // whether a frame with a post on nothing racks, nobody can say
    if (loose.some(({ held }) => !held)) return;
    // a timber on one hinge moves in every frame; it has a finding of its own
    const hinged = new Set(loose.map(({ timber }) => timber.id));
    for (const racking of frame.racking) {
      const along = wayOf(racking);
      if (racking.stands || seen.has(along)) continue;
      seen.add(along);
      const moving = racking.moving.flatMap((id) => frame.model.byId.get(id) ?? []);
      const uprights = moving.filter((t) => t.kind === "post");
      const first = uprights[0] ?? moving[0];
      const joined = joinedTo(uprights, frame.model);
      if (!first || (uprights.length === 0 && racking.moving.some((id) => hinged.has(id)))) continue;
      yield {
        path: first.path,
        onKey: true,
        apart: along,
        place: first.id,
        data: {
          kind: "racks",
          soft:
            racking.soft && braces(uprights.length > 0 ? joined : moving, along)
              ? softOf(racking, frame.model)
              : undefined,
          along,
          timbers: (uprights.length > 0 ? uprights : moving).map((t) => t.id),
          bents: [...new Set(uprights.flatMap((t) => t.bents))],
          walls: [...new Set(uprights.flatMap((t) => t.walls))],
          aloft: uprights.length === 0,
          ridge: moving.find((t) => t.kind === "ridge")?.id,
          untied: along === "bents" && untiedAcross(uprights, joined, frame.model),
          unanswered:
            seen.size === 1 && failed.length > 0 ? { failed: failed.length, count: cases.length } : undefined,
        },
      };
    }
    if (seen.size === 0 && hinged.size === 0) yield* unanswered(frame);
  },
  words(d, say) {
    if (d.kind === "unanswered")
      return say.text(
        "Under {count} of the load combinations, {first} first, the frame has no answer: {why}. {moving}Nothing is known of its timbers under that load; add braces or anchors.",
        {
          count: d.cases,
          first: caseWords(d.solution, d.first, say),
          why: WHY[d.why],
          moving:
            d.moving.length > 0
              ? `${say.text("It gives way at {timbers}.", { timbers: d.moving.slice(0, NAMED).join(", ") })} `
              : "",
        },
      );
    const unanswered = d.unanswered
      ? ` ${say.text("Under {failed} of {count} load combinations it has no answer: no timber, joint or pier was checked under them.", d.unanswered)}`
      : "";
    return `${racksWords(d, say)}${unanswered}`;
  },
});

function racksWords(d: Racks, say: Say): string {
  const named = d.timbers.slice(0, NAMED);
  const rest = d.timbers.length - named.length;
  const timbers = rest > 0 ? `${named.join(", ")} and ${rest} more` : say.list(named);
  if (d.soft === "beyond")
    return say.text(
      d.along === "walls"
        ? "The frame racks along the walls: nothing stiff enough to count braces {timbers} that way, and under two hundredths of the weight on them they fall over. Put braces into more corners that way, pairs of knees along each wall, or take larger sections where braces are there already; look whether a weight or an E was mistyped."
        : "The frame racks across the bents: nothing stiff enough to count braces {timbers} that way, and under two hundredths of the weight on them they fall over. Put braces into more corners that way, pairs of knees in each bent, or take larger sections where braces are there already; look whether a weight or an E was mistyped.",
      { timbers },
    );
  if (d.soft !== undefined)
    return say.text(
      d.along === "walls"
        ? "The frame is too soft along the walls: under two hundredths of the weight on them {timbers} lean {lean}, so far that the weight brings them down. Take larger sections, stiffer wood or more braces that way; look whether a weight or an E was mistyped."
        : "The frame is too soft across the bents: under two hundredths of the weight on them {timbers} lean {lean}, so far that the weight brings them down. Take larger sections, stiffer wood or more braces that way; look whether a weight or an E was mistyped.",
      { timbers, lean: say.length(Math.round(d.soft * 16) / 16) },
    );
  if (d.aloft) return aloft(d, timbers, say);
  if (d.untied)
    return say.text(
      "The frame racks across the bents: no brace holds {timbers} upright that way, and no tie joins them to the posts across from them, so it folds up in the first wind. Set a tie from wall to wall in each of bents {bents}, with knees under both of its ends.",
      { timbers, bents: say.list(d.bents) },
    );
  const [bent, second] = d.bents;
  // walls of one bent have nothing to lean a knee against
  if (d.along === "walls" && second === undefined)
    return say.text(
      "The frame racks along the walls: no brace holds {timbers} upright that way, so it falls over in the first wind. Bent {bent} stands alone, with nothing to brace it to: set the posts as legs in the ground, add a second bent and knees to it along the walls, or stay it with raking struts.",
      { timbers, bent: bent ?? "" },
    );
  return d.along === "walls"
    ? say.text(
        "The frame racks along the walls: no brace holds {timbers} upright that way, so it folds up in the first wind. Brace bents {bents} along the walls, with knees that stand both ways.",
        { timbers, bents: say.list(d.bents) },
      )
    : say.text(
        "The frame racks across the bents: no brace holds {timbers} upright that way, so it folds up in the first wind. Brace walls {walls} across, with knees in the bents that stand both ways.",
        { timbers, walls: say.list(d.walls) },
      );
}

/** Words for a roof, or another part, that moves on posts which stand. */
function aloft(d: Racks, timbers: string, say: Say): string {
  if (d.along === "bents")
    return say.text(
      "What the posts carry racks across the bents: nothing holds {timbers} that way, so it folds up in the first wind. Tie or brace it to timbers that are held across.",
      { timbers },
    );
  return d.ridge === undefined
    ? say.text(
        "The roof racks along the walls: nothing holds {timbers} that way, so they fall over like a row of cards. Lay the deck of structural panels or diagonally, or let the rafters into a ridge with braces below it.",
        { timbers },
      )
    : say.text(
        "The roof racks along the walls: nothing holds {timbers} that way, so it folds up in the first wind. Brace {ridge} to the posts under it, or lay the deck of structural panels or diagonally.",
        { timbers, ridge: d.ridge },
      );
}

/** Combinations without forces that can be trusted: silence about their timbers would be no pass. */
function* unanswered(frame: FrameResults): Generator<Found<Data>> {
  const { failed } = frame.solution;
  const [first] = failed;
  const fault = first?.faults[0];
  if (!first || !fault) return;
  const modes = fault.kind === "mechanism" || fault.kind === "slack" ? fault.modes : [];
  const moving = timbersOf(
    modes.flatMap((m) => m.elements),
    frame.solution.hold,
  );
  const timber = frame.model.byId.get(moving[0] ?? "") ?? frame.model.timbers[0];
  yield {
    path: timber?.path ?? "",
    onKey: true,
    ...(timber ? { place: timber.id } : {}),
    data: {
      kind: "unanswered",
      cases: failed.length,
      first: first.caseId,
      solution: frame.solution,
      why: fault.kind,
      moving,
    },
    value: failed.length,
    limit: 0,
    unit: "count",
  };
}
