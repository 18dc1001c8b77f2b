/** The screws that would hold a rafter's end, in words and as a fix. */
import type { SizedFasteners } from "../../roof/sized-fasteners.ts";
import type { Fix } from "../check.ts";
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

/** Writes them into the file. @param where the map that gets a `fasten`, or the value that is there */
export function fastenFix(
  screws: SizedFasteners | undefined,
  say: Say,
  where: { readonly add: string } | { readonly replace: string },
): Fix[] {
  if (!screws) return [];
  const found = words(screws, say);
  const text = `{kind: screws, count: ${found.count}, diameter: ${found.diameter}, length: ${found.length}}`;
  return [
    {
      title: say.text("Fasten each with {count} screws of {diameter}, {length} long", found),
      edits: [
        "add" in where
          ? { kind: "add", path: where.add, key: "fasten", text }
          : { kind: "replace", path: where.replace, text },
      ],
    },
  ];
}
