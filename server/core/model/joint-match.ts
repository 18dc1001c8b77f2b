/** Which joint entry holds where two timbers meet: place before stick before entry before kind. */
import type { Frame, JointEntry } from "../frame/frame.ts";
import type { Timber } from "./model.ts";

/** How closely a name fits a stick: 3 the stick itself, 2 its entry, 1 its kind, 0 not at all. */
export function closeness(
  name: string,
  stick: { readonly id: string; readonly member: string; readonly kind: string },
): 0 | 1 | 2 | 3 {
  if (name === stick.id) return 3;
  if (name === stick.member) return 2;
  return name === stick.kind ? 1 : 0;
}

function best(names: readonly { readonly text: string }[], stick: Parameters<typeof closeness>[1]): number {
  let most = 0;
  for (const { text } of names) most = Math.max(most, closeness(text, stick));
  return most;
}

export interface Match {
  readonly entry: JointEntry;
  readonly rank: number;
}

/**
 * Place (both sticks named) before stick, stick before entry, entry before kind; the nearer name decides, the other one
 * between equals. Which side it stands on makes no difference.
 */
const rankOf = (of: number, into: number): number => Math.max(of, into) * 4 + Math.min(of, into);

/** Entries that hold for `of` joined into `into`, the most specific first. */
export function matches(frame: Frame, of: Timber, into: Timber): Match[] {
  const found: Match[] = [];
  for (const entry of frame.joints) {
    const a = best(entry.of, of);
    const b = a > 0 ? best(entry.into, into) : 0;
    if (b > 0) found.push({ entry, rank: rankOf(a, b) });
  }
  return found.sort((p, q) => q.rank - p.rank);
}
