import type { JointKindName } from "../../frame/frame.ts";
import type { UnfitWhy } from "../../joinery/joint.ts";
import { jointKindOf } from "../../joinery/kinds/index.ts";
import type { ModelProblem } from "../../model/problems.ts";
import { defineCheck } from "../check.ts";
import type { Say } from "../say.ts";

type Data = Extract<ModelProblem, { kind: "kind-unfit" }>;

/** What of the meeting does not suit; each follows on the kind of joint. */
const WHY: Readonly<Record<UnfitWhy, string>> = {
  "one-end": "It joins two ends, and only one of the two timbers ends here.",
  "in-line":
    "It lets an end into a side, and these two run in one line or nearly so, {angle} from each other.",
  "not-in-line": "It lengthens a timber in its own line, and these two stand at {angle} to each other.",
  "not-square": "It is cut for timbers that stand square to each other, and these two stand at {angle}.",
  square: "It is cut for the slant of a brace, and these two stand square to each other.",
  "into-upright": "It goes in from above, and {into} stands upright, with no top to open there.",
  "of-upright": "It goes in from above, and {of} stands upright.",
  "of-not-level": "It is the joint of a level timber, and {of} rises at {angle}.",
  "into-not-level": "It needs a level timber to receive it, and {into} rises at {angle}.",
  "no-common-height": "Its two timbers lie at one height, and these have no height in common.",
  "of-not-sloping": "It is cut for a timber that slopes as a rafter does, and {of} rises at {angle}.",
  alongside: "Its two timbers cross each other in plan, and these run the same way.",
  across: "Its two timbers stand in one plumb plane, and {of} comes to {into} from the side.",
  "upper-end": "It takes the thrust of a rafter’s foot, and here is the upper end of {of}.",
  "no-peak": "It joins two rafters at a peak, and these do not rise toward each other.",
  "depth-across":
    "Its wedge presses the slanted edge along the grain of the timber it goes through, and the depth of {of} lies across the grain of {into}.",
  under:
    "Its wedge holds a timber that goes through or hangs, and {of} stands under {into} and is pressed against it.",
};

/** A timber that slopes less than this lies level, degrees: less than is told of an angle. */
const FLAT = 0.5;

/** Of what must slope: the angle tells nothing where there is none. */
function whyWords({ of, into, unfit: { why, angle = 0 } }: Data, say: Say): string {
  const values = { of, into, angle: say.angle(angle) };
  if (why !== "of-not-sloping" || (angle >= FLAT && angle <= 90 - FLAT)) return say.text(WHY[why], values);
  return angle < FLAT
    ? say.text("It is cut for a timber that slopes as a rafter does, and {of} lies level.", values)
    : say.text("It is cut for a timber that slopes as a rafter does, and {of} stands upright.", values);
}

const titleOf = (kind: JointKindName, say: Say): string => say.text(jointKindOf(kind).title).toLowerCase();

export const kindUnfit = defineCheck<"model", Data>({
  meta: {
    id: "kind-unfit",
    title: "A kind of joint cannot be cut here",
    level: "error",
    area: "joinery",
    source: {
      text: "common practice, no source: which end meets which side, at what angle, and whether the timbers lie, slope or stand",
      status: "common-practice",
    },
    explanation: {
      what: "A joint entry names two timbers that do meet, but its kind is made for a meeting of another sort: a bird’s mouth for a rafter on a plate, a pocket for a joist in a beam, a scarf for two ends in line.",
      why: "The cuts of that kind would lie outside the wood or hold nothing, so none of its sizes means anything there.",
      remedy:
        "Take a kind that can be cut there; the message lists them. Until then the usual joint is taken in its place.",
    },
  },
  input: "model",
  *find(model) {
    for (const p of model.problems)
      if (p.kind === "kind-unfit")
        yield { path: `${p.path}/kind`, data: p, place: p.place ?? `${p.of} / ${p.into}` };
  },
  words: (d, say) =>
    say.text("{entry}: a {kind} cannot be cut where {of} meets {into}. {why} {instead} {fits}", {
      entry: d.entry,
      kind: titleOf(d.joint, say),
      of: d.of,
      into: d.into,
      why: whyWords(d, say),
      instead: d.instead
        ? say.text("A {kind} of usual sizes is taken there instead, and nothing of the entry is used.", {
            kind: titleOf(d.instead, say),
          })
        : say.text("Nothing is cut there."),
      fits:
        d.fits.length > 0
          ? say.text("Kinds that fit here: {kinds}.", {
              kinds: say.list(d.fits.map((kind) => titleOf(kind, say))),
            })
          : say.text("No kind of joint fits there: move one of the two timbers."),
    }),
  fixes: (d, say, model) => {
    const kind = d.instead && d.fits.includes(d.instead) ? d.instead : d.fits[0];
    if (!kind) return [];
    const named = say.text(jointKindOf(kind).title).toLowerCase();
    // an entry that holds at other places stays, and this place gets its own
    return [
      d.holds
        ? {
            title: say.text("Write a {kind} for this place", { kind: named }),
            edits: [
              {
                kind: "add",
                path: "/joints",
                key: freeName(
                  d.entry,
                  new Set([...model.members.keys(), ...model.frame.joints.map(({ name }) => name)]),
                ),
                text: `{kind: ${kind}, of: ${d.of}, into: ${d.into}}`,
              },
            ],
          }
        : {
            title: say.text("Make it a {kind}", { kind: named }),
            edits: [{ kind: "replace", path: `${d.path}/kind`, text: kind }],
          },
    ];
  },
});

function freeName(base: string, taken: ReadonlySet<string>): string {
  let n = 2;
  while (taken.has(`${base}-${n}`)) n++;
  return `${base}-${n}`;
}
