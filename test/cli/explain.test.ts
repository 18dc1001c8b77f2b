/** `bentwright explain CHECK FILE`: the cases of a check with their numbers. */
import { describe, expect, test } from "vitest";
import { run } from "../../server/cli/run.ts";
import { gate } from "../core/checks/gate.ts";

const SHALLOW = gate({
  piers: `
    piers:
      one: {under: post@A1, kind: tube, diameter: 14 in, depth: 20 in, anchor: {kind: embedded-strap}}
      two: {under: post@A2, kind: tube, diameter: 14 in, depth: 25 in, anchor: {kind: embedded-strap}}
  `,
});

function call(...args: readonly string[]): { code: number; out: string; err: string } {
  let [out, err] = ["", ""];
  const code = run(["explain", ...args], {
    out: (text) => (out += text),
    err: (text) => (err += text),
    read: (file) => {
      if (file !== "gate.frame.yaml") throw Object.assign(new Error("no"), { code: "ENOENT" });
      return new TextEncoder().encode(SHALLOW);
    },
    write: () => {},
    color: false,
  });
  return { code, out, err };
}

describe("explain with a file", () => {
  test("the page, then each case with its numbers", () => {
    const { code, out } = call("pier-above-frost", "gate.frame.yaml");
    expect(code).toBe(0);
    expect(out).toMatch(/^pier-above-frost \(error, ground\)\n/);
    const [, first = "", second = "", ...more] = out.split("\ngate.frame.yaml:");
    expect(more).toEqual([]);
    expect(first).toMatch(/^16:\d+\n {2}Error: one@A1 ends 20 in below/);
    expect(second).toMatch(/^17:\d+\n {2}Error: two@A2 ends 25 in below/);
    expect(first).toContain("  Where: one@A1");
  });

  test.each([["/piers/two"], ["/piers/two/depth"], ["two"], ["two@A2"], ["post-foot@A2"]])(
    "--at %s",
    (at) => {
      const { out } = call("pier-above-frost", "gate.frame.yaml", "--at", at);
      expect(out).toContain("two@A2 ends");
      expect(out).not.toContain("one@A1 ends");
    },
  );

  test("says where there is none", () => {
    expect(call("pier-above-frost", "gate.frame.yaml", "--at", "tw").out).toContain(
      "gate.frame.yaml at tw has no finding of pier-above-frost.",
    );
    expect(call("tenon-thin", "gate.frame.yaml").out).toContain(
      "gate.frame.yaml has no finding of tenon-thin.",
    );
  });

  test.each([
    [["pier-above-frost", "none.frame.yaml"], "none.frame.yaml cannot be opened"],
    [["pier-abov-frost", "gate.frame.yaml"], "Did you mean `pier-above-frost`?"],
    [["pier-above-frost", "--at", "two"], "Name the file"],
    [["pier-above-frost", "gate.frame.yaml", "more"], "Name one check"],
  ])("%j is no call", (args, words) => {
    const { code, out, err } = call(...args);
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(err).toContain(words);
  });
});
