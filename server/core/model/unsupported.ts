/** Timbers with an end in mid-air: posts that stand on nothing, lying and raking timbers that are held at one place only. */
import { groundedTimbers } from "./grounded.ts";
import type { Meeting, Model, Timber } from "./model.ts";
import { isUpright } from "./upright.ts";
import { dot, sub, type Vec3 } from "./vec.ts";

export interface Unsupported {
  readonly timber: Timber;
  /** the end that nothing holds */
  readonly end: "foot" | "head";
  /** what holds the timber elsewhere, and how far from there the free end is, inches; undefined for a post that stands on nothing */
  readonly held: { readonly by: Timber; readonly reach: number } | undefined;
}

/** Holds nearer than this along a timber act as one: it turns about them, inches. */
const LEAST_ARM = 6;

/** A contact this near to a post’s foot is under it, inches. */
const NEAR_FOOT = 2;

const axial = (t: Timber, p: Vec3): number => dot(sub(p, t.origin), t.axis);

/** Kinds that rafters hold up: their partners, the ridge between them, purlins on them. */
const RAISED: ReadonlySet<Timber["kind"]> = new Set(["rafter", "ridge", "purlin"]);

interface Hold {
  readonly at: number;
  readonly by: Timber;
}

/** Kinds that lie on or hang in what they meet, and never hold it up. */
const CARRIED: ReadonlySet<Timber["kind"]> = new Set(["joist", "purlin"]);

/**
 * Whether `other` may hold `timber` where they meet: not what is itself let into it or lies on it. Posts and braces hold
 * what stands on them.
 * @param letInto pairs of timbers with a joint that lets the first into the second
 */
function mayHold(timber: Timber, other: Timber, letInto: ReadonlySet<string>): boolean {
  if (isUpright(other) || other.kind === "brace" || other.kind === "strut") return true;
  if (other.kind === "rafter") return RAISED.has(timber.kind);
  if (CARRIED.has(other.kind) && !CARRIED.has(timber.kind)) return false;
  return !letInto.has(pairOf(other, timber));
}

const pairOf = (of: Timber, into: Timber): string => `${of.id} ${into.id}`;

/** How far along a timber it touches another that runs alike, inches; 0 for one that crosses it. */
function touchAlong(timber: Timber, by: Timber, { area }: Meeting): number {
  if (Math.abs(dot(timber.axis, by.axis)) < 0.99) return 0;
  return area / Math.max(timber.width, timber.depth);
}

/** A leaf on the hinges of its post is held by them. */
const isHung = (model: Model, t: Timber): boolean => model.members.get(t.member)?.hungOn !== undefined;

function footless(model: Model, met: ReadonlyMap<string, readonly Meeting[]>): Unsupported[] {
  if (model.piers.length === 0) return [];
  const onPier = new Set(model.piers.flatMap((p) => (p.timber ? [p.timber.id] : [])));
  return model.timbers.flatMap((timber) => {
    if (timber.kind !== "post" || onPier.has(timber.id) || isHung(model, timber)) return [];
    const low = timber.axis[2] > 0 ? 0 : timber.span;
    const stands = (met.get(timber.id) ?? []).some((m) => Math.abs(axial(timber, m.point) - low) < NEAR_FOOT);
    return stands
      ? []
      : [{ timber, end: low === 0 ? ("foot" as const) : ("head" as const), held: undefined }];
  });
}

function onOneHold(model: Model, met: ReadonlyMap<string, readonly Meeting[]>): Unsupported[] {
  const letInto = new Set(model.joints.map((j) => pairOf(j.of, j.into)));
  return model.timbers.flatMap((timber) => {
    if (isUpright(timber) || timber.kind === "brace" || isHung(model, timber)) return [];
    const holds = (met.get(timber.id) ?? []).flatMap((m): Hold[] => {
      const by = m.a === timber ? m.b : m.a;
      if (!mayHold(timber, by, letInto)) return [];
      const [at, half] = [axial(timber, m.point), touchAlong(timber, by, m) / 2];
      return [
        { at: at - half, by },
        { at: at + half, by },
      ];
    });
    const [first] = holds;
    const piers = model.piers.flatMap((p) => (p.timber === timber ? [axial(timber, p.top)] : []));
    const at = [...piers, ...holds.map((h) => h.at)];
    if (!first || Math.max(...at) - Math.min(...at) >= LEAST_ARM) return [];
    const end = first.at < timber.span / 2 ? "head" : "foot";
    const reach = end === "head" ? timber.span - first.at : first.at;
    return [{ timber, end, held: { by: first.by, reach } }];
  });
}

/** @returns every timber whose one end nothing holds; timbers that float with all that they meet are not among them */
export function unsupportedEnds(model: Model): Unsupported[] {
  const met = new Map<string, Meeting[]>();
  for (const m of model.meetings)
    for (const { id } of [m.a, m.b]) {
      const list = met.get(id);
      if (list) list.push(m);
      else met.set(id, [m]);
    }
  const grounded = groundedTimbers(model);
  return [...footless(model, met), ...onOneHold(model, met)].filter(
    ({ timber }) => grounded.has(timber.id) && !model.doubles.has(timber.id),
  );
}
