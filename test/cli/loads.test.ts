/** How loads came about, as `bentwright forces` tells it: against hand figures, and against what really loads the frame. */
import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import forcesSchema from "../../schemas/forces.schema.json" with { type: "json" };
import { run } from "../../server/cli/run.ts";

const validate = new Ajv2020({ strict: false, allErrors: true }).compile(forcesSchema);

function call(args: readonly string[]): string {
  let out = "";
  run(args, {
    read: (file) => readFileSync(file),
    write: () => undefined,
    out: (text) => {
      out += text;
    },
    err: () => undefined,
    color: false,
  });
  return out;
}

interface Line {
  readonly id: string;
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly status: string;
  readonly source: string;
  readonly note?: string;
}

interface Frame {
  readonly combinations: readonly {
    readonly text: string;
    readonly words: string;
    readonly applied: number[];
  }[];
  readonly loads: {
    readonly standard: string;
    readonly sections: readonly {
      readonly part: string;
      readonly lines: readonly Line[];
      readonly cases: readonly {
        readonly case: string;
        readonly pressures: readonly {
          readonly on: string;
          readonly value: number;
          readonly coefficient?: number;
        }[];
      }[];
    }[];
  };
  readonly woods: readonly {
    readonly class: string;
    readonly group: string;
    readonly values: Readonly<Record<string, { readonly value: number; readonly status: string }>>;
  }[];
}

function frameOf(sample: string): Frame {
  const value = JSON.parse(call(["forces", "--format", "json", `samples/${sample}.frame.yaml`]));
  expect(validate(value), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
  return value.results.frame;
}

const section = ({ loads }: Frame, part: string) => loads.sections.find((s) => s.part === part)!;
const line = (frame: Frame, part: string, id: string): Line =>
  section(frame, part).lines.find((l) => l.id === id)!;
const applied = (frame: Frame, words: string): number =>
  -(frame.combinations.find((c) => c.words === words)?.applied[2] ?? Number.NaN);

describe("pavilion: 45 psf on the ground, open, category I, 107 mph, exposure C", () => {
  const frame = frameOf("cider-press-pavilion");

  test("snow: 0.7 × 1.0 × 1.2 × 0.8 × 45 = 30.24 psf; leeward 0.8 × 45 = 36 psf [derived]", () => {
    expect(frame.loads.standard).toBe("ASCE 7-16");
    expect(line(frame, "snow", "p_g")).toMatchObject({ value: 45, unit: "psf", status: "given" });
    expect(["C_e", "C_t", "I_s", "C_s"].map((id) => line(frame, "snow", id).value)).toEqual([1, 1.2, 0.8, 1]);
    expect(line(frame, "snow", "p_f").value).toBeCloseTo(30.24, 6);
    expect(line(frame, "snow", "p_s").value).toBeCloseTo(30.24, 6);
    const leeward = section(frame, "snow").cases.find((c) => c.case === "unbalanced-leeward");
    expect(leeward?.pressures[0]?.value).toBeCloseTo(36, 6);
  });

  test("wind: 2.01 (15/900)^(2/9.5) = 0.849; 0.00256 × 0.849 × 0.85 × 107² = 21.15 psf; × 0.85 C_N [derived]", () => {
    const Kz = 2.01 * (15 / 900) ** (2 / 9.5);
    expect(line(frame, "wind", "K_z").value).toBeCloseTo(Kz, 6);
    const q =
      0.00256 * Kz * line(frame, "wind", "K_zt").value * line(frame, "wind", "K_e").value * 0.85 * 107 ** 2;
    expect(line(frame, "wind", "q_h").value).toBeCloseTo(q, 6);
    const { cases } = section(frame, "wind");
    expect(cases.length).toBeGreaterThan(0);
    for (const { pressures } of cases)
      for (const { coefficient, value } of pressures)
        if (coefficient !== undefined) expect(value).toBeCloseTo(q * 0.85 * coefficient, 6);
  });

  test("roof: the layers add up, each with its source", () => {
    const { lines } = section(frame, "roof");
    const layers = lines.filter(({ id }) => id !== "D");
    expect(layers.length).toBeGreaterThan(1);
    expect(layers.reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(line(frame, "roof", "D").value, 6);
    for (const { source } of lines) expect(source).not.toBe("");
  });

  test("what holds it down in the wind: dry pine 62.4 × 0.35 × 1.12 lb/ft³, the light end of the roof [derived]", () => {
    const { lines } = section(frame, "least-weight");
    expect(line(frame, "least-weight", "frame").value).toBeCloseTo(62.4 * 0.35 * 1.12, 3);
    expect(lines.filter(({ unit }) => unit === "psf").map(({ value }) => value)).toEqual([0.9, 0.03, 2.04]);
    for (const { source, status } of lines) expect([source, status]).not.toContain("");
    expect(line(frame, "weight", "frame").value).toBe(36);
  });

  test("each wood once, with how well its values are known", () => {
    expect(frame.woods.length).toBeGreaterThan(0);
    const keys = frame.woods.map(({ class: name, values }) => JSON.stringify([name, values]));
    expect(new Set(keys).size).toBe(keys.length);
    for (const { values } of frame.woods)
      expect(values.Fb?.status).toMatch(/^(published|memory|uncertain|given)$/);
  });
});

describe("kayak shelter, in millimetres", () => {
  const frame = frameOf("kayak-shelter");
  const text = call(["forces", "samples/kayak-shelter.frame.yaml"]);

  test("the snow that is told is the snow that loads it: 6600 by 3000 mm of roof [derived]", () => {
    const level = (6600 * 3000) / 304.8 ** 2;
    const more = applied(frame, "D + S (balanced snow)") - applied(frame, "D");
    expect(more / level).toBeCloseTo(line(frame, "snow", "p_s").value, 2);
    const live = applied(frame, "D + Lr") - applied(frame, "D");
    expect(live / level).toBeCloseTo(line(frame, "roof-live", "L_r").value, 2);
  });

  test("what is said holds no inch, pound or mile", () => {
    for (const { lines, cases } of frame.loads.sections) {
      for (const { what, note } of lines)
        expect(`${what} ${note ?? ""}`).not.toMatch(/\d ?(in|ft|psf|psi|lb|mph)\b/);
      for (const c of cases) for (const { on } of c.pressures) expect(on).not.toMatch(/\d ?(in|ft|psf)\b/);
    }
    expect(text).toMatch(/p_g +on the ground, service level +2 kPa +given in the file/);
    expect(text).toMatch(/V +speed of the wind, strength level +47 m\/s/);
    expect(text).toMatch(/Woods \(reference design values\)\n\n.*F_b.*\n.* MPa/);
  });
});
