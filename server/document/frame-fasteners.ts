/** Screws or nails under the key `fasten`. */
import type { Fasteners } from "../core/frame/fasteners.ts";
import { fromInches } from "../core/quantity/length.ts";
import type { Cursor } from "./cursor.ts";

/** More screws or nails than a rafter's end has room for; also the schema's limit. */
const MOST_FASTENERS = 24;

/** Nails and screws that hold timbers, thickest and thinnest, longest and shortest: 1 and 1/16 in, 48 and 1/2 in (common practice, no source) */
const DIAMETERS = [fromInches(1), fromInches(1 / 16)] as const;
const LENGTHS = [fromInches(48), fromInches(1 / 2)] as const;

/** @returns "unread" where a value of them is written and cannot be read */
export function readFasteners(holder: Cursor): Fasteners | "unread" | undefined {
  if (!holder.has("fasten")) return undefined;
  const at = holder.at("fasten");
  const kind = at.at("kind").choice(["screws", "nails"]);
  const count = at.at("count").count(1, MOST_FASTENERS);
  const [diameter, length] = [at.at("diameter").size(...DIAMETERS), at.at("length").size(...LENGTHS)];
  const lost =
    kind === undefined ||
    count === undefined ||
    (at.has("diameter") && diameter === undefined) ||
    (at.has("length") && length === undefined);
  return lost ? "unread" : { path: at.path, kind, count, diameter, length };
}
