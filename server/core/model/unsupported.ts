/**
 * Timbers with an end in mid-air: posts that stand on nothing, lying and raking timbers that are held at one place only, and
 * lying ones that run on far past the last place that holds them, as where a post is missing.
 */

import { isScarf } from "../joinery/scarf.ts";
import { inches } from "../quantity/length.ts";
import { groundedTimbers } from "./grounded.ts";
import type { Meeting, Model, Timber } from "./model.ts";
import { LEAST_OVERLAP, runAlike, timberOverlap } from "./overlap.ts";
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
  // a strut under a principal stands against it
  if (other.kind === "rafter")
    return RAISED.has(timber.kind) || (timber.kind === "strut" && letInto.has(pairOf(timber, other)));
  if (CARRIED.has(other.kind) && !CARRIED.has(timber.kind)) return false;
  return !letInto.has(pairOf(other, timber));
}

const pairOf = (of: Timber, into: Timber): string => `${of.id} ${into.id}`;

/** Between where it touches another along a timber, inches from its foot; the same twice for one that crosses it. */
function touchAlong(timber: Timber, by: Timber, { area, point }: Meeting): readonly [number, number] {
  const at = axial(timber, point);
  if (Math.abs(dot(timber.axis, by.axis)) < 0.99) return [at, at];
  // an area is of all the faces that touch: where one lies in the other there are several, one over the other
  const half = area / Math.max(timber.width, timber.depth) / 2;
  const inside = (x: number): number => Math.min(timber.span, Math.max(0, x));
  return [inside(at - half), inside(at + half)];
}

/** Whether it stands in another that runs alike and is not joined to it: two bodies in one place, of which nothing hangs. */
function sharesPlace(met: readonly Meeting[], joined: ReadonlySet<string>): boolean {
  return met.some(({ a, b }) => {
    if (joined.has(pairOf(a, b)) || joined.has(pairOf(b, a))) return false;
    return runAlike(a, b) && timberOverlap(a, b) > LEAST_OVERLAP;
  });
}

/** A leaf on the hinges of its post is held by them. */
const isHung = (model: Model, t: Timber): boolean => model.members.get(t.member)?.hungOn !== undefined;

function meetingsOf({ meetings }: Model): ReadonlyMap<string, readonly Meeting[]> {
  const met = new Map<string, Meeting[]>();
  for (const m of meetings)
    for (const { id } of [m.a, m.b]) {
      const list = met.get(id);
      if (list) list.push(m);
      else met.set(id, [m]);
    }
  return met;
}

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

function holdsOf(timber: Timber, met: readonly Meeting[], letInto: ReadonlySet<string>): Hold[] {
  return met.flatMap((m): Hold[] => {
    const by = m.a === timber ? m.b : m.a;
    if (!mayHold(timber, by, letInto)) return [];
    return touchAlong(timber, by, m).map((at) => ({ at, by }));
  });
}

/** From the first to the last place that holds a timber, in. */
function armOf(model: Model, timber: Timber, holds: readonly Hold[]): number {
  const piers = model.piers.flatMap((p) => (p.timber === timber ? [axial(timber, p.top)] : []));
  const at = [...piers, ...holds.map((h) => h.at)];
  return Math.max(...at) - Math.min(...at);
}

/**
 * Pairs of which the first is let into the second and cannot hold it. A scarf is a hinge that holds both ways: there a first
 * length that stands without the second is left out.
 */
function letIntoOf(model: Model, met: ReadonlyMap<string, readonly Meeting[]>): ReadonlySet<string> {
  const all = new Set(model.joints.map((j) => pairOf(j.of, j.into)));
  const holding = model.joints.filter(({ kind, of, into }) => {
    if (!isScarf(kind)) return false;
    const others = (met.get(of.id) ?? []).filter((m) => m.a !== into && m.b !== into);
    return armOf(model, of, holdsOf(of, others, all)) >= LEAST_ARM;
  });
  for (const { of, into } of holding) all.delete(pairOf(of, into));
  return all;
}

function onOneHold(model: Model, met: ReadonlyMap<string, readonly Meeting[]>): Unsupported[] {
  const letInto = letIntoOf(model, met);
  return model.timbers.flatMap((timber) => {
    if (isUpright(timber) || timber.kind === "brace" || isHung(model, timber)) return [];
    const holds = holdsOf(timber, met.get(timber.id) ?? [], letInto);
    const [first] = holds;
    if (!first || armOf(model, timber, holds) >= LEAST_ARM) return [];
    const end = first.at < timber.span / 2 ? "head" : "foot";
    const reach = end === "head" ? timber.span - first.at : first.at;
    return [{ timber, end, held: { by: first.by, reach } }];
  });
}

export interface FarEnd {
  readonly timber: Timber;
  readonly end: "foot" | "head";
  /** the last timber or pier that holds it, by id */
  readonly last: string;
  /** from there to the end, and between the outermost holds, inches */
  readonly reach: number;
  readonly back: number;
  /** what the file gives as its overhang there, and how far it may go past that, inches */
  readonly overhang: number;
  readonly allowed: number;
}

/** Kinds that lie from post to post. */
const FROM_POST_TO_POST: ReadonlySet<Timber["kind"]> = new Set([
  "plate",
  "tie",
  "girt",
  "beam",
  "sill",
  "ridge",
]);
/** Past its last hold, over what the file writes as overhang, a timber goes a quarter of what is held, and two feet (common practice, no source) */
const FAR = { share: 1 / 4, least: 24 };

/** What stands on a timber does not hold it up. */
function standsOn(timber: Timber, m: Meeting): boolean {
  const [by, end] = m.a === timber ? [m.b, m.bEnd] : [m.a, m.aEnd];
  return isUpright(by) && end !== "side" && (end === "foot") === by.axis[2] > 0;
}

/** @returns lying timbers with an end far past the last place that holds them, further than their overhang is written */
export function farEnds(model: Model): FarEnd[] {
  const met = meetingsOf(model);
  const letInto = letIntoOf(model, met);
  const grounded = groundedTimbers(model);
  return model.timbers.flatMap((timber): FarEnd[] => {
    const { kind, span, id } = timber;
    if (!FROM_POST_TO_POST.has(kind) || isUpright(timber) || isHung(model, timber)) return [];
    if (!grounded.has(id) || model.doubles.has(id)) return [];
    const meetings = met.get(id) ?? [];
    if (sharesPlace(meetings, letInto)) return [];
    const under = meetings.filter((m) => !standsOn(timber, m));
    const holds = [
      ...holdsOf(timber, under, letInto).map(({ at, by }) => ({ at, by: by.id })),
      ...model.piers.flatMap((p) => (p.timber === timber ? [{ at: axial(timber, p.top), by: p.id }] : [])),
    ].sort((a, b) => a.at - b.at);
    const [first, last] = [holds[0], holds.at(-1)];
    if (!first || !last || last.at - first.at < LEAST_ARM) return [];
    const back = last.at - first.at;
    const written = model.members.get(timber.member)?.overhang;
    const allowed = Math.max(FAR.least, FAR.share * back);
    // a piece of a spliced timber hangs on the next one
    const goesOn = (at: number): boolean =>
      under.some((m) => {
        const other = m.a === timber ? m.b : m.a;
        const inLine = Math.abs(dot(other.axis, timber.axis)) > 0.95;
        return inLine && Math.abs(axial(timber, m.point) - at) <= FAR.least;
      });
    const ends = [
      { end: "foot", at: 0, last: first, overhang: written?.from },
      { end: "head", at: span, last, overhang: written?.to },
    ] as const;
    return ends.flatMap(({ end, at, last: { at: held, by }, overhang: given }): FarEnd[] => {
      const overhang = given === undefined ? 0 : inches(given);
      const reach = Math.abs(at - held);
      return reach - overhang > allowed && !goesOn(at)
        ? [{ timber, end, last: by, reach, overhang, back, allowed }]
        : [];
    });
  });
}

/** @returns every timber whose one end nothing holds; timbers that float with all that they meet are not among them */
export function unsupportedEnds(model: Model): Unsupported[] {
  const met = meetingsOf(model);
  const grounded = groundedTimbers(model);
  return [...footless(model, met), ...onOneHold(model, met)].filter(
    ({ timber }) => grounded.has(timber.id) && !model.doubles.has(timber.id),
  );
}
