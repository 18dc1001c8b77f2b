import type { Joint, Sized } from "../../joinery/joint.ts";

/** Where a finding about a size of a joint points: the value when the file gives it, else the entry's key. */
export function sizePath(
  joint: Joint,
  key: string,
  size: Sized | undefined,
): { readonly path: string; readonly onKey?: true } {
  return size?.from === "file" ? { path: `${joint.path}/${key}` } : { path: joint.path, onKey: true };
}

/** The key that gives a seat's length: a joint's own, or that of the roof's rafters. */
export const seatKey = ({ entry }: Joint): string => (entry ? "seat" : "length");

/** Where a finding about the pegs of a joint points: what the file says of them, else the entry's key. */
export function pegsPath(joint: Joint): { readonly path: string; readonly onKey?: true } {
  const written = joint.pegsPath;
  return written === undefined ? { path: joint.path, onKey: true } : { path: written };
}
