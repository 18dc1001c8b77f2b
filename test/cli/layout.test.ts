import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import layoutSchema from "../../schemas/layout.schema.json" with { type: "json" };
import { run } from "../../server/cli/run.ts";

const sample = (name: string): string =>
  readFileSync(new URL(`../../samples/${name}.frame.yaml`, import.meta.url), "utf8");

const PAVILION = sample("cider-press-pavilion");
const FILES: Readonly<Record<string, string>> = {
  "pavilion.frame.yaml": PAVILION,
  "kayak.frame.yaml": sample("kayak-shelter"),
  "wrong.frame.yaml": sample("wrong-on-purpose"),
  "scribed.frame.yaml": PAVILION.replace("kind: brace-tenon,", "kind: brace-tenon, rule: scribe,"),
  "measured.frame.yaml": PAVILION.replace(
    "from: tie, to: ridge}",
    "from: tie, to: ridge, measured: {king-post@2: {width: 8 1/4 in, depth: 8 1/8 in}}}",
  ).replace("top: tie-top}", "top: tie-top, measured: {tie@2: {width: 8 3/16 in, depth: 12 in, at: 4 ft}}}"),
  "short.frame.yaml": PAVILION.replace(
    "from: tie, to: ridge}",
    "from: tie, to: ridge, measured: {king-post@2: {width: 7 7/8 in, depth: 7 7/8 in}}}",
  ),
  "stall.frame.yaml": readFileSync(new URL("../frames/market-stall.frame.yaml", import.meta.url), "utf8"),
  "bolted.frame.yaml": PAVILION.replace(
    "stand-off: 1 in}",
    "stand-off: 1 in, strap: {thickness: 1/4 in, width: 2 in, place: in-kerf}, bolts: {count: 1, diameter: 5/8 in}}",
  ),
  "empty.frame.yaml": "",
};

function call(...args: string[]): { code: number; out: string; err: string } {
  let [out, err] = ["", ""];
  const code = run(["layout", ...args], {
    read: (file) => {
      const text = FILES[file];
      if (text === undefined) throw Object.assign(new Error("raw"), { code: "ENOENT" });
      return new TextEncoder().encode(text);
    },
    write: () => {},
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

/** The part of the text that is about one stick. */
function stickText(out: string, id: string): string {
  const found = out.split("\n\n").find((part) => part.startsWith(id));
  if (found === undefined) throw new Error(`no ${id} in ${out.slice(0, 400)}`);
  return found;
}

/** The cells of the rows that begin with a joint and a cut. */
function row(text: string, joint: string, cut: string): string[] {
  const line = text.split("\n").find((l) => l.includes(`  ${joint} `) && l.includes(` ${cut} `));
  return (line ?? "").trim().split(/ {2,}/);
}

describe("layout as text", () => {
  test("bolt holes and the kerf of an anchor are marked on the post", () => {
    const text = stickText(call("bolted.frame.yaml", "post@A1").out, "post@A1");
    // 7 × 5/8 in above the end, in the middle of 8 in, 1/16 in wider than the bolt
    const line = text.split("\n").find((one) => one.includes("bolt hole")) ?? "";
    expect(line.trim().split(/ {2,}/)).toEqual([
      "post-foot@A1",
      "all@A1",
      "bolt hole 11/16 in",
      "1",
      "4 3/8 in",
      "4 in",
      "through",
    ]);
    expect(text).toMatch(/post-foot@A1 +all@A1 +notch /);
  });
  test("names faces, end and turn, then the ends, then the cuts", () => {
    const { code, out } = call("pavilion.frame.yaml", "post@A1");
    expect(code).toBe(0);
    const text = stickText(out, "post@A1");
    expect(text).toContain(`post, perfect size 8 in × 8 in, 8'-4 1/2" from tip to tip`);
    expect(text).toContain("Face 1 looks out of wall A, face 2 looks out of bent 1.");
    expect(text).toContain("Along: from the foot; seen from there, 1, 2, 3, 4 run counterclockwise.");
    expect(text).toContain("This end: cut square at 0 in");
    expect(text).toContain(`Other end: shoulder square at 7'-10" (post-head@A1 into plate@A)`);
    expect(text).toContain(`cheeks 2 in and 4 in from face 1; from 7'-10" to 8'-4 1/2", full breadth`);
    // plane geometry: tie seated at 7'-1" above the foot, 12 in deep, 1 1/4 in of drop
    expect(row(text, "tie-end@A1", "housing").slice(2)).toEqual([
      "housing",
      "3",
      `6'-1"`,
      `7'-2 1/4"`,
      "0 in",
      "8 in",
      "3/4 in",
      "floor 7 1/4 in from face 1",
    ]);
    expect(row(text, "tie-end@A1", "mortise")[8]).toBe("through");
    expect(row(text, "post-head@A1", "peg 7/8 in").at(-1)).toBe(
      "where the cheek’s hole comes, then 3/32 in toward the shoulder",
    );
    expect(out).toContain("Depths on faces 3 and 4 go down to the perfect timber");
    expect(out).toContain("licensed engineer");
  });

  test("an entry stands for all its sticks, equal ones once", () => {
    const { out } = call("pavilion.frame.yaml", "rafter");
    expect(out.match(/9 sticks alike/g)).toHaveLength(2);
    expect(stickText(out, "rafter@A.1")).toContain(`9'-4 5/16" from tip to tip`);
    // mirrored slopes differ in the turn alone
    const bodies = ["rafter@A.1", "rafter@B.1"].map((id) =>
      stickText(out, id).split("\n").slice(1).join("\n"),
    );
    expect(bodies[0]?.replace(" clockwise", " counterclockwise")).toBe(bodies[1]);
  });

  test("a dovetail's socket has its mouth and its widest, a rough stick's tenon the perfect edges", () => {
    const sill = stickText(call("stall.frame.yaml", "sill@A").out, "sill@A");
    // 8 in at the outer face, 1 3/8 in less on each side at the inner one
    expect(row(sill, "cross@2.foot", "lap").at(-1)).toBe(
      `at 0 in across from 8'-8" to 9'-4" along, at 8 in across from 8'-9 3/8" to 9'-2 5/8" along`,
    );
    const { out } = call("measured.frame.yaml", "king-post@2");
    expect(stickText(out, "king-post@2")).toContain("from 0 in to 8 in across; pare off the 1/4 in over");
  });

  test("without a timber every stick is there", () => {
    const { out } = call("kayak.frame.yaml");
    for (const id of ["post@A1", "plate@A", "beam@B", "girt@A1-B1", "girt-knee@A4-B4", "rafter@B.1"])
      expect(out).toContain(id);
  });

  test("a metric file is marked to the millimetre", () => {
    const text = stickText(call("kayak.frame.yaml", "post@A1").out, "post@A1");
    expect(text).toContain("post, perfect size 150 mm × 150 mm, 2425 mm from tip to tip");
    expect(text).not.toMatch(/\d\.\d mm(?! toward)/);
    // girt 1500 above the foot at its top (1650 + 25 of drop − 175), 200 deep
    expect(row(text, "girt-wedge@A1", "housing").slice(3, 6)).toEqual(["3", "1275 mm", "1500 mm"]);
  });

  test("a scribed joint says how much to leave, and marks in place", () => {
    const { out } = call("scribed.frame.yaml", "knee@A1-A2");
    expect(out).toContain("; saw it 57 1/8 in long, to scribe");
    expect(out.match(/Scribed: leave 1 in long beyond these marks; mark in place, then cut\./g)).toHaveLength(
      2,
    );
    expect(call("scribed.frame.yaml", "post@A1").out).toContain("scribed: mark in place");
    expect(call("pavilion.frame.yaml").out).not.toMatch(/scribe/);
  });

  test("a measured stick says what it is over, and goes so much deeper", () => {
    const { out } = call("measured.frame.yaml", "king-post@2");
    expect(out).toContain("Measured 8 1/4 in × 8 1/8 in.");
    // 1/2 in of housing and 1/4 in over, on the face away from the reference face
    const rows = out.split("\n").filter((line) => / housing /.test(line));
    const deep = rows.find((line) => line.includes("floor 7 1/2 in from face 2"));
    expect(deep).toContain("3/4 in");
    expect(deep).toContain("1/4 in over");
    expect(rows.find((line) => line !== deep)).not.toContain("over");
    const tie = call("measured.frame.yaml", "tie@2").out;
    expect(tie).toContain("Measured 8 3/16 in × 12 in at 48 in.");
    expect(tie).toContain("Pare it to 8 in × 12 in over the 3/4 in that go in.");
  });

  test("a stick that is short of its perfect size says so without a minus sign", () => {
    const { out } = call("short.frame.yaml", "king-post@2");
    expect(out).toContain("1/8 in short of the perfect timber");
    expect(out).not.toMatch(/ -\d|in over/);
  });

  test("screws are marked where their heads stand on the brace", () => {
    const text = stickText(call("stall.frame.yaml", "knee@B3-B2").out, "knee@B3-B2");
    // at 45°, the long edge of a 6 in brace: out from the middle of its cut, square to the post, 6 in up; 4 in thick: 1 and 3
    const foot = text.split("\n").filter((line) => line.includes(".foot ") && line.includes("screw "));
    expect(foot.map((line) => line.trim().split(/ {2,}/).slice(2))).toEqual([
      ["screw 5/16 in × 8 in", "2", "6 in", "1 in", "driven 45° to the arris"],
      ["screw 5/16 in × 8 in", "2", "6 in", "3 in", "driven 45° to the arris"],
    ]);
  });

  test("scarfs and laps are called laps", () => {
    const { out } = call("stall.frame.yaml");
    const cuts = out.split("\n").filter((line) => /^ +\S*scarf/.test(line) && !line.includes("peg"));
    expect(cuts.length).toBeGreaterThan(0);
    for (const line of cuts) expect(line).toMatch(/ lap +\d/);
  });
});

describe("layout as JSON", () => {
  const validate = new Ajv2020({ strict: false, allErrors: true }).compile(layoutSchema);

  test.each(["pavilion", "kayak", "scribed", "measured", "short", "stall", "wrong", "bolted"])(
    "%s is as its schema says",
    (name) => {
      const { code, out } = call("--format", "json", `${name}.frame.yaml`);
      expect(code).toBe(0);
      const report: unknown = JSON.parse(out);
      expect(validate(report), JSON.stringify(validate.errors)).toBe(true);
    },
  );

  test("every distance is a whole number of marks", () => {
    const { out } = call("--format", "json", "pavilion.frame.yaml");
    const report = JSON.parse(out) as { sticks: { ends: unknown; joints: { cuts: unknown }[] }[] };
    let count = 0;
    const visit = (value: unknown, key: string): void => {
      if (typeof value === "number" && !["face", "cheeksFrom"].includes(key)) {
        expect(Number.isInteger(value * 16), `${key} ${value}`).toBe(true);
        count++;
      } else if (typeof value === "object" && value !== null)
        for (const [k, v] of Object.entries(value)) visit(v, Array.isArray(value) ? key : k);
    };
    for (const stick of report.sticks) {
      visit(stick.ends, "");
      for (const joint of stick.joints) visit(joint.cuts, "");
    }
    expect(count).toBeGreaterThan(1000);
  });
});

describe("calls that cannot be carried out", () => {
  test.each([
    [[], "Name one frame file"],
    [["pavilion.frame.yaml", "post@A1", "post@A2"], "at most one timber"],
    [["none.frame.yaml"], "cannot be opened"],
    [["pavilion.frame.yaml", "post@A9"], "There is no timber `post@A9` in this frame. Did you mean `post@A"],
    [["--format", "csv", "pavilion.frame.yaml"], "There is no format `csv`"],
  ])("%j", (args, words) => {
    const { code, err } = call(...args);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });

  test("a frame without a timber", () => {
    const { code, err } = call("empty.frame.yaml");
    expect(code).toBe(1);
    expect(err).toContain("has no timber that can be placed");
  });
});
