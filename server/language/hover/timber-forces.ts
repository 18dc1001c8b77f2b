/** What a timber under the cursor carries: where its load is from, how far it is used, the forces inside it. */
import { areaWords } from "../../core/checks/amount-words.ts";
import { fromFoot } from "../../core/checks/members/use-words.ts";
import type { Say } from "../../core/checks/say.ts";
import type { Timber } from "../../core/model/model.ts";
import type { Results } from "../../core/results.ts";
import { caseWords } from "../../core/statics/case-words.ts";
import type { FrameResults } from "../../core/statics/frame-results.ts";
import { type Brought, broughtTo, roofAreas } from "../../core/statics/load-path.ts";
import { type ForceKind, type MemberForces, memberForces } from "../../core/statics/member-forces.ts";
import { type PurlinLift, purlinLifts } from "../../core/statics/purlin-lifts.ts";
import { gapWords } from "../gap-words.ts";
import { type WorstUse, worstUse } from "../uses.ts";
import { limitTable } from "./limit-table.ts";
import { escapeMarkdown, table } from "./table.ts";
import { unansweredWords } from "./unsolved.ts";
import { amountText, ratioText, USE_WORDS } from "./use-words.ts";

/** @returns paragraphs; none while nothing is computed of these sticks */
export function timberForces(sticks: readonly Timber[], results: Results, say: Say): string[] {
  const { frame } = results;
  const use = worstUse(sticks, results);
  return [
    // what the figures leave out goes before them
    ...(frame ? [...gapWords(frame.solution.loads.gaps, say), ...loadWords(sticks, frame, say)] : []),
    ...(use ? useWords(use, sticks.length > 1, frame, say) : []),
    ...(frame
      ? [...forceTable(sticks, frame, say), ...liftWords(sticks, frame, say), ...unansweredWords(frame, say)]
      : []),
  ];
}

/** Givers named in one sentence. */
const MOST_GIVERS = 3;

/** `rafter@A.3 carries 63 ft² of roof; takes 2,480 lb from rafters under D + S.` */
function loadWords(sticks: readonly Timber[], frame: FrameResults, say: Say): string[] {
  const { solution, model } = frame;
  const areas = roofAreas(model, solution.loads.strips);
  const brought = broughtTo(solution.cases, sticks);
  const most = brought.reduce<Brought | undefined>((m, b) => (b.total > (m?.total ?? 0) ? b : m), undefined);
  const widest = sticks.reduce<string | undefined>(
    (best, { id }) => ((areas.get(id) ?? 0) > (areas.get(best ?? "") ?? 0) ? id : best),
    undefined,
  );
  const name = most?.timber ?? widest;
  if (name === undefined) return [];
  const area = areas.get(name);
  const parts = [
    ...(area === undefined ? [] : [say.text("carries {area} of roof", { area: areaWords(area, say) })]),
    ...(most && most.total >= 1 ? [takes(most, frame, say)] : []),
  ];
  if (parts.length === 0) return [];
  return [`${escapeMarkdown(name)} ${parts.join("; ")}.`];
}

function takes({ from, caseId }: Brought, { solution }: FrameResults, say: Say): string {
  const givers = from
    .filter(({ force }) => force >= 1)
    .slice(0, MOST_GIVERS)
    .map(({ member, force, timbers }) =>
      say.text(timbers > 1 ? "{force} from {count} × {member}" : "{force} from {member}", {
        force: say.force(force),
        count: timbers,
        member: escapeMarkdown(member),
      }),
    );
  return say.text("takes {givers} under {combination}", {
    givers: say.list(givers),
    combination: caseWords(solution, caseId, say),
  });
}

function useWords(use: WorstUse, several: boolean, frame: FrameResults | undefined, say: Say): string[] {
  const combination =
    frame && use.caseId !== undefined ? caseWords(frame.solution, use.caseId, say) : use.combination;
  const head = say.text("Used to **{ratio}** by {what}: {value} of {limit} under {combination}{place}.", {
    ratio: ratioText(use.ratio, say),
    what: say.text(USE_WORDS[use.what]),
    value: amountText(use.value, use.unit, say),
    limit: amountText(use.limit, use.unit, say),
    combination,
    place: placeWords(use, several, say),
  });
  return [head, ...limitTable(use, say)];
}

/** Where in which stick. */
function placeWords({ timber, at }: WorstUse, several: boolean, say: Say): string {
  const stick = several ? say.text(", worst in {stick}", { stick: escapeMarkdown(timber.id) }) : "";
  if (at === undefined) return stick;
  return say.text("{stick}, {place}", { stick, place: fromFoot(at, say) });
}

const KINDS: readonly (readonly [ForceKind, string, "force" | "moment"])[] = [
  ["compression", "pushes together", "force"],
  ["tension", "pulls apart", "force"],
  ["shear-depth", "shear along the depth", "force"],
  ["shear-width", "shear along the width", "force"],
  ["moment-depth", "bends in the depth", "moment"],
  ["moment-width", "bends in the width", "moment"],
];

/** Forces below this say nothing, lb or lb·in. */
const SMALL = 1;

/** Where wind lifts a purlin most, for what holds it there. */
function liftWords(sticks: readonly Timber[], frame: FrameResults, say: Say): string[] {
  if (!sticks.some(({ kind }) => kind === "purlin")) return [];
  const ids = new Set(sticks.map(({ id }) => id));
  const use = ({ pull, hold }: PurlinLift): number =>
    hold && hold.uplift.value > 0 ? pull.most / hold.uplift.value : Number.POSITIVE_INFINITY;
  const [first, ...rest] = purlinLifts(frame).filter(({ upper }) => ids.has(upper.id));
  if (!first) return [];
  const worst = rest.reduce((most, one) => {
    const more = use(one) - use(most);
    return more > 0 || (Number.isNaN(more) && one.pull.most > most.pull.most) ? one : most;
  }, first);
  const { upper, lower, pull, hold } = worst;
  const values = {
    purlin: escapeMarkdown(upper.id),
    lower: escapeMarkdown(lower.id),
    force: say.force(pull.most),
    combination: caseWords(frame.solution, pull.caseId, say),
    limit: say.force(hold?.uplift.value ?? 0),
    ratio: ratioText(use(worst), say),
  };
  if (!hold)
    return [
      say.text(
        "{purlin} is lifted off {lower} with {force} under {combination}; nothing of a known size is named that holds it.",
        values,
      ),
    ];
  return [
    say.text(
      hold.fasteners.kind === "screws"
        ? "{purlin} is lifted off {lower} with {force} under {combination}; its screws hold {limit}: {ratio}."
        : "{purlin} is lifted off {lower} with {force} under {combination}; its nails hold {limit}: {ratio}.",
      values,
    ),
  ];
}

/** The largest of each kind over all sticks. */
function forceTable(sticks: readonly Timber[], { solution }: FrameResults, say: Say): string[] {
  const all = sticks.flatMap((timber): { timber: Timber; forces: MemberForces }[] => {
    const forces = memberForces(solution.cases, timber.id);
    return forces ? [{ timber, forces }] : [];
  });
  const rows = KINDS.flatMap(([kind, words, unit]) => {
    const [first] = all;
    if (!first) return [];
    const top = all.reduce((most, one) =>
      one.forces[kind].value > most.forces[kind].value * (1 + 1e-9) ? one : most,
    );
    const { value, caseId } = top.forces[kind];
    if (value < SMALL) return [];
    return [
      [
        say.text(words),
        unit === "force" ? say.force(value) : say.moment(value),
        ...(sticks.length > 1 ? [top.timber.id] : []),
        caseWords(solution, caseId, say),
      ],
    ];
  });
  const columns = [
    say.text("force"),
    say.text("at most"),
    ...(sticks.length > 1 ? [say.text("in")] : []),
    say.text("under"),
  ];
  return rows.length === 0 ? [] : [table(columns, rows)];
}
