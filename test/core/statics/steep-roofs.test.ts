/**
 * Steep roofs: a rafter stays a beam at any pitch. The frame and its checks are the same at 11:12, 12:12 and 14:12, only the
 * lengths differ, so the checks that one pitch gets are asked of the others (derived).
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { MemberKind } from "../../../server/core/frame/frame.ts";
import { isDiagonal, isUpright } from "../../../server/core/model/upright.ts";
import type { MemberUse } from "../../../server/core/statics/frame-results.ts";
import { type Checked, checked, use } from "./members.ts";

const FRAME = readFileSync(new URL("../../frames/purlins-on-principals.frame.yaml", import.meta.url), "utf8");
const STEEP = [12, 14] as const;

const at = new Map<number, Checked>();
/** The frame at so many inches of rise to 12. */
function pitched(rise: number): Checked {
  const known = at.get(rise) ?? checked(FRAME.replace("pitch: 6:12", `pitch: ${rise}:12`));
  at.set(rise, known);
  return known;
}

const kindsOf = (c: Checked, kind: MemberKind): string[] =>
  [...c.members.values()]
    .filter((r) => r.timber.kind === kind)
    .flatMap((r) => r.uses.map((u) => `${r.timber.id} ${u.what}`))
    .sort();

describe.each(STEEP)("%d:12", (rise) => {
  test("principals have every check that they have at 11:12, deflection and bearing too [derived]", () => {
    expect(kindsOf(pitched(11), "rafter")).toContain("principal@A1 live-deflection");
    expect(kindsOf(pitched(rise), "rafter")).toEqual(kindsOf(pitched(11), "rafter"));
  });

  test("purlins are checked where they lie on the principals [derived]", () => {
    for (const purlin of ["purlin@A.2", "purlin@B.3"])
      expect(use(pitched(rise), purlin, "bearing").place).toMatch(/^purlin@\w\.\d on principal@/);
  });

  test("a principal buckles in its plane over its level run ÷ cos θ, from seat to king-post [derived]", () => {
    const factorOf = (u: MemberUse): number | undefined => u.factors.find((f) => f.symbol === "K_e")?.value;
    const slenderness = (c: Checked) => use(c, "principal@A2", "slenderness");
    expect(factorOf(slenderness(pitched(rise)))).toBe(1);
    // l_e/d of the 10 in depth: the run is the same at every pitch, less what the seat moves (under 1 %)
    const secant = (r: number) => Math.hypot(r, 12) / 12;
    const grown =
      (slenderness(pitched(rise)).value / slenderness(pitched(11)).value / secant(rise)) * secant(11);
    expect(grown).toBeGreaterThan(0.99);
    expect(grown).toBeLessThan(1.01);
  });
});

test("the kind says what stands, not the slope alone [derived]", () => {
  const sloped = (kind: MemberKind, degrees: number) => ({
    kind,
    axis: [Math.cos((degrees * Math.PI) / 180), 0, Math.sin((degrees * Math.PI) / 180)] as const,
  });
  expect(isUpright(sloped("rafter", 49))).toBe(false);
  expect(isUpright(sloped("rafter", 60))).toBe(false);
  expect(isUpright(sloped("purlin", 60))).toBe(false);
  expect(isUpright(sloped("brace", 60))).toBe(false);
  expect(isUpright(sloped("beam", 60))).toBe(false);
  expect(isUpright(sloped("beam", 90))).toBe(true);
  expect(isUpright(sloped("post", 60))).toBe(true);
  expect(isUpright(sloped("post", 0))).toBe(false);
  expect(isUpright(sloped("king-post", 90))).toBe(true);
  expect(isUpright(sloped("strut", 90))).toBe(true);
  expect(isUpright(sloped("strut", 60))).toBe(false);
  expect(isDiagonal(sloped("strut", 60))).toBe(true);
});
