/** The screws that would hold a rafter's end or a purlin, in words and as a fix; and how hard what is there is pulled. */
import type { Fastening } from "../../roof/fastening.ts";
import type { UpliftHold } from "../../roof/seat-fasteners.ts";
import type { SizedFasteners } from "../../roof/sized-fasteners.ts";
import type { Fix } from "../check.ts";
import { fineLength, perLength, times } from "../formula-words.ts";
import type { Say } from "../say.ts";

const words = ({ count, diameter, length }: SizedFasteners, say: Say) => ({
  count,
  diameter: say.length(diameter),
  length: say.length(length),
});

/** @returns undefined without screws that hold */
export function screwsWords(screws: SizedFasteners | undefined, say: Say): string | undefined {
  return screws && say.text("{count} screws of {diameter}, {length} long, hold it.", words(screws, say));
}

/**
 * Writes them into the file.
 * @param whole what is written where the file has no map yet that could take them: a key and the start of its map
 */
export function fastenFix(
  screws: SizedFasteners | undefined,
  say: Say,
  { written, holder }: Fastening,
  whole?: { readonly path: string; readonly key: string; readonly start: string },
): Fix[] {
  if (!screws || written === "unread") return [];
  const found = words(screws, say);
  const text = `{kind: screws, count: ${found.count}, diameter: ${found.diameter}, length: ${found.length}}`;
  const edits: Fix["edits"] = written
    ? [{ kind: "replace", path: written.path, text }]
    : holder !== undefined
      ? [{ kind: "add", path: holder, key: "fasten", text }]
      : whole
        ? [{ kind: "add", path: whole.path, key: whole.key, text: `{${whole.start}, fasten: ${text}}` }]
        : [];
  if (edits.length === 0) return [];
  return [{ title: say.text("Fasten each with {count} screws of {diameter}, {length} long", found), edits }];
}

/** @returns `109 lb > 2 × 210 lb/in × 0.4 in × C_D 1.6 = 90 lb` */
export function upliftFormula(force: number, hold: UpliftHold | undefined, say: Say): string {
  return say.text("{force} > {limit}", {
    force: say.force(force),
    limit: hold
      ? `${hold.fasteners.count} × ${perLength(hold.perInch, say)} × ${fineLength(hold.held, say)}${times(hold.uplift.factors, say)} = ${say.force(hold.uplift.value)}`
      : say.force(0),
  });
}
