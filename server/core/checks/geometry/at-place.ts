import type { Pointer } from "../../frame/frame.ts";
import type { Model, Timber } from "../../model/model.ts";

/** @returns where the file names the place of a stick in its entry's `at`; undefined for sticks placed otherwise */
export function atPlace(model: Model, { id, member }: Timber): Pointer | undefined {
  const at = model.members.get(member)?.at;
  return at?.find(({ text }) => id === `${member}@${text.replace(/\s+/g, "-")}`)?.path;
}
