/** Levels, members and joints share one set of names; a name defined twice is a problem at its second place. */
import type { Frame, Pointer } from "../frame/frame.ts";
import type { ModelProblem } from "./problems.ts";

export function namesOf(frame: Frame): ModelProblem[] {
  const first = new Map<string, Pointer>();
  const all = [
    ...frame.grid.levels.map((l) => ({ name: l.id, path: l.path })),
    ...frame.members.map((m) => ({ name: m.name, path: m.path })),
    ...frame.joints.map((j) => ({ name: j.name, path: j.path })),
  ];
  return all.flatMap(({ name, path }) => {
    const before = first.get(name);
    if (before === undefined) {
      first.set(name, path);
      return [];
    }
    return [{ kind: "duplicate-id" as const, path, name, first: before }];
  });
}
