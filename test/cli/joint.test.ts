/** `bentwright joint`: what to cut at one joint, for people and programs, and what it says to a wrong id. */
import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import jointSchema from "../../schemas/joint.schema.json" with { type: "json" };
import { run } from "../../server/cli/run.ts";
import { SHED } from "../shed.ts";

const PAVILION = "samples/cider-press-pavilion.frame.yaml";
/** The shed with bolts through straps that are let into the posts. */
const BOLTED = (metric: boolean): string =>
  SHED.replace("units: inch", metric ? "units: mm" : "units: inch")
    .replace(/section: (\d+x\d+)/g, metric ? "section: $1 in" : "section: $1")
    .replace(
      "stand-off: 1 in}",
      "stand-off: 1 in, strap: {thickness: 3/16 in, width: 2 1/2 in, let-in: 3/16 in}, bolts: {count: 2, diameter: 1/2 in}}",
    );
const validate = new Ajv2020({ strict: false, allErrors: true }).compile(jointSchema);

function call(...args: readonly string[]) {
  let [out, err] = ["", ""];
  const written: Record<string, string> = {};
  const code = run(["joint", ...args], {
    read: (file) => {
      if (file === "shed") return new TextEncoder().encode(SHED);
      if (file === "thin")
        return new TextEncoder().encode(SHED.replace("thickness: 2 in", "thickness: 1 in"));
      if (file === "gusty")
        return new TextEncoder().encode(BOLTED(false).replace(/speed: \d+ mph/, "speed: 9x mph"));
      if (file === "doweled")
        return new TextEncoder().encode(BOLTED(false).replace("embedded-strap", "dowel"));
      if (file === "stated")
        return new TextEncoder().encode(
          BOLTED(false).replace("stand-off:", "capacity: {sideways: 900 lb, because: a sheet}, stand-off:"),
        );
      if (file === "deep")
        return new TextEncoder().encode(BOLTED(false).replace("let-in: 3/16", "let-in: 5"));
      if (file === "bolted" || file === "bolted-mm")
        return new TextEncoder().encode(BOLTED(file === "bolted-mm"));
      return file === "empty" ? new Uint8Array() : readFileSync(file);
    },
    write: (file, text) => {
      if (file === "locked") throw Object.assign(new Error("raw"), { code: "EACCES" });
      written[file] = text;
    },
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    color: false,
  });
  return { code, out, err, written };
}

describe("as text", () => {
  test("kind, timbers, cuts of both with how, pegs, wedge, forces, hold, findings", () => {
    const { code, out, err } = call(PAVILION, "tie-end@A1");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const parts = out.split("\n\n");
    expect(parts[0]).toBe(
      "tie-end@A1: Wedged half-dovetail\nFoot of tie@1 (8 in × 12 in) into post@A1 (8 in × 8 in).",
    );
    const part = (title: string): string => parts.find((one) => one.startsWith(`${title}\n`)) ?? "";
    // 8 in post less 3/4 in of housing; 12 in tie less the drop of 1 1/4 in
    expect(part("Cut on tie@1")).toMatch(/tenon length +7 1\/4 in {2}through to the far face/);
    expect(part("Cut on tie@1")).toMatch(
      /tenon depth at the shoulder +10 3\/4 in {2}full depth less the drop/,
    );
    expect(part("Cut on post@A1")).toMatch(/housing depth +3\/4 in {2}as the file says/);
    expect(part("Pegs")).toMatch(/peg hole diameter +3\/4 in/);
    // 1 1/4 in and a rise of 1 in 10 over 12 in, to the nearest 1/16: 2.45 in
    expect(part("Wedge")).toMatch(/wedge height, thick end +2 7\/16 in/);
    expect(part("Forces")).toMatch(/pulls out +[\d,]+ lb/);
    expect(out).toMatch(/\nPulls [\d,]+ lb under .*; pegs hold [\d,]+ lb: 0\.\d\d\.\n/);
    // green ties: their wedges are to be driven on
    expect(out).toMatch(/note .*dovetail-draws-out/);
    expect(out.match(/licensed engineer/g)).toHaveLength(1);
  });
  test("findings of the joint, and none of others", () => {
    const { out } = call("thin", "post-head@A1");
    expect(out).toMatch(/\nFindings\n {2}warning tenon-thin The tenon .*1 in/);
    expect(call("shed", "post-head@A1").out).not.toContain("tenon-thin");
  });
  test("the entry’s name is enough where it has one place", () => {
    expect(call("test/frames/purlins-on-principals.frame.yaml", "plate-scarf@A.1").code).toBe(0);
    const { code, err } = call(PAVILION, "post-head");
    expect(code).toBe(2);
    expect(err).toContain("It is at these places: post-head@A1, post-head@A2, ");
  });
});

describe("as JSON", () => {
  test.each([
    [PAVILION, "tie-end@A1"],
    [PAVILION, "rafter-seat@A.1"],
    ["samples/kayak-shelter.frame.yaml", "girt-drop@A1-B1"],
    ["shed", "post-head@A1"],
    ["thin", "post-head@A1"],
  ])("%s %s is as the schema says", (file, id) => {
    const { code, out } = call(file, id, "--format", "json");
    expect(code).toBe(0);
    const value: unknown = JSON.parse(out);
    expect(validate(value), JSON.stringify(validate.errors)).toBe(true);
    expect(value).toMatchObject({ id });
  });
  test("sizes in inches beside the file’s own words, the finding at it", () => {
    const metric = JSON.parse(
      call("samples/kayak-shelter.frame.yaml", "girt-drop@A1-B1", "--format", "json").out,
    );
    expect(metric.cuts).toContainEqual(
      expect.objectContaining({
        size: "housing depth",
        value: expect.closeTo(15 / 25.4, 9),
        unit: "in",
        text: "15 mm",
      }),
    );
    const thin = JSON.parse(call("thin", "post-head@A1", "--format", "json").out);
    expect(thin.findings).toContainEqual(expect.objectContaining({ check: "tenon-thin", value: 1 }));
  });
  test("loads that are in no figure, with what the file lacks", () => {
    const gapsAt = (file: string, id: string): unknown =>
      JSON.parse(call(file, id, "--format", "json").out).gaps;
    expect(gapsAt("bolted", "post-head@A1")).toEqual([]);
    const gaps = [{ load: "wind", lacks: ["/site/wind/speed"] }];
    expect(gapsAt("gusty", "post-head@A1")).toEqual(gaps);
    expect(gapsAt("gusty", "post-foot@A1")).toEqual(gaps);
  });
});

describe("as a drawing", () => {
  test("goes to a file", () => {
    const { code, out, written } = call(PAVILION, "king-foot@1", "--format", "svg", "-o", "joint.svg");
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(written["joint.svg"]).toMatch(/^<svg .*king-foot@1 · Mortise and tenon/);
  });
  test("says why it cannot be written", () => {
    const { code, err } = call(PAVILION, "king-foot@1", "--format", "svg", "-o", "locked");
    expect(code).toBe(2);
    expect(err).toContain("locked cannot be written: you have no permission.");
  });
});

describe("the foot of a post on its anchor", () => {
  test("as text: what is cut and bored, how it goes together, what holds each way", () => {
    const { code, out, err } = call("bolted", "post-foot@A1");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(
      /^post-foot@A1: Post foot on a metal anchor\nFoot of post@A1 \(8 in × 8 in\) on all@A1\.\n/,
    );
    expect(out).toMatch(/end of the post above the pier +1 in {2}as the file says/);
    expect(out).toMatch(/end of the post to bolt hole +3 1\/2 in {2}7 diameters/);
    expect(out).toMatch(/bolt hole diameter +9\/16 in/);
    expect(out).toContain("post@A1 goes in straight down.");
    for (const way of [
      "pressed down",
      "lifted",
      "sideways, along its bolts",
      "sideways, square to its bolts",
    ])
      expect(out).toMatch(new RegExp(`${way} .* lb`));
    expect(out.match(/licensed engineer/g)).toHaveLength(1);
  });
  test("says what it would need to know", () =>
    expect(call(PAVILION, "post-foot@A1").out).toContain(
      "Not known, for want of: the thickness and width of its steel (`strap`) and its bolts or screws (`bolts`, `screws`).",
    ));
  test("pressed down: no whole capacity where the plate under the end grain is not judged", () => {
    const { out } = call("bolted", "post-foot@A1");
    expect(out).toMatch(/pressed down .* at most [\d,]+ lb .* at least 0\.\d\d/);
    expect(out).toContain("Pressed down, no more than what is named is judged");
    const { holds } = JSON.parse(call("bolted", "post-foot@A1", "--format", "json").out);
    const whole = holds.map((one: { way: string; whole: boolean }) => [one.way, one.whole]);
    expect(whole).toContainEqual(["down", false]);
    expect(whole).toContainEqual(["along-bolts", true]);
  });
  test("a dowel: what is written beside it is not counted, and what it would need is its capacity", () => {
    const { out } = call("doweled", "post-foot@A1");
    expect(out).toContain("Not known, for want of: what its dowel holds (`capacity`)");
    expect(out).toContain("Its `strap`, `bolts` and `screws` are not counted: a dowel has none.");
    expect(out).not.toContain("its bolts or screws");
  });
  test("a capacity for sideways: one way for the whole push, with what that means", () => {
    const { out } = call("stated", "post-foot@A1");
    expect(out).toMatch(/\n *sideways +\S.* 900 lb +what the file states/);
    expect(out).not.toMatch(/sideways, (along|square to) its bolts/);
    expect(out).toContain("What the file states for sideways is held against the whole push");
    expect(call("bolted", "post-foot@A1").out).not.toContain("What the file states for sideways");
    const value = JSON.parse(call("stated", "post-foot@A1", "--format", "json").out);
    expect(validate(value), JSON.stringify(validate.errors)).toBe(true);
    expect(value.holds.map((one: { way: string }) => one.way)).toContain("sideways");
  });
  test("straps let in past the middle: no size below nothing, and far over is said", () => {
    const { out } = call("deep", "post-foot@A1");
    expect(out).toContain("anchor-unfit");
    expect(out).not.toMatch(/\s[-−]\d/);
    expect(out).toMatch(/sideways, square to its bolts .* 0 lb .* far over/);
  });
  test("as JSON, in inches and in a file of millimetres", () => {
    for (const file of ["bolted", "bolted-mm", PAVILION]) {
      const value = JSON.parse(call(file, "post-foot@A1", "--format", "json").out);
      expect(validate(value), JSON.stringify(validate.errors)).toBe(true);
      expect(value).toMatchObject({
        kind: "post-foot",
        receiving: { pier: "all@A1" },
        path: "/piers/all/anchor",
      });
    }
  });
  test("as a drawing", () => {
    const { written } = call("bolted", "post-foot@A1", "--format", "svg", "-o", "foot.svg");
    expect(written["foot.svg"]).toMatch(/^<svg .*post-foot@A1 · Post foot on a metal anchor/);
    expect(written["foot.svg"]).not.toMatch(/NaN|undefined|Infinity/);
    expect(written["foot.svg"]).toContain("Bolts 1/2 in: 2, holes 9/16 in.");
  });
  test("is named where an id is misspelt", () =>
    expect(call("bolted", "post-fot@A1").err).toContain("Did you mean `post-foot@A1`?"));
});

describe("called wrongly", () => {
  test.each([
    ["post-hed@A1", "There is no joint `post-hed@A1`. Did you mean `post-head@A1`?"],
    ["tie-end@Z9", "There is no joint `tie-end@Z9`. `tie-end` is at: tie-end@A1, "],
    ["tie-nd@Z9", "There is no joint `tie-nd@Z9`. Did you mean `tie-end`? It is at: tie-end@A1, "],
    ["qqqqqqqq", "This frame has post-head, tie-end, brace-ends, "],
  ])("%s", (id, words) => {
    const { code, err, out } = call(PAVILION, id);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain(words);
  });
  test("without a joint, with a format that there is not, without a frame", () => {
    expect(call(PAVILION)).toMatchObject({
      code: 2,
      err: expect.stringContaining("one frame file and one joint"),
    });
    expect(call(PAVILION, "king-foot@1", "--format", "pdf")).toMatchObject({
      code: 2,
      err: expect.stringContaining("There is no format `pdf`; there are text, json and svg."),
    });
    expect(call("empty", "king-foot@1")).toMatchObject({
      code: 1,
      err: expect.stringContaining("bentwright check"),
    });
    expect(call("nowhere", "king-foot@1")).toMatchObject({ code: 2 });
  });
});
