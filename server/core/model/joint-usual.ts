/** The usual joint where a file names none (common practice, no source), and meetings that need none. */
import type { JointKindName, MemberKind } from "../frame/frame.ts";

/** Depth of the housing of a brace that no entry sizes: 1/2 in, or 12 mm (common practice, no source). */
export function usualBraceHousing(metric: boolean): number {
  return metric ? 12 / 25.4 : 1 / 2;
}

const UPRIGHT: ReadonlySet<MemberKind> = new Set(["post", "king-post"]);
const BRACING: ReadonlySet<MemberKind> = new Set(["brace", "strut"]);
const LIGHT: ReadonlySet<MemberKind> = new Set(["joist", "purlin"]);

/** Where a rafter's end is not simply tenoned. */
const RAFTER_INTO: Readonly<Partial<Record<MemberKind, JointKindName>>> = {
  ridge: "housed",
  tie: "rafter-heel",
};

/** A brace or a strut. */
export function isBracing(kind: MemberKind): boolean {
  return BRACING.has(kind);
}

/** Whether a kind of joint is the end of a brace, cut to its angle. */
export function isBraceEnd(kind: JointKindName): boolean {
  return kind === "brace-tenon" || kind === "screwed-brace";
}

/**
 * @param of kind of the timber whose end joins
 * @param into kind of the timber that receives it
 * @returns the joint a framer would cut there; undefined where timbers are only nailed or collide. Heads of rafters that meet
 * at a peak are no end in a side, and are not asked about here
 */
export function usualKind(of: MemberKind, into: MemberKind): JointKindName | undefined {
  // braces whose ends run into each other are in each other’s way, not joined
  if (isBracing(of)) return isBracing(into) ? undefined : "brace-tenon";
  if (of === "rafter") return RAFTER_INTO[into] ?? "mortise-and-tenon";
  if (UPRIGHT.has(of) || UPRIGHT.has(into)) return "mortise-and-tenon";
  return LIGHT.has(of) ? "pocket" : "housed-dovetail";
}
