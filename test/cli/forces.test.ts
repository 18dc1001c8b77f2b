/** What `bentwright forces` prints, on the samples: equilibrium that anyone can see, and the shape of its JSON. */
import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import forcesSchema from "../../schemas/forces.schema.json" with { type: "json" };
import reportSchema from "../../schemas/report.schema.json" with { type: "json" };
import { run } from "../../server/cli/run.ts";
import { ROOFED } from "../roofed-shed.ts";
import { SHED } from "../shed.ts";

const SAMPLES = ["garden-arch", "kayak-shelter", "cider-press-pavilion"].map(
  (s) => `samples/${s}.frame.yaml`,
);
const validateForces = new Ajv2020({ strict: false, allErrors: true }).compile(forcesSchema);
const validateReport = new Ajv2020({ strict: false, allErrors: true }).compile(reportSchema);

function call(args: readonly string[], stdin?: string) {
  let [out, err] = ["", ""];
  const code = run(args, {
    read: (file) => (file === "-" ? new TextEncoder().encode(stdin ?? "") : readFileSync(file)),
    write: () => undefined,
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    color: false,
  });
  return { code, out, err };
}

type V3 = readonly [number, number, number];

interface Most {
  readonly value: number;
  readonly combination?: string;
}

interface Results {
  readonly file?: string;
  readonly rafters: readonly { readonly uses: readonly { readonly factors: readonly unknown[] }[] }[];
  readonly decks: readonly {
    readonly wall?: string;
    readonly floor?: string;
    readonly kind: string;
    readonly uses?: readonly {
      readonly check: string;
      readonly combination: string;
      readonly factors: readonly unknown[];
    }[];
    readonly passes?: boolean;
  }[];
  readonly frame: {
    readonly combinations: readonly {
      readonly id: string;
      readonly status: string;
      readonly applied: V3;
      readonly reaction: V3;
      readonly reactions: readonly { readonly at: string; readonly force: V3 }[];
    }[];
    readonly members: readonly {
      readonly timber: string;
      readonly roofArea?: number;
      readonly uses: readonly {
        readonly check: string;
        readonly unit: string;
        readonly combination: string;
        readonly reference?: { readonly source: string };
        readonly factors: readonly { readonly source: string }[];
      }[];
    }[];
    readonly piers: readonly {
      readonly pier: string;
      readonly down: Most;
      readonly up: Most;
      readonly weightHolds: number;
      readonly bearing?: {
        readonly pressure: number;
        readonly allowed: { readonly value: number; readonly status: string };
        readonly load: number;
        readonly weight: number;
        readonly ratio: number;
        readonly passes: boolean;
      };
      readonly soilBeside?: {
        readonly push: number;
        readonly holds: number;
        readonly singleHolds: number;
        readonly passes: boolean;
      };
    }[];
    readonly joints: readonly {
      readonly joint: string;
      readonly tension: Most;
      readonly hold?: {
        readonly pull: number;
        readonly by: string;
        readonly capacity?: { readonly value: number };
        readonly ratio?: number;
        readonly passes?: boolean;
      };
    }[];
    readonly floating: readonly string[];
  } | null;
}

function forcesOf(file: string, stdin?: string): Results {
  const { code, out } = call(["forces", "--format", "json", file], stdin);
  expect(code).toBe(0);
  const value: unknown = JSON.parse(out);
  expect(validateForces(value), JSON.stringify(validateForces.errors?.slice(0, 3))).toBe(true);
  return (value as { results: Results }).results;
}

/** Roofs on purlins, trusses, step-lap seats, a loft: seats that slide and such that cannot. */
const FRAMES = ["purlins-on-principals", "king-post-truss", "wagon-shed", "loft"].map(
  (s) => `test/frames/${s}.frame.yaml`,
);

describe.each([...SAMPLES, ...FRAMES])("%s", (file) => {
  const { frame } = forcesOf(file);

  test("what is applied and what the ground answers cancel under every combination", () => {
    expect(frame?.combinations.length).toBeGreaterThan(0);
    for (const { id, status, applied, reaction } of frame?.combinations ?? []) {
      expect(status, id).toBe("sound");
      const largest = Math.max(...applied.map(Math.abs));
      expect(largest, id).toBeGreaterThan(100);
      applied.forEach((v, k) => {
        expect(Math.abs(v + (reaction[k] ?? Number.NaN)), `${id} ${"xyz"[k]}`).toBeLessThan(1e-6 * largest);
      });
    }
  });

  test("the reactions by pier sum up to the whole, and the pier's extremes are among them", () => {
    const downs = new Map<string, number>();
    for (const { id, reaction, reactions } of frame?.combinations ?? []) {
      const sum = reactions.reduce((s, { force }) => s + force[2], 0);
      expect(sum, id).toBeCloseTo(reaction[2], 4);
      for (const { at, force } of reactions) downs.set(at, Math.max(downs.get(at) ?? 0, force[2]));
    }
    expect(frame?.piers.length).toBeGreaterThan(0);
    for (const { pier, down } of frame?.piers ?? []) expect(down.value).toBeCloseTo(downs.get(pier) ?? -1, 4);
  });

  test("nothing floats; every extreme names a combination that there is", () => {
    expect(frame?.floating).toEqual([]);
    const ids = new Set(frame?.combinations.map(({ id }) => id));
    for (const { joint, tension } of frame?.joints ?? [])
      expect(tension.value === 0 || ids.has(tension.combination ?? ""), joint).toBe(true);
  });
});

test("what holds stands beside what pulls", () => {
  const { frame } = forcesOf("samples/cider-press-pavilion.frame.yaml");
  const holdOf = (id: string) => frame?.joints.find(({ joint }) => joint === id)?.hold;
  const head = holdOf("post-head@A2");
  expect(head).toMatchObject({ by: "pegs", passes: true });
  // 2 × 415.5 lb × (7/8 ÷ 3/4)² × C_D 1.6 (TFEC 1, memory): pegs of 7/8 in shear off
  expect(head?.capacity?.value).toBeCloseTo(1809.3, 0);
  expect(head?.ratio).toBeCloseTo((head?.pull ?? 0) / 1809.3, 3);
  expect(holdOf("rafter-seat@A.5")).toMatchObject({ by: "screws", passes: true });
  // knees only push here
  expect(holdOf("brace-ends@A1-A2.foot")).toBeUndefined();
  for (const pier of frame?.piers ?? []) expect(pier.weightHolds).toBeGreaterThan(pier.up.value);
});

test("a dovetail holds by its flanks, and says so with a number", () => {
  const { frame } = forcesOf("samples/kayak-shelter.frame.yaml");
  const hold = frame?.joints.find(({ joint }) => joint === "girt-drop@A1-B1")?.hold;
  expect(hold).toMatchObject({ by: "dovetail", passes: true });
  expect(hold?.ratio).toBeCloseTo((hold?.pull ?? 0) / (hold?.capacity?.value ?? 1), 3);
  expect(hold?.capacity?.value).toBeGreaterThan(200);
});

test("piers tell what presses on the soil and what the soil beside them holds", () => {
  const { frame } = forcesOf("samples/cider-press-pavilion.frame.yaml");
  const pier = frame?.piers.find(({ pier }) => pier === "all@A2");
  const { bearing, soilBeside } = pier!;
  // sand: 2,000 psf (IBC 2012 Table 1806.2, published) on a footing of 24 in, π ft² (derived)
  expect(bearing?.allowed).toMatchObject({ value: 2000, status: "published" });
  expect(bearing!.pressure).toBeCloseTo((bearing!.load + bearing!.weight) / Math.PI, 6);
  expect(bearing).toMatchObject({ passes: true, load: pier!.down.value });
  // the file says “lateral: doubled”, and wind pushes most (IBC 1806.3.4, memory)
  expect(soilBeside!.holds).toBeCloseTo(2 * soilBeside!.singleHolds, 6);
  expect(soilBeside!.passes).toBe(true);
});

test("rafters carry the whole roof, and what they rest on carries it again", () => {
  const { frame } = forcesOf("samples/cider-press-pavilion.frame.yaml");
  const sum = (start: string): number =>
    (frame?.members ?? [])
      .filter(({ timber }) => timber.startsWith(start))
      .reduce((s, { roofArea }) => s + (roofArea ?? 0), 0);
  // 156 in between the walls and 18 in of eave each side, at 7:12; 216 in of bents and 12 in of rake each end
  const slope = Math.hypot(7, 12) / 12;
  expect(sum("rafter@")).toBeCloseTo(((156 + 36) * slope * 240) / 144, 3);
  expect(sum("plate@") + sum("ridge")).toBeCloseTo(sum("rafter@"), 6);
  expect(sum("plate@")).toBeGreaterThan(sum("ridge"));
});

test("the roof's deck stands beside the rafters: boards with their factors, panels with their rating", () => {
  const { decks } = forcesOf("samples/cider-press-pavilion.frame.yaml");
  expect(decks.map(({ wall, kind }) => [wall, kind])).toEqual([
    ["A", "boards"],
    ["B", "boards"],
  ]);
  expect(decks[0]?.uses?.[0]).toMatchObject({ check: "bending", combination: "person" });
  expect(decks[0]?.uses?.[0]?.factors.length).toBeGreaterThan(3);
  const shed = forcesOf("samples/goat-shed.frame.yaml").decks;
  expect(shed.map(({ wall, floor }) => wall ?? floor)).toEqual(["A", "B", "loft"]);
  expect(shed.at(-1)?.uses?.[0]?.combination).toBe("floor");
  const panels = forcesOf("-", ROOFED).decks;
  expect(panels.map(({ kind, passes }) => [kind, passes])).toEqual([
    ["panels", true],
    ["panels", true],
  ]);
});

test("the report of a check carries the same results for each file", () => {
  const { out } = call(["check", "--format", "json", ...SAMPLES]);
  const report = JSON.parse(out) as { results: readonly Results[] };
  expect(validateReport(report), JSON.stringify(validateReport.errors?.slice(0, 3))).toBe(true);
  expect(report.results.map(({ file }) => file)).toEqual(SAMPLES);
  for (const { file, ...results } of report.results) expect(results).toEqual(forcesOf(file ?? ""));
  const [, , pavilion] = report.results;
  const uses = pavilion?.rafters.flatMap((r) => r.uses) ?? [];
  expect(uses.some(({ factors }) => factors.length > 3)).toBe(true);
});

test("every timber of the pavilion is judged, each stress with its reference value and factors, all with their source", () => {
  const { frame } = forcesOf("samples/cider-press-pavilion.frame.yaml");
  expect(frame?.members.length).toBe(51);
  for (const { timber, uses } of frame?.members ?? []) {
    expect(uses.length, timber).toBeGreaterThan(0);
    const stresses = uses.filter(({ unit }) => unit === "psi");
    expect(stresses.length, timber).toBeGreaterThan(0);
    for (const { check, reference, factors, combination } of stresses) {
      expect(reference?.source, `${timber} ${check}`).toMatch(/\S/);
      expect(factors.length, `${timber} ${check}`).toBeGreaterThan(0);
      for (const { source } of factors) expect(source, `${timber} ${check}`).toMatch(/\S/);
      expect(frame?.combinations.map(({ id }) => id)).toContain(combination);
    }
  }
});

test("the two schemas mean the same by results", () => {
  const { $defs: ofReport } = reportSchema;
  for (const [name, shape] of Object.entries(forcesSchema.$defs))
    expect(Reflect.get(ofReport, name), name).toEqual(shape);
});

test("the schema tells wrong results from right ones", () => {
  const { out } = call(["forces", "--format", "json", SAMPLES[0] ?? ""]);
  const value = JSON.parse(out) as { results: { frame: { combinations: { applied: number[] }[] } } };
  value.results.frame.combinations[0]?.applied.pop();
  expect(validateForces(value)).toBe(false);
});

test("tables for people", () => {
  const { code, out } = call(["forces", "samples/cider-press-pavilion.frame.yaml"]);
  expect(code).toBe(0);
  for (const head of ["Load combinations (lb", "Timbers (lb; the most", "Joints (lb", "Reactions (lb"])
    expect(out).toContain(head);
  expect(out).toMatch(
    /^ +\d+ +3-S:S\/balanced +D \+ S \(balanced snow\) +1\.15 +0 +0 +-[\d,]+ +0 +0 +[\d,]+$/m,
  );
  expect(out).toMatch(/^ {2}post@A1 .* [\d,]+ lb·ft$/m);
  expect(out).toMatch(/^ {2}post-head@A1 /m);
  expect(out.match(/licensed engineer/g)).toHaveLength(1);
  const metric = call(["forces", "samples/kayak-shelter.frame.yaml"]).out;
  expect(metric).toContain("Timbers (kN; the most");
  expect(metric).toMatch(/^ {2}post@A1 .* [\d.]+ k?N·m$/m);
});

test("what does not act is said", () => {
  const pavilion = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
  const told = (text: string): RegExpMatchArray | null =>
    call(["forces", "-"], text).out.match(/^(No wind|Not in these) .*$/gm);
  expect(told(pavilion)).toBeNull();
  expect(told(readFileSync("samples/garden-arch.frame.yaml", "utf8"))).toEqual([
    "No wind acts on this frame: the file gives none.",
  ]);
  const lack = "Not in these figures, since the file lacks it or it cannot be read: ";
  expect(told(pavilion.replace(/^ {2}snow: .*$/m, ""))).toEqual([
    `${lack}snow (mend “ground” under “snow”, “exposure” under “snow” and “thermal” under “snow”).`,
  ]);
  expect(told(pavilion.replace("107 mph", "107 mhp"))).toEqual([`${lack}wind (mend “speed” under “wind”).`]);
  const goats = readFileSync("samples/goat-shed.frame.yaml", "utf8");
  for (const live of ["live: 20 pfs, ", "live: -20 psf, ", ""])
    expect(told(goats.replace("live: 20 psf, ", live))).toEqual([
      `${lack}the load of floor loft (mend “live” under “loft”).`,
    ]);
});

test("what does not act is a gap of the JSON, with the keys that bring it", () => {
  const gapsOf = (text: string): unknown => {
    const report = JSON.parse(call(["forces", "--format", "json", "-"], text).out);
    validateForces(report);
    expect(validateForces.errors).toBeNull();
    return report.results.frame.gaps;
  };
  const pavilion = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
  const goats = readFileSync("samples/goat-shed.frame.yaml", "utf8");
  expect(gapsOf(goats)).toEqual([]);
  expect(gapsOf(pavilion.replace("45 psf", "45 pfs"))).toEqual([
    { load: "snow", lacks: ["/site/snow/ground"] },
  ]);
  expect(gapsOf(goats.replace("live: 20 psf", "live: 20 pfs"))).toEqual([
    { load: "floor", floor: "loft", lacks: ["/floors/loft/live"] },
  ]);
  expect(gapsOf(pavilion.replace("standing-seam,", "standing-seam, weight: 3 pfs,"))).toEqual([
    { load: "stated", lacks: ["/roof/covering/weight"] },
  ]);
});

test.each(["text", "json"])("a frame without an answer is printed as %s and ends with 1", (format) => {
  const unbraced = SHED.replace(/^ {2}(?:knee|tie-knee|knee-ends): .*\n/gm, "");
  const { code, out } = call(["forces", "--format", format, "-"], unbraced);
  expect(code).toBe(1);
  expect(out.length).toBeGreaterThan(1000);
  expect(call(["forces", "--format", format, "-"], SHED).code).toBe(0);
});

test.each(["forces", "model"])("%s of a file that gives no frame, in words", (command) => {
  const { code, out, err } = call([command, "-"], "frame: nothing\n");
  expect([code, out]).toEqual([1, ""]);
  expect(err).toMatch(/^Standard input has no timber .*bentwright check/);
  expect(call([command])).toMatchObject({ code: 2, out: "" });
  expect(call([command, "--format", "xml", "-"])).toMatchObject({ code: 2, out: "" });
});
