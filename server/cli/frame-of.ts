/** The analysed frame of a file, for the commands that print it. */
import type { Results } from "../core/results.ts";
import type { FrameResults } from "../core/statics/frame-results.ts";
import type { FrameService, Snapshot } from "../language/frame-service.ts";
import { nameOf, readText, type Surroundings, WrongCall } from "./command.ts";

export interface Analysed {
  readonly file: string;
  readonly snapshot: Snapshot;
  readonly results: Results;
  readonly frame: FrameResults;
}

/** Formats of commands that print for people or for programs. */
export type Format = "text" | "json";

/** @throws WrongCall for a format that there is not */
export function formatOf(name: string): Format {
  if (name !== "text" && name !== "json")
    throw new WrongCall(`There is no format \`${name}\`; there are text and json.`);
  return name;
}

/**
 * Reads and analyses the one file of a call.
 * @returns undefined, having said why, when the frame cannot be analysed
 * @throws WrongCall when not one file is named, or it cannot be opened
 */
export function analysed(
  positionals: readonly string[],
  around: Surroundings,
  service: FrameService,
): Analysed | undefined {
  const [file, ...others] = positionals;
  if (file === undefined || others.length > 0) throw new WrongCall("Name one frame file.");
  const snapshot = service.open(file, 0, readText(file, around));
  const results = snapshot.evaluation?.results;
  if (results?.frame) return { file, snapshot, results, frame: results.frame };
  const none = (snapshot.evaluation?.model.timbers.length ?? 0) === 0;
  const why = none ? "has no timber that can be placed" : "has parts that cannot be read or placed yet";
  around.err(`${nameOf(file)} ${why}, so that it has no forces. See: bentwright check ${file}\n`);
  return undefined;
}
