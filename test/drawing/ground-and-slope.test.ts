import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { makeSay } from "../../server/core/checks/speak.ts";
import { buildModel } from "../../server/core/model/build.ts";
import { readFrame } from "../../server/document/read.ts";
import { drawElevation } from "../../server/drawing/elevation.ts";
import { toSvg } from "../../server/drawing/svg.ts";

function drawn(sample: string, view: string, change: (text: string) => string = (text) => text): string {
  const text = readFileSync(new URL(`../../samples/${sample}.frame.yaml`, import.meta.url), "utf8");
  const { frame } = readFrame(change(text));
  return toSvg(drawElevation(buildModel(frame), view, makeSay(frame.units)), { standalone: true });
}

describe("the ground", () => {
  it("lies level at the datum, and says so, where the file gives no heights", () => {
    expect(drawn("garden-arch", "front")).toContain("ground: level at the datum");
  });

  it("is left out where not even a pier reckons from it", () => {
    const svg = drawn("garden-arch", "front", (text) => text.replace(/^piers:[\s\S]*$/m, ""));
    expect(svg).not.toContain("ground: level");
  });
});

describe("the slope and the top", () => {
  it("reads in degrees and per cent in a file of millimetres, as a triangle of 12 in one of inches", () => {
    expect(drawn("kayak-shelter", "1")).toMatch(/\d+(?:\.\d+)?° · \d+ %/);
    expect(drawn("cider-press-pavilion", "1")).not.toMatch(/° · /);
  });

  it("calls the top by the ridge in a wall's view as in the side view", () => {
    for (const view of ["side", "A"]) expect(drawn("cider-press-pavilion", view), view).toMatch(/>ridge\b/);
  });
});
