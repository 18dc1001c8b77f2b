import { groupBy } from "../../collect.ts";
import { isWhole, type Pointer } from "../../frame/frame.ts";
import { closeness } from "../../model/joint-match.ts";
import type { Meeting, Model, Timber } from "../../model/model.ts";
import { LEAST_OVERLAP, runAlike, timberOverlap } from "../../model/overlap.ts";
import { defineCheck, type Level } from "../check.ts";
import { atPlace } from "./at-place.ts";

interface Data {
  readonly a: string;
  readonly b: string;
  readonly depth: number;
  /** height of the middle of their contact above the file's 0 */
  readonly height: number;
  /** they run alike: no joint can let one into the other */
  readonly alike: boolean;
  /** one ends in the other: a joint there can be named */
  readonly ends: boolean;
  /** pairs of sticks of the same two entries, this one included */
  readonly count: number;
}

interface Overlap {
  readonly meeting: Meeting;
  /** the one that the file places later, which is blamed, and the one that was there */
  readonly later: Timber;
  readonly earlier: Timber;
  readonly depth: number;
}

const pairOf = (a: Timber, b: Timber): string => (a.id < b.id ? `${a.id} ${b.id}` : `${b.id} ${a.id}`);

/** Joint entries that name the two but are cut nowhere are a finding of their own. */
function namedApart(model: Model): (a: Timber, b: Timber) => boolean {
  const apart = model.problems.flatMap((p) => (p.kind === "joint-apart" ? [p] : []));
  const fits = (names: string, stick: Timber): boolean =>
    names.split(", ").some((name) => closeness(name, stick) > 0);
  return (a, b) =>
    apart.some((p) => (fits(p.of, a) && fits(p.into, b)) || (fits(p.of, b) && fits(p.into, a)));
}

/** Every two timbers that share their space although no joint, named, assumed or of the roof, lets one into the other. */
function overlaps(model: Model): Overlap[] {
  const joined = new Set(model.joints.map((j) => pairOf(j.of, j.into)));
  const apart = namedApart(model);
  const order = new Map([...model.members.keys()].map((name, index) => [name, index]));
  // the roof's own rafters follow from the roof: what stands in their way is blamed
  const rank = ({ member }: Timber): number => order.get(member) ?? -1;
  return model.meetings.flatMap((meeting) => {
    const { a, b } = meeting;
    // the same stick twice is one place written twice
    if (a.id === b.id || joined.has(pairOf(a, b)) || apart(a, b)) return [];
    const depth = timberOverlap(a, b);
    if (depth <= LEAST_OVERLAP) return [];
    const [earlier, later] = rank(a) <= rank(b) ? [a, b] : [b, a];
    return [{ meeting, later, earlier, depth }];
  });
}

/** The one place of `at` that all of these sticks stand at, if their entry lists it; else its key. */
function wrongValue(model: Model, sticks: readonly Timber[]): { path: Pointer; onKey?: true } {
  const entry = sticks[0]?.path ?? "";
  const [path, ...others] = new Set(sticks.map((t) => atPlace(model, t)));
  return path !== undefined && others.length === 0 ? { path } : { path: entry, onKey: true };
}

export const timbersOverlap = defineCheck<"model", Data>({
  meta: {
    id: "timbers-overlap",
    title: "Two timbers in one place",
    level: "error",
    area: "geometry",
    source: {
      text: "common practice, no source: within 1/4 in is scribed and pared; the overlap itself by the separating axis theorem",
      status: "common-practice",
    },
    explanation: {
      what: "Two timbers stand in each other by more than 1/4 in, and no joint, named or assumed, lets one into the other.",
      why: "Two bodies cannot take the same space: one cannot be raised where the file puts it, or must be cut in a way that nothing here sizes or checks. Timbers that run alike are an error; where they cross, a warning, since a framer may halve them by hand.",
      formula: "depth to which they stand in each other ≤ 1/4 in",
      remedy: "Move one of them, end one at the face of the other, or name the joint that lets one in.",
    },
  },
  input: "model",
  *find(model) {
    if (!isWhole(model.frame)) return;
    for (const [, group] of groupBy(overlaps(model), (o) => `${o.later.path} ${o.earlier.path}`)) {
      const worst = group.reduce((most, o) => (o.depth > most.depth ? o : most));
      const where = wrongValue(
        model,
        group.map((o) => o.later),
      );
      const alike = group.some(isAlike);
      const level: Level = alike ? "error" : "warning";
      for (const o of group)
        yield {
          ...where,
          level,
          apart: o.earlier.path,
          place: o.later.id,
          counted: true,
          severity: o.depth,
          value: o.depth,
          limit: LEAST_OVERLAP,
          unit: "in",
          data: {
            a: worst.later.id,
            b: worst.earlier.id,
            depth: worst.depth,
            height: worst.meeting.point[2],
            alike,
            ends: worst.meeting.aEnd !== "side" || worst.meeting.bEnd !== "side",
            count: group.length,
          },
          related: [
            {
              path: o.earlier.path,
              message: (say) => say.text("{stick} is there already", { stick: o.earlier.id }),
            },
          ],
        };
    }
  },
  words: (d, say) => {
    const what = say.text(
      "{a} takes the same space as {b} to a depth of {depth}, around {height} up, and no joint lets one into the other.",
      { a: d.a, b: d.b, depth: say.length(d.depth), height: say.length(d.height) },
    );
    const again =
      d.count === 1
        ? ""
        : ` ${say.text("It is so at {count} places of their entries in all.", { count: d.count })}`;
    const remedy = d.alike
      ? say.text("They run alike, so both cannot be there. Move or remove one.")
      : d.ends
        ? say.text("Cut as they are, one will not seat. Move one, or name the joint that lets one in.")
        : say.text(
            "Cut as they are, one will not go in. Move one, or end one at the other’s face and name the joint there.",
          );
    return `${what}${again} ${remedy}`;
  },
  worked: (d, say) =>
    say.text("{depth} > {least}", { depth: say.length(d.depth), least: say.length(LEAST_OVERLAP) }),
});

function isAlike({ earlier, later }: Overlap): boolean {
  return runAlike(earlier, later);
}
