import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { createFrameService, type LocatedFinding } from "../../server/language/frame-service.ts";

const SAMPLES = fileURLToPath(new URL("../../samples/", import.meta.url));
const FILES = readdirSync(SAMPLES).filter((name) => name.endsWith(".frame.yaml"));

const open = (text: string): readonly LocatedFinding[] => createFrameService().open("a", 0, text).findings;
const key = ({ finding, range }: LocatedFinding): string =>
  `${finding.check} ${range.start.line}:${range.start.character}`;

/**
 * What may stand on another line than the one that is cut. Each is no guess about the lost part, but a fact about what
 * is left.
 */
const ELSEWHERE: ReadonlySet<string> = new Set([
  // a fault that the file had before, on a line that is still read: the cut line only stood between it and its heading
  "missing-separator",
]);

/** One column of three, and each line begins at another of them: all columns are met over the lines of a file. */
const STEP = 3;

describe("a line cut anywhere", () => {
  for (const file of FILES)
    it(`brings at most two findings, on itself, in ${file}`, { timeout: 600_000 }, () => {
      const text = readFileSync(SAMPLES + file, "utf8");
      const rows = text.split("\n");
      const before = new Set(open(text).map(key));
      let broken = 0;
      for (const [row, whole] of rows.entries()) {
        const first = whole.search(/\S/);
        if (first < 0 || whole[first] === "#") continue;
        for (let end = first + 1 + (row % STEP); end < whole.length; end += STEP) {
          const line = whole.slice(0, end);
          const all = open([...rows.slice(0, row), line, ...rows.slice(row + 1)].join("\n"));
          const fresh = all.filter((each) => !before.has(key(each)));
          const here = all.filter((each) => each.range.start.line === row);
          // a line that reads well, only shorter, says something else: what follows from that is the user's to know
          if (!here.some(({ finding }) => finding.level === "error" && finding.places.length === 0)) continue;
          broken++;
          const words = fresh.map(({ finding, range }) => `${range.start.line + 1} ${finding.message}`);
          expect(words.length, `${row + 1}: ${line}\n${words.join("\n")}`).toBeLessThanOrEqual(2);
          const away = fresh.filter(
            (each) => each.range.start.line !== row && !ELSEWHERE.has(each.finding.check),
          );
          expect(
            away.map(({ finding }) => finding.message),
            `${row + 1}: ${line}`,
          ).toEqual([]);
        }
      }
      expect(broken).toBeGreaterThan(rows.length);
    });
});
