/** Whatever is typed, and wherever the mouse and the cursor are: an answer, never a fault. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { atCursor } from "../../server/language/at-cursor.ts";
import { diagnosticsOf } from "../../server/language/diagnostics.ts";
import { drawingOf } from "../../server/language/drawing.ts";
import { createFrameService } from "../../server/language/frame-service.ts";
import { hoverAt } from "../../server/language/hover.ts";
import { locatePath } from "../../server/language/locate.ts";

const WHOLE = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
const URI = "file:///robust.frame.yaml";

test("a frame with anything cut out or put in", () => {
  const service = createFrameService();
  // once there has been a drawing, there always is one
  let version = 0;
  service.open(URI, version, WHOLE);
  fc.assert(
    fc.property(
      fc.nat(WHOLE.length),
      fc.nat(60),
      fc.constantFrom(
        "",
        " ",
        "\n",
        ":",
        ",",
        "[",
        "{",
        '"',
        "#",
        "-",
        "8x",
        "1e9 ft",
        "A1",
        "&a",
        "*a",
        "\t",
        "😀",
      ),
      fc.array(fc.nat(WHOLE.length), { minLength: 4, maxLength: 12 }),
      (at, length, typed, offsets) => {
        const text = WHOLE.slice(0, at) + typed + WHOLE.slice(at + length);
        version++;
        const snapshot = service.open(URI, version, text);
        expect(snapshot.faults).toEqual([]);
        const lines = text.split("\n");
        for (const { range } of diagnosticsOf(snapshot)) {
          expect(range.end.line).toBe(range.start.line);
          expect(range.end.character).toBeGreaterThanOrEqual(range.start.character);
          expect(range.end.character).toBeLessThanOrEqual(lines[range.end.line]?.length ?? -1);
        }
        for (const offset of [at, ...offsets]) {
          const position = snapshot.document.positionAt(offset);
          const hover = hoverAt(snapshot, position);
          expect(hover?.contents.value ?? "").not.toMatch(/NaN|undefined|\[object|Infinity/);
          for (const id of atCursor(snapshot, position).ids) expect(id).not.toBe("");
        }
        for (const layer of ["none", "axial", "shear", "moment", "deflected"]) {
          const { svg } = drawingOf(service, { uri: URI, view: "front", layer, case: "worst" });
          expect(svg).toContain("<svg");
          expect(svg).not.toMatch(/NaN|undefined|Infinity/);
        }
        locatePath(snapshot, "/members/post");
      },
    ),
    { numRuns: 120 },
  );
}, 60_000);
