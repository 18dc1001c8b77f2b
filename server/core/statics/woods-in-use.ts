/** The woods of a frame as its checks take them: reference design values, each with how well it is known, once for each wood. */
import { groupBy } from "../collect.ts";
import type { TimberValues } from "../wood/stated-values.ts";
import type { MemberResult } from "./frame-results.ts";

export interface WoodInUse {
  /** class of the file */
  readonly timberClass: string;
  readonly wood: TimberValues;
  /** timbers that are of it */
  readonly timbers: readonly string[];
}

/** @returns one for each class, grade, size class and set of values, in the order of the timbers */
export function woodsInUse(members: Iterable<MemberResult>): WoodInUse[] {
  const alike = groupBy(members, ({ timber, wood }) =>
    JSON.stringify([timber.class?.name, wood.group, wood.grade, wood.sizeClass, wood.values]),
  );
  return [...alike.values()].flatMap((group): WoodInUse[] => {
    const [first] = group;
    if (!first) return [];
    const { timber, wood } = first;
    return [{ timberClass: timber.class?.name ?? "", wood, timbers: group.map((one) => one.timber.id) }];
  });
}
