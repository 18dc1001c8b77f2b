/** The entry of the file that a finding about a section belongs to, and the same frame with another section there. */
import type { Finding } from "../checks/check.ts";
import type { Frame, MemberKind, Pointer, Section, TimberClass } from "../frame/frame.ts";
import type { Model, Timber } from "../model/model.ts";

/** An entry with a section that stands in the model. */
export interface SizedEntry {
  /** `/members/tie`, `/roof/rafters` */
  readonly path: Pointer;
  /** `tie`, `rafter` */
  readonly name: string;
  readonly kind: MemberKind;
  readonly section: Section;
  /** it lies flat: what is written first is its depth */
  readonly turned: boolean;
  readonly class: TimberClass | undefined;
  readonly sticks: readonly Timber[];
}

/** Checks that a larger section can satisfy; each points at the section. */
export const SIZED_CHECKS: ReadonlySet<string> = new Set([
  "timber-overstressed",
  "timber-sags",
  "timber-slender",
  "bearing-crushed",
  "rafter-overspanned",
]);

const SECTION = "/section";

/** @returns undefined for findings that no size mends, and for entries without sticks */
export function entryOf(model: Model, finding: Pick<Finding, "check" | "path">): SizedEntry | undefined {
  if (!SIZED_CHECKS.has(finding.check) || !finding.path.endsWith(SECTION)) return undefined;
  const path = finding.path.slice(0, -SECTION.length);
  const sticks = model.timbers.filter((t) => t.path === path);
  const [first] = sticks;
  if (!first) return undefined;
  const member = model.frame.members.find((m) => m.path === path);
  const rafters = model.frame.roof?.rafters;
  const section = member?.section ?? (rafters?.path === path ? rafters.section : undefined);
  if (!section) return undefined;
  const { class: timberClass, kind, member: name } = first;
  return { path, name, kind, section, turned: member?.turned ?? false, class: timberClass, sticks };
}

/** @returns the frame as it would be read with this section written at the entry */
export function withSection(frame: Frame, entry: Pointer, section: Section): Frame {
  const { roof } = frame;
  return {
    ...frame,
    members: frame.members.map((m) => (m.path === entry ? { ...m, section } : m)),
    roof: roof?.rafters?.path === entry ? { ...roof, rafters: { ...roof.rafters, section } } : roof,
  };
}
