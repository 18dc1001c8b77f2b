import { describe, expect, it } from "vitest";
import { flatUseFactors, sizeFactors, wetServiceFactors } from "../../../server/core/members/factors.ts";

const lumber = (breadth: number, depth: number, group = "douglas-fir-larch") =>
  ({ sizeClass: "dimension-lumber", group, breadth, depth }) as const;
const timber = (breadth: number, depth: number, group = "douglas-fir-larch") =>
  ({ sizeClass: "beams-and-stringers", group, breadth, depth }) as const;

describe("size factor of dimension lumber goes by the next nominal width above (published, Table 4A)", () => {
  it.each([
    [1.5, 3.5, 1.5, 1.5, 1.15],
    [2, 4.25, 1.4, 1.4, 1.1],
    [2, 6, 1.3, 1.3, 1.1],
    [3, 6.25, 1.2, 1.2, 1.05],
    [3, 7, 1.2, 1.2, 1.05],
    [4, 8, 1.3, 1.2, 1.05],
    [3.5, 9.25, 1.2, 1.1, 1],
    [1.5, 11.25, 1, 1, 1],
    [2, 12.5, 0.9, 0.9, 0.9],
    [4, 14, 1, 0.9, 0.9],
  ])("%s x %s", (breadth, depth, Fb, Ft, Fc) => {
    const found = sizeFactors(lumber(breadth, depth));
    expect([found.Fb.value, found.Ft.value, found.Fc.value]).toEqual([Fb, Ft, Fc]);
    // the wide face counts, however it lies
    expect(sizeFactors(lumber(depth, breadth)).Fb.value).toBe(Fb);
  });
});

describe("size factor elsewhere", () => {
  it("of timbers sets in over 12 in of depth in the direction of bending (published, Table 4D)", () => {
    expect(sizeFactors(timber(8, 12.5)).Fb.value).toBeCloseTo((12 / 12.5) ** (1 / 9), 12);
    expect(sizeFactors(timber(8, 12)).Fb.value).toBe(1);
    expect(sizeFactors(timber(14, 8)).Fb.value).toBe(1);
    expect(sizeFactors(timber(8, 16)).Ft.value).toBe(1);
  });
  it("of Southern Pine lumber: 0.9 over 12 in wide, 1.1 on F_b of 4 in thick and 8 in wide (memory, Table 4B)", () => {
    const of = (b: number, d: number) => {
      const found = sizeFactors(lumber(b, d, "southern-pine"));
      return [found.Fb.value, found.Ft.value, found.Fc.value];
    };
    expect(of(1.5, 11.25)).toEqual([1, 1, 1]);
    expect(of(2, 14)).toEqual([0.9, 0.9, 0.9]);
    expect(of(3.5, 7.25)).toEqual([1.1, 1, 1]);
    expect(of(4, 6)).toEqual([1, 1, 1]);
    expect(of(4, 14)[0]).toBeCloseTo(0.99, 12);
  });
});

describe("flat use", () => {
  it("of dimension lumber (published for nominal 6 in, else memory; Table 4A)", () => {
    expect(flatUseFactors(lumber(5.5, 1.5), "no-2")?.Fb).toMatchObject({ value: 1.15, status: "published" });
    expect(flatUseFactors(lumber(9.25, 3.5), "no-2")?.Fb.value).toBe(1.1);
    expect(flatUseFactors(lumber(3.5, 3.5), "no-2")).toBeUndefined();
    expect(flatUseFactors(lumber(1.5, 5.5), "no-2")).toBeUndefined();
  });
  it("of beams and stringers by grade (memory, Table 4D)", () => {
    const of = (grade: "select-structural" | "no-1" | "no-2") => {
      const found = flatUseFactors(timber(12, 8), grade);
      return [found?.Fb.value, found?.E.value];
    };
    expect([of("select-structural"), of("no-1"), of("no-2")]).toEqual([
      [0.86, 1],
      [0.74, 0.9],
      [1, 1],
    ]);
  });
});

describe("wet service", () => {
  it("spares dimension lumber up to 1150 psi in bending and 750 psi along the grain (published, Table 4A)", () => {
    const at = (Fb: number, Fc: number) => wetServiceFactors(lumber(2, 8), Fb, Fc);
    expect([at(1150, 750).Fb.value, at(1150, 750).Fc.value]).toEqual([1, 1]);
    expect([at(1151, 751).Fb.value, at(1151, 751).Fc.value]).toEqual([0.85, 0.8]);
  });
  it("is in the values of Southern Pine timbers (memory, Table 4D)", () => {
    const found = wetServiceFactors(timber(8, 12, "southern-pine"), 1350, 825);
    expect(Object.values(found).every((f) => f.value === 1)).toBe(true);
  });
});
