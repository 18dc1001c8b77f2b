/** What ties a timber to its pier, under the key `anchor`. */
import type {
  AnchorBoltSpec,
  AnchorCapacity,
  AnchorScrewSpec,
  AnchorSpec,
  StrapSpec,
} from "../core/frame/anchor.ts";
import type { Cursor } from "./cursor.ts";

/** More than a post's foot has room for; also the schema's limits. */
const MOST_BOLTS = 8;
const MOST_SCREWS = 24;

/** @returns undefined where nothing says what it is */
export function readAnchor(at: Cursor): AnchorSpec | undefined {
  const kind = at.at("kind").choice(["embedded-strap", "post-base", "dowel"]);
  if (kind === undefined) return undefined;
  const runs = at.at("runs").choice(["along-wall", "along-bent"]);
  const plate = at.at("plate").size();
  const [strap, bolts, screws, capacity] = [readStrap(at), readBolts(at), readScrews(at), readCapacity(at)];
  return {
    path: at.path,
    kind,
    standOff: at.at("stand-off").gap(),
    ...(runs && { runs }),
    ...(strap && { strap }),
    ...(bolts && { bolts }),
    ...(screws && { screws }),
    ...(plate !== undefined && { plate }),
    ...(capacity && { capacity }),
  };
}

function readStrap(holder: Cursor): StrapSpec | "unread" | undefined {
  if (!holder.has("strap")) return undefined;
  const at = holder.at("strap");
  const place = at.has("place") ? at.at("place").choice(["both-faces", "one-face", "in-kerf"]) : "both-faces";
  const [thickness, width, height] = [
    at.at("thickness").size(),
    at.at("width").size(),
    at.at("height").size(),
  ];
  const letIn = at.at("let-in").gap();
  const lost =
    place === undefined ||
    lostOf(at, { thickness, width, height, "let-in": letIn }) ||
    thickness === undefined ||
    width === undefined;
  return lost ? "unread" : { path: at.path, place, thickness, width, height, letIn };
}

/** Whether one of these values is written and cannot be read. */
function lostOf(at: Cursor, values: Readonly<Record<string, unknown>>): boolean {
  return Object.entries(values).some(([key, value]) => at.has(key) && value === undefined);
}

function readBolts(holder: Cursor): AnchorBoltSpec | "unread" | undefined {
  return holder.has("bolts") ? readRow(holder.at("bolts"), MOST_BOLTS) : undefined;
}

function readRow(at: Cursor, most: number): AnchorBoltSpec | "unread" {
  const count = at.at("count").count(1, most);
  const [diameter, up, spacing] = [at.at("diameter").size(), at.at("up").size(), at.at("spacing").size()];
  const lost = count === undefined || diameter === undefined || lostOf(at, { up, spacing });
  return lost ? "unread" : { path: at.path, count, diameter, up, spacing };
}

function readScrews(holder: Cursor): AnchorScrewSpec | "unread" | undefined {
  if (!holder.has("screws")) return undefined;
  const at = holder.at("screws");
  const row = readRow(at, MOST_SCREWS);
  const length = at.at("length").size();
  return row === "unread" || length === undefined ? "unread" : { ...row, length };
}

function readCapacity(holder: Cursor): AnchorCapacity | "unread" | undefined {
  if (!holder.has("capacity")) return undefined;
  const at = holder.at("capacity");
  const [down, uplift, sideways] = [
    at.at("down").amount("force"),
    at.at("uplift").amount("force"),
    at.at("sideways").amount("force"),
  ];
  const because = at.at("because").text()?.trim();
  const lost = because === undefined || because === "" || lostOf(at, { down, uplift, sideways });
  return lost ? "unread" : { path: at.path, down, uplift, sideways, because };
}
