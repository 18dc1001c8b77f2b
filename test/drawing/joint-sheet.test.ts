/** The drawing of a joint: its three views, its sizes, and room for every word of it, for every kind there is. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Joint } from "../../server/core/joinery/joint.ts";
import { type Drawing, elementBox } from "../../server/drawing/drawing.ts";
import { drawJointSheet } from "../../server/drawing/joint-sheet.ts";
import { toSvg } from "../../server/drawing/svg.ts";
import { createFrameService, type Snapshot } from "../../server/language/frame-service.ts";
import { each, overlapping, textsOf } from "./look.ts";
import { parseXml } from "./xml.ts";

const FILES = ["samples", "test/frames"].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".frame.yaml"))
    .map((name) => `${folder}/${name}`),
);

const opened = new Map<string, Snapshot>();
function open(file: string): Snapshot {
  const found = opened.get(file) ?? createFrameService().open(file, 1, readFileSync(file, "utf8"));
  opened.set(file, found);
  return found;
}

const PAVILION = "samples/cider-press-pavilion.frame.yaml";
const SHELTER = "samples/kayak-shelter.frame.yaml";

function jointOf(file: string, id: string): Joint {
  const joint = open(file).evaluation?.model.joints.find((one) => one.id === id);
  if (!joint) throw new Error(`no joint ${id} in ${file}`);
  return joint;
}
const sheet = (file: string, id: string): Drawing => drawJointSheet(jointOf(file, id), open(file).say);
const words = (drawing: Drawing): string[] => textsOf(drawing).map(({ text }) => text);

/** Joints that differ by kind, or by the timbers and the end that meet. */
function different(file: string): Joint[] {
  const found = new Map<string, Joint>();
  for (const joint of open(file).evaluation?.model.joints ?? []) {
    const name = [joint.kind, joint.of.member, joint.into.member, joint.end].join(" ");
    if (!found.has(name)) found.set(name, joint);
  }
  return [...found.values()];
}

describe("every joint of the samples and frames", () => {
  test.each(FILES)("%s", (file) => {
    const { say } = open(file);
    for (const joint of different(file)) {
      const drawing = drawJointSheet(joint, say);
      const svg = toSvg(drawing, { standalone: true });
      expect(svg, joint.id).not.toMatch(/NaN|Infinity|undefined/);
      expect(() => parseXml(svg), joint.id).not.toThrow();
      expect(overlapping(drawing), joint.id).toEqual([]);
      const { left, right, bottom, top } = drawing.viewBox;
      for (const element of each(drawing.elements)) {
        const box = elementBox(element);
        const inside =
          !box || (box.left >= left && box.right <= right && box.bottom >= bottom && box.top <= top);
        expect(inside, `${joint.id}: ${JSON.stringify(element)}`).toBe(true);
      }
      // 320 px wide, an em is at least 8 px, and an image of it fits into a hover
      expect((320 * drawing.textSize) / (right - left), joint.id).toBeGreaterThan(8);
      expect(svg.length, joint.id).toBeLessThan(40_000);
      const views = drawing.elements.flatMap((one) =>
        one.classes?.includes("joint-view") ? [one.classes[1]] : [],
      );
      expect(views, joint.id).toEqual(["view-front", "view-side", "view-face"]);
    }
  });
});

describe("sizes on it", () => {
  test("a mortise and tenon: length, width, thickness, set-in, pegs, as the file says or the cut sheet works out", () => {
    // king-post 8 in wide; 2 in tenon set in 2 in, 6 1/2 in long; two pegs half of 8 in apart, 3 in from the face
    expect(words(sheet(PAVILION, "king-foot@1"))).toEqual([
      "king-foot@1 · Mortise and tenon",
      "king-post@1 into tie@1",
      "4",
      "8",
      "3",
      "6 1/2",
      "Reference face",
      "2",
      "2",
      "Side",
      "Cut into tie@1",
      "Sizes in inches. Dashed: hidden. Triangle: reference face.",
      "2 peg holes 3/4 in, drawn 3/32 in.",
    ]);
  });
  test("pegs that are bored through both timbers at once are not drawn, and screws say how long they are", () => {
    const stall = "test/frames/market-stall.frame.yaml";
    expect(words(sheet(stall, "plate-scarf@B.1")).at(-1)).toBe("4 peg holes 3/4 in, not drawn.");
    expect(words(sheet(stall, "braced@A1-B1.foot")).at(-1)).toBe("2 screws 5/16 in × 8 in.");
  });
  test("metric ones in millimetres", () => {
    const found = words(sheet(SHELTER, "girt-drop@A1-B1"));
    // length 60, depth 100, housing 15 as written; the tail is as wide as the girt, 125
    for (const size of ["60", "100", "15", "125"]) expect(found).toContain(size);
    expect(found).toContain("Sizes in mm. Dashed: hidden. Triangle: reference face.");
  });
});

describe("lines on it", () => {
  const lines = (drawing: Drawing, view: string, kind: string): number[][] =>
    [...each(drawing.elements.filter((one) => one.classes?.includes(view)))].flatMap((one) =>
      one.type === "line" && one.classes?.includes(kind)
        ? [
            [Math.abs(one.to[0] - one.from[0]), Math.abs(one.to[1] - one.from[1])].map(
              (x) => Math.round(x * 1000) / 1000,
            ),
          ]
        : [],
    );
  test("the tenon is dashed in the front view, 8 in wide and 6 1/2 in deep, its mortise 1/4 in deeper", () => {
    const hidden = lines(sheet(PAVILION, "king-foot@1"), "view-front", "hidden");
    expect(hidden).toContainEqual([0, 6.75]);
    expect(hidden.filter(([x, y]) => x === 8 && y === 0)).toHaveLength(2);
  });
  test("the mortise is seen on the face, 8 × 2 in", () => {
    const seen = lines(sheet(PAVILION, "king-foot@1"), "view-face", "seen");
    expect(seen.filter(([x, y]) => x === 8 && y === 0)).toHaveLength(2);
    expect(seen.filter(([x, y]) => x === 0 && y === 2)).toHaveLength(2);
  });
  test("a rafter's seat is seen in profile: no line of the rafter runs through its plate", () => {
    const drawing = sheet(PAVILION, "rafter-seat@A.1");
    expect(lines(drawing, "view-side", "hidden")).toEqual([]);
  });
  test("timbers that go on are broken off", () => {
    const breaks = [...each(sheet(PAVILION, "king-foot@1").elements)].filter((one) =>
      one.classes?.includes("break"),
    );
    // front: tie twice and king-post; side: king-post; face: tie twice
    expect(breaks).toHaveLength(6);
  });
});

describe("a joint without solids", () => {
  test("shows both timbers and lists its cut sizes", () => {
    const joint = jointOf(PAVILION, "king-foot@1");
    const bare: Joint = {
      ...joint,
      solids: { tenons: [], mortises: [], housings: [], wedges: [], notches: [], pegs: [] },
    };
    const drawing = drawJointSheet(bare, open(PAVILION).say);
    expect(words(drawing).join(" ")).toContain("tenon length: 6 1/2 in (as the file says)");
    expect(overlapping(drawing)).toEqual([]);
  });
});
