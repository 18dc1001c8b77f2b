import { describe, expect, test } from "vitest";
import { fixed, gate, idsOf } from "./gate.ts";

describe("missing-separator", () => {
  test("its fix writes the space", () => {
    const text = gate({ site: "site: {frost-depth: 30 in, soil: sand, ground: {1: 0, 2:-4 in}}\n" });
    expect(fixed(text, "missing-separator")).toContain("{1: 0, 2: -4 in}");
  });

  test("its fix writes the brackets", () => {
    const members = `
      members:
        post: {kind: post, section: 8x8, at: A1, A2, from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `;
    const after = fixed(gate({ members }), "missing-separator");
    expect(after).toContain("at: [A1, A2], from");
    expect(idsOf(after)).toEqual([]);
  });
});
