/** Forces for people: tables of combinations, timbers, joints and piers. */
import type { Say } from "../core/checks/say.ts";
import type { Results } from "../core/results.ts";
import { appliedTotal, bearingReactions, reactionTotal } from "../core/statics/balance.ts";
import { frameCaseWords } from "../core/statics/case-words.ts";
import type { FrameResults } from "../core/statics/frame-results.ts";
import { loadDerivation, loadStandard } from "../core/statics/load-derivation.ts";
import { memberForces } from "../core/statics/member-forces.ts";
import type { SolvedCase } from "../core/statics/solve-frame.ts";
import { timbersOf } from "../core/statics/structure.ts";
import { woodsInUse } from "../core/statics/woods-in-use.ts";
import { gapWords } from "../language/gap-words.ts";
import { ratioText, USE_WORDS } from "../language/hover/use-words.ts";
import { loadTables } from "../language/load-words.ts";
import { worstUse } from "../language/uses.ts";
import { woodTable } from "../language/wood-words.ts";
import { textTable } from "./text-table.ts";

/** Forces below this are rounding, lb: the solver's own tolerance on a frame of some tons. */
const NOUGHT = 0.05;

/** The number alone: units stand in the head of the table. */
function plain(pounds: number, say: Say): string {
  const size = Math.abs(pounds) < NOUGHT ? 0 : pounds;
  return say.metric ? say.number((size * 4.4482216152605) / 1000, 2) : say.number(size, 0);
}

const three = (v: readonly number[], say: Say): string[] => v.map((one) => plain(one, say));

/** @returns the whole text, without a caution */
export function forcesText(results: Results, frame: FrameResults, say: Say): string {
  const force = say.metric ? "kN" : "lb";
  const number = numbersOf(frame);
  return [
    ...loads(frame, say),
    ...absent(frame, say),
    `Load combinations (${force}; x along the walls, y across, z up)`,
    combinations(frame, number, say),
    ...woods(frame, say),
    `Timbers (${force}; the most under any combination)`,
    timbers(results, frame, say),
    `Joints (${force}; the most, and the number of its combination)`,
    joints(frame, number, say),
    `Reactions (${force}: up / sideways)`,
    reactions(frame, number, say),
    ...racking(frame),
  ].join("\n\n");
}

/** How every load came about: its lines, then what presses where in each case. */
function loads({ model, solution }: FrameResults, say: Say): string[] {
  const standard = loadStandard(model) ?? "";
  return loadDerivation(model, solution.loads).flatMap((section) => {
    const { title, lines, caption, patterns, known } = loadTables(section, standard, say);
    return [title, textTable(lines), ...(patterns.length > 0 ? [caption, textTable(patterns), known] : [])];
  });
}

/** What does not act, so that nobody takes its silence for shelter: what must be mended, and wind on a low frame without any. */
function absent({ solution }: FrameResults, say: Say): string[] {
  const { all, gaps } = solution.loads;
  const windless = !all.some(({ kind }) => kind === "W") && !gaps.some(({ what }) => what === "wind");
  return [
    ...gapWords(gaps, say),
    ...(windless ? [say.text("No wind acts on this frame: the file gives none.")] : []),
  ];
}

/** Each wood once, so that nobody takes a remembered value for a printed one. */
function woods({ members }: FrameResults, say: Say): string[] {
  const found = woodsInUse(members.values());
  return found.length === 0 ? [] : ["Woods (reference design values)", textTable(woodTable(found, say))];
}

type NumberOf = (caseId: string) => string;

/** Combinations by number: their words are too long to stand beside every force. Both ways of seats share one. */
function numbersOf({ solution }: FrameResults): NumberOf {
  const ids = [...new Set(solution.cases.map(({ frameCase }) => frameCase.id))];
  const numbers = new Map(ids.map((id, index) => [id, `${index + 1}`]));
  return (caseId) => numbers.get(caseId) ?? "";
}

/** The model matters only where a combination is solved by both. */
function nameOf({ frameCase, seats }: SolvedCase, say: Say): string {
  return `${frameCaseWords(frameCase, say)}${seats === "slide" ? ", seats slide" : ""}`;
}

function statusOf({ combined, bracesNominal, frame }: SolvedCase): string {
  if (combined.status === "failed")
    return `no answer: ${[...new Set(combined.faults.map(({ kind }) => kind))].join(", ")}`;
  if (bracesNominal) return "braces idle";
  const out = timbersOf(combined.dropped, frame);
  const slack = combined.status === "slack" ? "slack" : "";
  return [slack, out.length > 0 ? `lets go: ${out.join(", ")}` : ""].filter((w) => w !== "").join("; ");
}

function combinations({ solution }: FrameResults, number: NumberOf, say: Say): string {
  const head = [
    "no.",
    "id",
    "combination",
    "C_D",
    "applied x",
    "y",
    "z",
    "reaction x",
    "y",
    "z",
    "braces that let go",
  ];
  const rows = solution.cases.map((solved) => [
    number(solved.frameCase.id),
    solved.frameCase.id,
    nameOf(solved, say),
    String(solved.frameCase.combination.duration.value),
    ...three(appliedTotal(solved), say),
    ...(solved.combined.status === "failed" ? ["", "", ""] : three(reactionTotal(solved), say)),
    statusOf(solved),
  ]);
  return textTable([head, ...rows]);
}

/** How far each is used, rafters as beams by themselves too: what asks most of it, as the findings have it. */
function timbers(results: Results, { solution, model, unchecked }: FrameResults, say: Say): string {
  const head = ["timber", "used", "by", "under", "tension", "compression", "shear", "moment"];
  const standing = new Set(solution.hold.pieces.map(({ timber }) => timber.id));
  const rows = model.timbers.map((timber) => {
    const forces = memberForces(solution.cases, timber.id);
    const use = worstUse([timber], results);
    const unknown = unchecked.some(({ id }) => id === timber.id);
    const checked = use
      ? [ratioText(use.ratio, say), USE_WORDS[use.what], use.combination]
      : ["", unknown ? "no design values" : "", ""];
    if (!forces)
      return [timber.id, "", standing.has(timber.id) ? "no answer" : "stands on nothing", "", "", "", "", ""];
    return [
      timber.id,
      ...checked,
      plain(forces.tension.value, say),
      plain(forces.compression.value, say),
      plain(Math.max(forces["shear-depth"].value, forces["shear-width"].value), say),
      say.moment(Math.max(forces["moment-depth"].value, forces["moment-width"].value)),
    ];
  });
  return textTable([head, ...rows]);
}

function joints({ joints: found }: FrameResults, number: NumberOf, say: Say): string {
  const cells = ({ most, caseId }: { readonly most: number; readonly caseId: string }): string[] =>
    most < NOUGHT ? ["0", ""] : [plain(most, say), number(caseId)];
  const head = ["joint", "tension", "no.", "compression", "no.", "along", "no.", "across", "no."];
  const rows = [...found.values()].map((j) => [
    j.joint,
    ...cells(j.tension),
    ...cells(j.compression),
    ...cells(j.alongGrain),
    ...cells(j.across),
  ]);
  return textTable([head, ...rows]);
}

function reactions({ solution }: FrameResults, number: NumberOf, say: Say): string {
  const places = [
    ...new Set(solution.cases.flatMap((solved) => bearingReactions(solved).map(({ at }) => at))),
  ];
  const rows = solution.cases.flatMap((solved) => {
    const found = new Map(bearingReactions(solved).map((r) => [r.at, r.force]));
    if (found.size === 0) return [];
    const cells = places.map((place) => {
      const [x, y, z] = found.get(place) ?? [0, 0, 0];
      return `${plain(z, say)} / ${plain(Math.hypot(x, y), say)}`;
    });
    return [[number(solved.frameCase.id), nameOf(solved, say), ...cells]];
  });
  return textTable([["no.", "combination", ...places], ...rows]);
}

/** Only what does not hold. */
function racking({ racking: ways }: FrameResults): string[] {
  return ways
    .filter(({ stands }) => !stands)
    .map(({ toward, moving }) => `Nothing holds it toward ${toward}: ${moving.join(", ")} move.`);
}
