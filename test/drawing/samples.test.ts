/** Every sample in every view: what a user sees first. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { makeSay } from "../../server/core/checks/speak.ts";
import { buildModel } from "../../server/core/model/build.ts";
import { readFrame } from "../../server/document/read.ts";
import { elementBox } from "../../server/drawing/drawing.ts";
import { drawElevation } from "../../server/drawing/elevation.ts";
import { toSvg } from "../../server/drawing/svg.ts";
import { viewsOf } from "../../server/drawing/views.ts";
import { overlapping } from "./look.ts";
import { parseXml } from "./xml.ts";

const folder = new URL("../../samples/", import.meta.url);
const samples = readdirSync(folder).filter((name) => name.endsWith(".frame.yaml"));

test("there are samples to draw", () => {
  expect(samples.length).toBeGreaterThan(1);
});

describe.each(samples)("%s", (name) => {
  const { frame } = readFrame(readFileSync(new URL(name, folder), "utf8"));
  const model = buildModel(frame);
  const say = makeSay(frame.units);
  const views = viewsOf(model, say).map((view) => view.id);

  test.each(views)("view %s: sound, with its texts apart, and nothing cut off", (view) => {
    const drawing = drawElevation(model, view, say);
    const svg = toSvg(drawing, { standalone: true });
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    expect(() => parseXml(svg)).not.toThrow();
    expect(overlapping(drawing)).toEqual([]);
    for (const element of drawing.elements) {
      const box = elementBox(element);
      if (box === undefined) continue;
      expect(box.left).toBeGreaterThanOrEqual(drawing.viewBox.left);
      expect(box.right).toBeLessThanOrEqual(drawing.viewBox.right);
      expect(box.bottom).toBeGreaterThanOrEqual(drawing.viewBox.bottom);
      expect(box.top).toBeLessThanOrEqual(drawing.viewBox.top);
    }
  });

  test.each(["front", "side"])(
    "view %s shows every stick and every pier, each anchor on its pier",
    (view) => {
      const { elements } = drawElevation(model, view, say);
      const shown = elements.map((element) => element.id);
      for (const { id } of [...model.timbers, ...model.piers])
        expect(shown.filter((other) => other === id)).toEqual([id]);
      for (const pier of model.piers) {
        const group = elements.find((element) => element.id === pier.id);
        const parts = group?.type === "group" ? group.children : [];
        const anchor = parts.find((part) => part.classes?.includes("anchor"));
        const box = anchor && elementBox(anchor);
        if (box === undefined) continue;
        const middle = pier.top[view === "side" ? 0 : 1];
        expect(box.left).toBeGreaterThan(middle - pier.diameter / 2);
        expect(box.right).toBeLessThan(middle + pier.diameter / 2);
        expect(box.bottom).toBeCloseTo(pier.top[2], 9);
      }
    },
  );
});
