/** What each view of a frame shows, in which order, and that its drawing is sound. */
import { describe, expect, test } from "vitest";
import { makeSay } from "../../server/core/checks/speak.ts";
import { buildModel } from "../../server/core/model/build.ts";
import { textBox } from "../../server/drawing/drawing.ts";
import { drawElevation } from "../../server/drawing/elevation.ts";
import { toSvg } from "../../server/drawing/svg.ts";
import { viewsOf } from "../../server/drawing/views.ts";
import { emptyFrame, pavilionFrame } from "./hand-model.ts";
import { each, overlapping, textsOf } from "./look.ts";
import { hasClass, parseXml, walk, withId } from "./xml.ts";

const say = makeSay("inch");
const pavilion = buildModel(pavilionFrame());
const views = viewsOf(pavilion).map((view) => view.id);

test("a frame has a front, a side, and a view of each bent and each wall, in the order of the grid", () => {
  expect(viewsOf(pavilion)).toEqual([
    { id: "front", title: "Front, seen from bent 3 toward bent 1" },
    { id: "side", title: "Side, seen from outside wall A" },
    { id: "1", title: "Bent 1, seen from the side of bent 3" },
    { id: "2", title: "Bent 2, seen from the side of bent 3" },
    { id: "3", title: "Bent 3, seen from outside" },
    { id: "A", title: "Wall A, seen from outside" },
    { id: "B", title: "Wall B, seen from the side of wall A" },
  ]);
  const nothing = emptyFrame({ grid: { path: "", walls: [], bents: [], levels: [] } });
  expect(viewsOf(buildModel(nothing)).map((view) => view.id)).toEqual(["front", "side"]);
});

test("a view that the frame does not have gives the front", () => {
  expect(drawElevation(pavilion, "Z", say)).toEqual(drawElevation(pavilion, "front", say));
});

describe.each(views)("the pavilion, view %s", (view) => {
  const drawing = drawElevation(pavilion, view, say);
  const svg = toSvg(drawing, { standalone: false });
  const root = parseXml(svg);

  test("is well-formed, without a number that is none", () => {
    expect(svg).not.toMatch(/NaN|Infinity|undefined|e[+-]\d/);
    expect(svg).not.toMatch(/\d\.\d{4,}/);
    expect(() => parseXml(toSvg(drawing, { standalone: true }))).not.toThrow();
  });

  test("shows nothing twice, and everything with its path and title", () => {
    const carrying = [...walk(root)].filter((node) => node.attributes.has("data-id"));
    const ids = carrying.map((node) => node.attributes.get("data-id"));
    expect(new Set(ids).size).toBe(ids.length);
    for (const node of carrying) {
      expect(node.children[0]?.name).toBe("title");
      expect(node.attributes.get("aria-label")).toBe(node.children[0]?.text);
    }
    for (const timber of carrying.filter((node) => hasClass(node, "timber"))) {
      const model = pavilion.byId.get(timber.attributes.get("data-id")!)!;
      expect(timber.attributes.get("data-path")).toBe(model.path);
    }
  });

  test("no text lies over another, and all of them inside the sheet", () => {
    expect(overlapping(drawing)).toEqual([]);
    for (const text of textsOf(drawing)) {
      const box = textBox(text);
      expect(box.left).toBeGreaterThanOrEqual(drawing.viewBox.left);
      expect(box.right).toBeLessThanOrEqual(drawing.viewBox.right);
      expect(box.bottom).toBeGreaterThanOrEqual(drawing.viewBox.bottom);
      expect(box.top).toBeLessThanOrEqual(drawing.viewBox.top);
    }
  });

  test("is the same every time", () => {
    expect(toSvg(drawElevation(buildModel(pavilionFrame()), view, say), { standalone: false })).toBe(svg);
  });
});

test.each(["front", "side"])("view %s shows every timber and every joint once", (view) => {
  const root = parseXml(toSvg(drawElevation(pavilion, view, say), { standalone: false }));
  for (const timber of pavilion.timbers) expect(withId(root, timber.id), timber.id).toHaveLength(1);
  for (const joint of pavilion.joints) expect(withId(root, joint.id), joint.id).toHaveLength(1);
  for (const pier of pavilion.piers) expect(withId(root, pier.id), pier.id).toHaveLength(1);
});

test("a bent shows its own timbers, one rafter of each slope, and plates and ridge cut", () => {
  const drawing = drawElevation(pavilion, "2", say);
  const timbers = drawing.elements.filter((element) => element.classes?.includes("timber"));
  const cut = timbers.filter((element) => element.classes?.includes("section")).map((element) => element.id);
  expect(cut.sort()).toEqual(["plate@A", "plate@B", "ridge"]);
  const whole = timbers.map((element) => element.id).filter((id) => !cut.includes(id));
  expect(whole.filter((id) => !id?.startsWith("rafter")).sort()).toEqual(
    ["king-post@2", "post@A2", "post@B2", "tie-knee@A2-B2", "tie-knee@B2-A2", "tie@2"].sort(),
  );
  expect(whole.filter((id) => id?.startsWith("rafter")).sort()).toEqual(["rafter@A.5", "rafter@B.5"]);
  const hatching = [...each(drawing.elements)].filter((element) => element.classes?.includes("hatch"));
  expect(hatching.length).toBeGreaterThan(6);
});

test("a wall shows the timbers of that wall only", () => {
  const drawing = drawElevation(pavilion, "A", say);
  const ids = drawing.elements
    .filter((element) => element.classes?.includes("timber"))
    .map((element) => element.id);
  expect(ids).toContain("plate@A");
  expect(ids).toContain("knee@A2-A3");
  expect(ids.filter((id) => /^(post|plate|knee)@B/.test(id ?? ""))).toEqual([]);
});
