import type { Joint } from "../../joinery/joint.ts";
import { type StrongerScrews, strongerScrews } from "../../joinery/stronger-screws.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { FRICTION } from "../../statics/joint-pulls.ts";
import {
  type JudgedScrews,
  judgeScrews,
  type ScrewLoad,
  screwForceOf,
  screwLoads,
} from "../../statics/screw-forces.ts";
import { defineCheck, type Fix } from "../check.ts";
import { bothWays } from "../fastener-words.ts";
import { fineLength, perLength, steps, times } from "../formula-words.ts";
import { lacksWeight } from "../loads/lacks-weight.ts";
import { overPercent } from "../members/use-words.ts";
import type { Say } from "../say.ts";
import { judgedJoints } from "./judged.ts";

interface Data {
  readonly joint: Joint;
  readonly load: ScrewLoad;
  readonly held: NonNullable<JudgedScrews["held"]>;
  /** every load on these screws, which whatever is proposed has to hold */
  readonly loads: readonly ScrewLoad[];
  readonly solution: FrameResults["solution"];
  /** pointer of the screws that the file sizes */
  readonly written: string | undefined;
}

const stronger = ({ joint, loads }: Data, say: Say): StrongerScrews | undefined =>
  strongerScrews(joint, loads, say.metric);

const sizeWords = ({ count, diameter, length }: StrongerScrews, say: Say) => ({
  count,
  diameter: say.length(diameter),
  length: say.length(length),
});

/** A brace that only pushes on them would bear in a housing. */
const wantsHousing = ({ joint, load }: Data): boolean => joint.sizes.housing.value === 0 && load.pull === 0;

const usualHousing = (say: Say): string => say.length(say.metric ? 12 / 25.4 : 1 / 2);

function helpWords(d: Data, say: Say): string {
  const screws = stronger(d, say);
  const hold =
    screws && say.text("{count} screws of {diameter}, {length} long, hold it.", sizeWords(screws, say));
  if (wantsHousing(d)) {
    const house = say.text("House the brace {housing} deep, so that its push bears on wood.", {
      housing: usualHousing(say),
    });
    return hold ? `${hold} ${say.text("Or else:")} ${house}` : house;
  }
  return (
    hold ??
    say.text(
      "No screws that fit the two timbers hold that: peg the brace on a longer tenon, or take larger timbers.",
    )
  );
}

/** A sum as one factor of a product. */
const together = (parts: readonly string[]): string =>
  parts.length === 1 ? parts.join("") : `(${parts.join(" + ")})`;

/** The force, by its two parts. */
function forceWords({ pull, along }: ScrewLoad, say: Say): string {
  if (pull < 1) return say.text("pushed along the face with {along}", { along: say.force(along) });
  if (along < 1) return say.text("drawn out of the face with {pull}", { pull: say.force(pull) });
  return say.text("drawn out of the face with {pull} and along it with {along}", {
    pull: say.force(pull),
    along: say.force(along),
  });
}

export const screwsOverloaded = defineCheck<"results", Data>({
  meta: {
    id: "screws-overloaded",
    title: "Screws of a brace loaded with more than they hold",
    level: "error",
    area: "joinery",
    source: {
      text: "NDS 12.2, 12.3 and 12.4 with C_D of the combination and C_M; screws as lag screws of their size, whose maker’s report governs",
      status: "memory",
    },
    explanation: {
      what: "The end of a brace is pulled from its timber, or pushed along its face without a housing, with more than its screws hold.",
      why: "The screws draw or bend, the brace slides, and the corner that it stiffens gives way. Screws side by side in green wood keep two fifths of their lateral value, since they hold the wood as it shrinks.",
      formula:
        "F ≤ W′Z′ ÷ (W′ cos² α + Z′ sin² α); α between the force and the face; W = 1,800 G^1.5 D^0.75 lb per inch of thread in the timber, Z by the yield modes with the wood under each head; without a housing F cos θ of a push acts on Z alone; in a housing a push bears on wood; forces below 50 lb are left to friction (common practice, no source)",
      remedy:
        "House the ends (`housing: 1/2 in`), take longer, thicker or more screws, or peg the brace on a tenon.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    // without the weight of a timber nothing tells how much of the wind is left
    if (!frame || lacksWeight(frame)) return;
    const loadsOf = screwLoads(frame);
    for (const joint of judgedJoints(frame.model)) {
      const { entry } = joint;
      if (!joint.sizes.screws || entry?.screws === "unread") continue;
      const loads = (loadsOf.get(joint.id) ?? []).filter((l) => screwForceOf(l) >= FRICTION);
      const judged = judgeScrews(joint, loads);
      // wood without values has a finding of its own
      if (!judged?.held || judged.held.use.ratio <= 1) continue;
      const { load, held } = judged;
      const force = screwForceOf(load);
      const written = entry?.screws?.path;
      yield {
        ...(written === undefined ? { path: joint.path, onKey: true as const } : { path: written }),
        place: joint.id,
        data: { joint, load, held, loads, solution: frame.solution, written },
        value: force,
        limit: held.use.allowed.value,
        unit: "lb",
        // equal forces at mirrored places differ in the last digits
        severity: Number.isFinite(held.use.ratio) ? Math.round(1000 * held.use.ratio) : 1e9,
      };
    }
  },
  words: (d, say) => {
    const { joint, load, held } = d;
    const { screws } = joint.sizes;
    const values = {
      joint: joint.id,
      forces: forceWords(load, say),
      combination: caseWords(d.solution, load.caseId, say),
      count: screws?.count ?? 0,
      diameter: say.length(screws?.diameter.value ?? 0),
      held: say.length(Math.max(0, held.hold.held)),
      help: helpWords(d, say),
    };
    if (held.use.allowed.value <= 0)
      return say.text(
        "{joint} is {forces} under {combination}, and its screws hold nothing: {count} of {diameter}, with {held} of thread in the timber. {help}",
        values,
      );
    return say.text(
      "{joint} is {forces} under {combination}, more than the {limit} that its screws hold that way ({ratio}): {count} of {diameter}, with {held} of thread in the timber. {help}",
      { ...values, limit: say.force(held.use.allowed.value), ratio: overPercent(held.use.ratio, say) },
    );
  },
  worked: ({ load, held: { hold, use } }, say) =>
    steps(
      say.text("W′: {threads}{factors} = {value}", {
        threads: `${perLength(hold.perInch, say)} × ${together(hold.threads.map((inches) => fineLength(inches, say)))}`,
        factors: times(hold.withdrawal.factors, say),
        value: say.force(hold.withdrawal.value),
      }),
      say.text("Z′: {each}{factors} = {value}", {
        each: together(hold.each.map((pounds) => say.force(pounds))),
        factors: times(hold.lateral.factors, say),
        value: say.force(hold.lateral.value),
      }),
      bothWays("screw", use, load.along, load.pull, hold.lateral.value, hold.withdrawal.value, say),
    ),
  fixes: (d, say) => [...screwFix(d, say), ...housingFix(d, say)],
});

function screwFix(d: Data, say: Say): Fix[] {
  const screws = stronger(d, say);
  const entry = d.joint.entry?.path;
  if (!screws || entry === undefined) return [];
  const words = sizeWords(screws, say);
  const text = `{count: ${words.count}, diameter: ${words.diameter}, length: ${words.length}}`;
  return [
    {
      title: say.text("Take {count} screws of {diameter}, {length} long", words),
      edits: [
        d.written === undefined
          ? { kind: "add", path: entry, key: "screws", text }
          : { kind: "replace", path: d.written, text },
      ],
    },
  ];
}

function housingFix(d: Data, say: Say): Fix[] {
  const { entry } = d.joint;
  if (!wantsHousing(d) || !entry) return [];
  const text = usualHousing(say);
  return [
    {
      title: say.text("House it {housing} deep", { housing: text }),
      edits: [
        entry.housing === undefined
          ? { kind: "add", path: entry.path, key: "housing", text }
          : { kind: "replace", path: `${entry.path}/housing`, text },
      ],
    },
  ];
}
