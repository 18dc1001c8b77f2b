/** Dimensions, levels and grid lines round an elevation. */
import { describe, expect, test } from "vitest";
import { makeSay } from "../../server/core/checks/speak.ts";
import { buildModel } from "../../server/core/model/build.ts";
import { drawElevation } from "../../server/drawing/elevation.ts";
import { toSvg } from "../../server/drawing/svg.ts";
import { viewsOf } from "../../server/drawing/views.ts";
import { emptyFrame, gridLines, inch, member, pavilionFrame, place, ref, section } from "./hand-model.ts";
import { overlapping, textsOf } from "./look.ts";
import { parseXml, withId } from "./xml.ts";

const say = makeSay("inch");
const pavilion = buildModel(pavilionFrame());

describe("dimensions", () => {
  const words = (view: string, model = pavilion, speak = say) =>
    textsOf(drawElevation(model, view, speak)).map((text) => text.text);
  test("the front gives wall spacing, width over all, levels, heights and pitch", () => {
    expect(words("front")).toEqual(
      expect.arrayContaining([
        "13'-0\"",
        "16'-0\"",
        "eave 9'-4\"",
        "pier-top 8 in",
        "18 in",
        "7'-2\"",
        "12",
        "7",
      ]),
    );
  });
  test("the side gives bent spacing and the length from the first bent to the last", () => {
    expect(words("side").filter((text) => text === "9'-0\"")).toHaveLength(2);
    expect(words("side")).toContain("18'-0\"");
  });
  test("in a metric file they are millimetres", () => {
    const metric = words("front", pavilion, makeSay("mm"));
    expect(metric).toContain("3962 mm");
    expect(metric.some((text) => /'|\bin\b/.test(text))).toBe(false);
  });
  test("grid lines and levels lead to their lines in the file", () => {
    const root = parseXml(toSvg(drawElevation(pavilion, "front", say), { standalone: false }));
    expect(withId(root, "B")[0]!.attributes.get("data-path")).toBe("/grid/walls/B");
    expect(withId(root, "eave")[0]!.attributes.get("data-path")).toBe("/grid/levels/eave");
    expect(withId(root, "ground")[0]!.attributes.get("data-path")).toBe("/site/ground");
  });
  test("crowded lines and levels keep their texts apart", () => {
    const numbers = Array.from({ length: 24 }, (_, i) => i);
    const crowded = buildModel(
      emptyFrame({
        grid: {
          path: "/grid",
          walls: gridLines("walls", { A: 0, AA: 2, BBBB: 3, C: 120 }),
          bents: gridLines(
            "bents",
            Object.fromEntries(numbers.map((n) => [String(n + 1), n * (n % 3 === 0 ? 30 : 31)])),
          ),
          levels: [...numbers, 96].map((n) => ({ id: `level-${n}`, path: "", height: inch(n) })),
        },
        members: [
          member("post", "post", {
            section: section(8, 8),
            at: [place("A1"), place("C9")],
            from: ref("level-0"),
            to: ref("level-96"),
          }),
        ],
      }),
    );
    expect(crowded.timbers).toHaveLength(2);
    for (const { id } of viewsOf(crowded))
      expect(overlapping(drawElevation(crowded, id, say)), id).toEqual([]);
    // numbers may give way, names may not
    expect(words("front", crowded)).toEqual(
      expect.arrayContaining(["A", "AA", "BBBB", "C", ...numbers.map((n) => `level-${n} ${say.length(n)}`)]),
    );
    expect(words("side", crowded)).toEqual(expect.arrayContaining(numbers.map((n) => String(n + 1))));
  });
});
