import type { Frame } from "../../frame/frame.ts";
import type { Roof } from "../../frame/roof.ts";

/** Whether a part of the roof is being typed or cannot be read, so that nobody can say what it lacks. */
export function isRoofLost({ lost }: Pick<Frame, "lost">, roof: Roof): boolean {
  return (
    roof.unclear || [...lost].some((at) => at === "" || at === roof.path || at.startsWith(`${roof.path}/`))
  );
}
