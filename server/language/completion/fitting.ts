/**
 * Which of the timbers that can be named are likely meant: those that touch the other timber of a joint in the frame as
 * it was placed last, and the kinds that are usual in a place (common practice, no source). They come first, and say why.
 */
import type { Say } from "../../core/checks/say.ts";
import { type JointKindName, MEMBER_KINDS, type MemberKind } from "../../core/frame/frame.ts";
import { closeness } from "../../core/model/joint-match.ts";
import { isBraceEnd, isBracing, usualKind } from "../../core/model/joint-usual.ts";
import type { Model, Timber } from "../../core/model/model.ts";
import { keysOf, valueAt } from "../../document/tree.ts";
import { textsOf } from "../defined-names.ts";
import { type Name, type Naming, textAt } from "./naming.ts";

/** @returns all of the names, each in its old order among those that fit and those that do not */
export function fittingFirst(names: readonly Name[], naming: Naming): readonly Name[] {
  const rule = ruleOf(naming);
  if (rule === undefined) return names;
  const judged = names.map((name) => ({ name, fits: rule.fits(name.text) }));
  // where nothing fits, the rule says nothing
  if (!judged.some(({ fits }) => fits)) return names;
  const worded = (name: Name, why: string | undefined): Name =>
    why === undefined
      ? name
      : { ...name, detail: [name.detail, why].filter((part) => part !== undefined).join(", ") };
  return [
    ...judged.filter(({ fits }) => fits).map(({ name }) => worded(name, rule.why)),
    ...judged.filter(({ fits }) => fits === false).map(({ name }) => worded(name, rule.whyNot)),
    ...judged.filter(({ fits }) => fits === undefined).map(({ name }) => name),
  ];
}

interface Rule {
  /** undefined for what is no timber of the file */
  readonly fits: (name: string) => boolean | undefined;
  readonly why: string;
  readonly whyNot: string | undefined;
}

function ruleOf(naming: Naming): Rule | undefined {
  const [area, , key, last] = keysOf(naming.path);
  if (area === "joints" && key === "of") return ofJoint(naming, "into");
  if (area === "joints" && key === "into") return ofJoint(naming, "of");
  if (area === "roof" && key === "head" && last === "into") return touchingRafters(naming);
  if (area === "piers" && key === "under")
    return ofKinds(naming, ["post"], naming.say.text("stands on piers"));
  if (area === "floors" && key === "on") return ofKinds(naming, ["joist", "beam"]);
  if (area === "members" && key === "between") return between(naming);
  const kind = textAt(naming.map, "kind");
  if (area !== "members" || (key !== "from" && key !== "to") || !isKind(kind)) return undefined;
  const usual = ENDS[kind]?.[key];
  return usual && ofKinds(naming, usual);
}

/** What timbers that stand or slope usually begin at and end at (common practice, no source). */
const ENDS: Readonly<Partial<Record<MemberKind, Readonly<Record<"from" | "to", readonly MemberKind[]>>>>> = {
  post: { from: ["sill"], to: ["plate", "tie", "girt", "beam", "ridge"] },
  "king-post": { from: ["tie", "beam"], to: ["ridge"] },
  strut: { from: ["tie", "beam", "king-post"], to: ["rafter", "plate"] },
  rafter: { from: ["plate", "tie"], to: ["ridge", "king-post"] },
};

function isKind(text: string | undefined): text is MemberKind {
  return MEMBER_KINDS.some((kind) => kind === text);
}

function ofKinds(naming: Naming, usual: readonly MemberKind[], why = naming.say.text("usual here")): Rule {
  return {
    fits: (name) => {
      const kind = kindNamed(naming, name);
      return kind && usual.includes(kind);
    },
    why,
    whyNot: undefined,
  };
}

/** The kind of an entry, of a single stick, or the one that is named itself. */
function kindNamed({ root, model }: Naming, name: string): MemberKind | undefined {
  const own = textAt(valueAt(valueAt(root, "members"), name), "kind");
  const kind = own ?? model?.byId.get(name)?.kind ?? name;
  return isKind(kind) ? kind : undefined;
}

/**
 * @param other the side of the joint that is not being typed; where it is not written yet, the timbers count that meet
 *   another as this kind of joint usually joins them
 */
function ofJoint(naming: Naming, other: "of" | "into"): Rule | undefined {
  const { map, model, say } = naming;
  const kind = textAt(map, "kind") as JointKindName | undefined;
  const named = textsOf(valueAt(map, other));
  const bracesOnly = other === "into" && kind !== undefined && isBraceEnd(kind);
  if (model && named.length > 0) {
    const near = joinedTo(model, other, (timber) => isNamed(timber, named));
    const names = wordsFor(named, say);
    return {
      fits: (name) =>
        fitsSome(naming, model, name, (one) => near.has(one.id) && (!bracesOnly || isBracing(one.kind))),
      why: say.text("touches {names}", { names }),
      whyNot:
        other === "into"
          ? say.text("no end of it touches {names}", { names })
          : say.text("no end of {names} touches it", { names }),
    };
  }
  if (bracesOnly) return ofKinds(naming, MEMBER_KINDS.filter(isBracing), say.text("its ends are joined so"));
  if (!model || kind === undefined) return undefined;
  const usual = new Set(
    waysOf(model).flatMap((way) =>
      usualKind(way.of.kind, way.into.kind) === kind ? [other === "into" ? way.of.id : way.into.id] : [],
    ),
  );
  return {
    fits: (name) => fitsSome(naming, model, name, (timber) => usual.has(timber.id)),
    why: say.text("usually joined so"),
    whyNot: undefined,
  };
}

interface Way {
  readonly of: Timber;
  readonly into: Timber;
}

/** How the timbers that meet can be let into each other: by an end, or where neither ends there, either way. */
function waysOf({ meetings }: Model): readonly Way[] {
  return meetings.flatMap(({ a, b, aEnd, bEnd }) => {
    const sides = aEnd === "side" && bEnd === "side";
    return [
      ...(sides || aEnd !== "side" ? [{ of: a, into: b }] : []),
      ...(sides || bEnd !== "side" ? [{ of: b, into: a }] : []),
    ];
  });
}

/** Ids of the timbers that can be the other side of a joint with these. */
function joinedTo(model: Model, side: "of" | "into", own: (timber: Timber) => boolean): ReadonlySet<string> {
  const other = side === "of" ? "into" : "of";
  return new Set(waysOf(model).flatMap((way) => (own(way[side]) ? [way[other].id] : [])));
}

/** A brace stands between timbers that meet; the second is told by the first. */
function between(naming: Naming): Rule | undefined {
  const { map, model } = naming;
  const kind = textAt(map, "kind");
  const named = textsOf(valueAt(map, "between")).filter((name) => kindNamed(naming, name) !== undefined);
  if (!model || named.length === 0 || !isKind(kind) || !isBracing(kind)) return undefined;
  return touch(
    naming,
    touching(model, (timber) => isNamed(timber, named)),
    named,
    (timber) => !isBracing(timber.kind),
  );
}

function touchingRafters(naming: Naming): Rule | undefined {
  const { model, root } = naming;
  if (!model) return undefined;
  const near = touching(model, ({ path }) => path === "/roof/rafters");
  // under a gable roof the plates carry the feet
  const gable = textAt(valueAt(root, "roof"), "kind") === "gable";
  return touch(naming, near, ["rafter"], ({ kind }) => !gable || kind !== "plate");
}

function touch(
  naming: Naming,
  near: ReadonlySet<string>,
  named: readonly string[],
  also: (timber: Timber) => boolean,
): Rule {
  const { model, say } = naming;
  const names = wordsFor(named, say);
  return {
    fits: (name) => model && fitsSome(naming, model, name, (timber) => near.has(timber.id) && also(timber)),
    why: say.text("touches {names}", { names }),
    whyNot: say.text("does not touch {names}", { names }),
  };
}

/** So many names are told before they are only counted. */
const NAMED = 3;

function wordsFor(named: readonly string[], say: Say): string {
  return named.length <= NAMED ? say.list(named) : say.text("{count} timbers", { count: named.length });
}

function isNamed(timber: Timber, names: readonly string[]): boolean {
  return names.some((name) => closeness(name, timber) > 0);
}

/** Ids of what meets one of these timbers. */
function touching({ meetings }: Model, own: (timber: Timber) => boolean): ReadonlySet<string> {
  return new Set(meetings.flatMap(({ a, b }) => [...(own(a) ? [b.id] : []), ...(own(b) ? [a.id] : [])]));
}

function fitsSome(
  naming: Naming,
  model: Model,
  name: string,
  holds: (timber: Timber) => boolean,
): boolean | undefined {
  if (kindNamed(naming, name) === undefined) return undefined;
  const one = model.byId.get(name);
  const own = model.sticks.get(name) ?? model.timbers.filter(({ kind }) => kind === name);
  return one ? holds(one) : own.some(holds);
}
