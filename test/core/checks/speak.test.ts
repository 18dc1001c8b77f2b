import { describe, expect, test } from "vitest";
import { makeSay } from "../../../server/core/checks/speak.ts";

const inch = makeSay("inch");
const mm = makeSay("mm");

describe("numbers in the units of the file", () => {
  test.each([
    [() => inch.length(102.5), `8'-6 1/2"`],
    [() => inch.length(36), "36 in"],
    [() => inch.length(1.5), "1 1/2 in"],
    [() => inch.length(1.53), "1 1/2 in"],
    [() => inch.length(3 / 32), "3/32 in"],
    [() => inch.lengthBoth(3 / 32), "3/32 in (2.4 mm)"],
    [() => inch.length(59.99), "60 in"],
    [() => inch.length(-4), "-4 in"],
    [() => mm.length(102.5), "2604 mm"],
    [() => inch.lengthBoth(102.5), `8'-6 1/2" (2604 mm)`],
    [() => inch.lengthBoth(1.5), "1 1/2 in (38 mm)"],
    [() => mm.lengthBoth(102.5), `2604 mm (8'-6 1/2")`],
    [() => inch.pressure(45), "45 psf"],
    [() => mm.pressure(45), "2.15 kPa"],
    [() => inch.stress(875), "875 psi"],
    [() => mm.stress(875), "6.03 MPa"],
    [() => inch.force(1280), "1,280 lb"],
    [() => mm.force(1280), "5.69 kN"],
    // 1 lb·ft = 1.3558179483314004 N·m (NIST SP 811 (2008), appendix B; memory)
    [() => inch.moment(16_000), "1,333 lb·ft"],
    [() => inch.moment(-15), "-1.3 lb·ft"],
    [() => inch.moment(1), "0.1 lb·ft"],
    [() => inch.moment(Number.NaN), "? lb·ft"],
    [() => mm.moment(12_000), "1.36 kN·m"],
    [() => mm.moment(12), "1.36 N·m"],
    [() => mm.moment(-885), "-100 N·m"],
    [() => inch.weight(195.4), "195 lb"],
    [() => mm.weight(195.4), "89 kg"],
    [() => inch.weight(3.26), "3.3 lb"],
    [() => inch.angle(30.256), "30.3°"],
    [() => inch.percent(0.834), "83 %"],
    [() => inch.number(1234.5), "1,235"],
    [() => inch.number(12.345), "12.3"],
    [() => inch.number(0.36, 2), "0.36"],
    [() => inch.number(-0.001, 1), "0"],
    [() => inch.number(Number.NaN), "?"],
    [() => inch.length(Number.POSITIVE_INFINITY), "?"],
  ] as const)("%s", (said, expected) => expect(said()).toBe(expected));

  test("knows its system", () => expect([inch.metric, mm.metric]).toEqual([false, true]));
});

describe("lists and sentences", () => {
  test.each([
    [[], ""],
    [["a"], "a"],
    [["a", "b"], "a and b"],
    [["a", "b", "c"], "a, b and c"],
  ])("%j", (items, expected) => expect(inch.list(items)).toBe(expected));

  test("fills holes once, and leaves the ones that nothing is known for", () => {
    const filled = inch.text("{a} of {b}, {missing}, {a}", { a: "{b}", b: 2 });
    expect(filled).toBe("{b} of 2, {missing}, {b}");
  });

  test("a hole is never filled from what every object has", () => {
    expect(inch.text("{constructor} {toString}")).toBe("{constructor} {toString}");
  });

  test("the pattern is what is translated", () => {
    const german = makeSay("mm", (pattern) =>
      pattern === "The tenon is {thick} thick." ? "Der Zapfen ist {thick} dick." : pattern,
    );
    expect(german.text("The tenon is {thick} thick.", { thick: "38 mm" })).toBe("Der Zapfen ist 38 mm dick.");
  });
});

test("a long piece of the file is cut where it is repeated, a long list of names is not", () => {
  const long = "9".repeat(10_000);
  const said = inch.text("“{text}” cannot be read; {stick} is lost.", {
    text: `${long} in`,
    stick: `${long}@A1`,
  });
  expect(said).toMatch(/^“9+…9+ in” cannot be read; 9+…9+@A1 is lost\.$/);
  expect(said.length).toBeLessThan(170);
  const sentence = inch.text("“{text}”", { text: "word ".repeat(50) });
  expect(sentence.length).toBeLessThanOrEqual(62);
  const names = Array.from({ length: 20 }, (_, i) => `post@A${i}`).join(", ");
  expect(inch.text("It rests on {names}.", { names })).toBe(`It rests on ${names}.`);
});
