/** Which findings an entry of `accept` covers, and what an entry has to say to cover one finding and no other. */
import type { Accepted } from "../frame/frame.ts";
import type { Finding, Found } from "./check.ts";

const ENTRIES: ReadonlySet<string> = new Set(["members", "joints", "piers"]);

/** What accepts a finding: an entry that names its very place, else its joint, member or pier entry, else one for all places. */
export function coveredBy(
  own: readonly Accepted[],
  { place, path }: Pick<Found<unknown>, "place" | "path">,
): Accepted | undefined {
  return (
    own.find((a) => a.at !== undefined && a.at === place) ??
    own.find((a) => a.at !== undefined && isOf(a.at, place, path)) ??
    own.find((a) => a.at === undefined)
  );
}

/** Whether a finding is about a stick or place of this entry, or lies in the entry itself. */
function isOf(entry: string, place: string | undefined, path: string): boolean {
  return place?.startsWith(`${entry}@`) || nameIn(path) === entry;
}

/** The entry that a path lies in; undefined outside of members, joints and piers. */
function nameIn(path: string): string | undefined {
  const [, section = "", name] = path.split("/");
  return ENTRIES.has(section) ? name : undefined;
}

/** What `accept` has to name for a finding. */
export interface Acceptance {
  /** one entry for each; undefined: everywhere */
  readonly at: readonly (string | undefined)[];
  /** how many other findings of the check the entries cover too, where nothing narrower covers this one */
  readonly others: number;
}

/**
 * The entries that cover all of a finding and the fewest others: its one place; else its joint, member or pier entry;
 * else each place by itself, or everywhere for what has no place.
 * @param all findings of the frame
 */
export function acceptanceOf(finding: Finding, all: readonly Finding[]): Acceptance {
  const others = all.filter(
    (other) => other !== finding && other.check === finding.check && other.accepted === undefined,
  );
  const touched = (at: readonly (string | undefined)[]): number =>
    others.filter((other) => at.some((one) => covers(one, other, "some"))).length;
  const { places, path } = finding;
  if (places.length === 1) return { at: places, others: touched(places) };
  const entries = [nameIn(path), nameOf(places[0])].filter(
    (name) => name !== undefined && covers(name, finding, "every"),
  );
  const ways = [...entries.map((name) => [name]), ...(places.length > 0 ? [places] : [[undefined]])];
  const counted = ways.map((at) => ({ at, others: touched(at) }));
  const fewest = Math.min(...counted.map(({ others: count }) => count));
  return counted.find(({ others: count }) => count === fewest) ?? { at: [undefined], others: others.length };
}

/** `post@A1` → `post` */
function nameOf(place: string | undefined): string | undefined {
  const at = place?.indexOf("@") ?? -1;
  return at > 0 ? place?.slice(0, at) : undefined;
}

function covers(at: string | undefined, { places, path }: Finding, how: "some" | "every"): boolean {
  if (at === undefined) return true;
  const covered = (place: string | undefined): boolean => at === place || isOf(at, place, path);
  return places.length === 0 ? covered(undefined) : places[how](covered);
}
