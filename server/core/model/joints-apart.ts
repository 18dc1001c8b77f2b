/** Joint entries that hold nowhere: names that are unknown, or timbers that do not meet. */
import { type Frame, isWhole, type JointEntry, MEMBER_KINDS, type Ref } from "../frame/frame.ts";
import type { Joint } from "../joinery/joint.ts";
import { closeness } from "./joint-match.ts";
import type { Meeting, Timber } from "./model.ts";
import type { Placer } from "./placer.ts";
import type { ModelProblem } from "./problems.ts";
import { boxGap, solidOf } from "./solid.ts";

/** Above this many pairs the nearest pair is not looked for: the message says the same without it. */
const MOST_PAIRS = 20_000;

function sticksFor(p: Placer, sticks: ReadonlyMap<string, readonly Timber[]>, ref: Ref): Timber[] {
  return [...sticks.values()]
    .flat()
    .filter((t) => closeness(ref.text, t) > 0 && !p.frame.unread.has(t.member));
}

function nearest(
  a: readonly Timber[],
  b: readonly Timber[],
): { gap: number; pair: readonly [string, string] } | undefined {
  if (a.length * b.length > MOST_PAIRS) return undefined;
  const solids = b.map(solidOf);
  let found: { gap: number; pair: readonly [string, string] } | undefined;
  for (const s of a) {
    const own = solidOf(s);
    solids.forEach((other, i) => {
      const t = b[i];
      if (!t || t === s) return;
      const gap = boxGap(own, other);
      if (!found || gap < found.gap) found = { gap, pair: [s.id, t.id] };
    });
  }
  return found;
}

/** A name that no member, stick or kind answers to. */
function isKnown(p: Placer, ref: Ref, found: readonly Timber[]): boolean {
  if (found.length > 0) return true;
  const name = ref.text.split("@")[0] ?? ref.text;
  if (p.frame.unread.has(name) || p.frame.lost.has("/members")) return false;
  if (p.members.has(name) && !ref.text.includes("@")) return false;
  // a kind that the file has, or may have on a line that is lost
  if (p.frame.members.some((m) => m.kind === ref.text)) return false;
  if (!isWhole(p.frame) && MEMBER_KINDS.some((kind) => kind === ref.text)) return false;
  p.unknown(ref, ref.text.includes("@") ? "stick" : "member", [...p.members.keys()]);
  return false;
}

/** Whether an end of what the entry calls `into` comes to the length of what it calls `of`. */
function meetsReversed(
  meetings: readonly Meeting[],
  of: readonly Timber[],
  into: readonly Timber[],
): boolean {
  const ofIds = new Set(of.map((t) => t.id));
  const intoIds = new Set(into.map((t) => t.id));
  return meetings.some(
    (m) =>
      (intoIds.has(m.a.id) && ofIds.has(m.b.id) && m.aEnd !== "side" && m.bEnd === "side") ||
      (intoIds.has(m.b.id) && ofIds.has(m.a.id) && m.bEnd !== "side" && m.aEnd === "side"),
  );
}

function checkEntry(
  p: Placer,
  sticks: ReadonlyMap<string, readonly Timber[]>,
  entry: JointEntry,
  placed: readonly Pick<Joint, "of" | "into">[],
  meetings: readonly Meeting[],
): ModelProblem[] {
  const isPlaced = (ref: Ref, pick: (j: (typeof placed)[number]) => Timber): boolean =>
    placed.some((j) => closeness(ref.text, pick(j)) > 0);
  if (
    entry.of.every((ref) => isPlaced(ref, (j) => j.of)) &&
    entry.into.every((ref) => isPlaced(ref, (j) => j.into))
  )
    return [];
  const sides = [entry.of, entry.into].map((refs) =>
    refs.map((ref) => ({ ref, found: sticksFor(p, sticks, ref) })),
  );
  const [of = [], into = []] = sides.map((side) => side.filter((s) => isKnown(p, s.ref, s.found)));
  // an entry that is not placed for another reason (its member lacks a value) must not be blamed for it
  if (of.length < entry.of.length || into.length < entry.into.length) return [];
  const idle = (list: typeof of, pick: (j: (typeof placed)[number]) => Timber): typeof of =>
    list.filter((s) => !isPlaced(s.ref, pick));
  const apart = [
    ...idle(of, (j) => j.of).map((s) => ({ s, others: into, first: true })),
    ...idle(into, (j) => j.into).map((s) => ({ s, others: of, first: false })),
  ];
  // with one name on each side both are idle together: say it once, at `into`
  const told = entry.of.length === 1 && entry.into.length === 1 ? apart.slice(-1) : apart;
  return told.map(({ s, others, first }) => {
    const elsewhere = others.flatMap((o) => o.found);
    const near = nearest(s.found, elsewhere);
    const other = others.map((o) => o.ref.text).join(", ");
    const [ofHere, intoHere] = first ? [s.found, elsewhere] : [elsewhere, s.found];
    return {
      kind: "joint-apart" as const,
      path: s.ref.path,
      joint: entry.name,
      of: first ? s.ref.text : other,
      into: first ? other : s.ref.text,
      gap: near?.gap,
      nearest: near?.pair,
      ...(meetsReversed(meetings, ofHere, intoHere) ? { reversed: true } : {}),
    };
  });
}

/**
 * Every entry, or name in an entry, that holds at no place. Unknown names are reported to the placer.
 * @param refused problems of entries whose kind cannot be cut where their timbers meet: these are not apart
 */
export function jointsApart(
  frame: Frame,
  p: Placer,
  sticks: ReadonlyMap<string, readonly Timber[]>,
  joints: readonly Joint[],
  meetings: readonly Meeting[],
  refused: readonly ModelProblem[],
): ModelProblem[] {
  const byId = new Map([...sticks.values()].flat().map((t) => [t.id, t]));
  const met = refused.flatMap((problem) => {
    if (problem.kind !== "kind-unfit") return [];
    const [of, into] = [byId.get(problem.of), byId.get(problem.into)];
    return of && into ? [{ path: problem.path, of, into }] : [];
  });
  return frame.joints.flatMap((entry) =>
    checkEntry(
      p,
      sticks,
      entry,
      [...joints.filter((j) => j.entry === entry), ...met.filter(({ path }) => path === entry.path)],
      meetings,
    ),
  );
}
