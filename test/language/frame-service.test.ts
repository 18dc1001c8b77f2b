import { describe, expect, test, vi } from "vitest";
import { evaluate } from "../../server/core/evaluate.ts";
import { readFrame } from "../../server/document/read.ts";
import { diagnosticsOf } from "../../server/language/diagnostics.ts";
import { createFrameService } from "../../server/language/frame-service.ts";
import { SHED } from "../shed.ts";

const URI = "file:///shed.frame.yaml";

function watched() {
  const read = vi.fn(readFrame);
  const judge = vi.fn(evaluate);
  return { read, judge, service: createFrameService(undefined, { read, evaluate: judge }) };
}

describe("what is kept", () => {
  test("the same version is not read twice", () => {
    const { read, judge, service } = watched();
    const first = service.open(URI, 1, SHED);
    expect(service.open(URI, 1, SHED)).toBe(first);
    expect([read.mock.calls.length, judge.mock.calls.length]).toEqual([1, 1]);
  });

  test("a blank and a comment change no answer", () => {
    const { judge, service } = watched();
    const first = service.open(URI, 1, SHED);
    const second = service.open(URI, 2, SHED.replace("soil: sand", "soil:   sand  # from the pit"));
    expect(second.evaluation).toBe(first.evaluation);
    expect(judge).toHaveBeenCalledOnce();
  });

  test("but the findings stand where the text is now", () => {
    const { service } = watched();
    const broken = SHED.replace("section: 8x10", "section: 8x");
    const before = service.open(URI, 1, broken).findings.map(({ range }) => range.start.line);
    const after = service
      .open(URI, 2, `# a new line\n${broken}`)
      .findings.map(({ range }) => range.start.line);
    expect(before.length).toBeGreaterThan(0);
    expect(after).toEqual(before.map((line) => line + 1));
  });

  test("a new value is a new answer", () => {
    const { judge, service } = watched();
    const first = service.open(URI, 1, SHED);
    const second = service.open(URI, 2, SHED.replace("8 ft 6 in", "9 ft"));
    expect(second.evaluation).not.toBe(first.evaluation);
    expect(judge).toHaveBeenCalledTimes(2);
  });

  test("with only the writing at fault the model stands", () => {
    const { service } = watched();
    const first = service.open(URI, 1, SHED);
    const second = service.open(URI, 2, SHED.replace("soil: sand\n", "soil: sand\n  weather: fine\n"));
    expect(second.findings.map(({ finding }) => finding.check)).toContain("unknown-key");
    expect(second.evaluation?.model).toBe(first.evaluation?.model);
  });

  test("nothing, once the document is closed", () => {
    const { read, service } = watched();
    service.open(URI, 1, SHED);
    service.close(URI);
    expect(service.drawable(URI)).toBeUndefined();
    service.open(URI, 1, SHED);
    expect(read).toHaveBeenCalledTimes(2);
  });
});

describe("reading alone", () => {
  test("judges nothing, and the check after it reads nothing again", () => {
    const { read, judge, service } = watched();
    const { reading } = service.read(URI, 1, SHED);
    expect(service.read(URI, 1, SHED).reading).toBe(reading);
    expect(judge).not.toHaveBeenCalled();
    expect(service.open(URI, 1, SHED).reading).toBe(reading);
    expect(service.read(URI, 1, SHED).reading).toBe(reading);
    expect([read.mock.calls.length, judge.mock.calls.length]).toEqual([1, 1]);
    service.close(URI);
    service.read(URI, 1, SHED);
    expect(read).toHaveBeenCalledTimes(2);
  });

  test("that breaks down is no fault of the asker", () => {
    const broken = createFrameService(undefined, {
      read: () => {
        throw new Error("out of paper");
      },
    });
    expect(broken.read(URI, 1, SHED).reading).toBeUndefined();
    expect(broken.open(URI, 1, SHED).faults).toHaveLength(1);
  });
});

describe("in stages", () => {
  test("it comes to the same", async () => {
    const { service } = watched();
    const whole = createFrameService().open(URI, 1, SHED);
    const snapshot = await service.openInStages(URI, 1, SHED, () => true);
    expect(snapshot && diagnosticsOf(snapshot)).toEqual(diagnosticsOf(whole));
  });

  test("what is no longer wanted is dropped before the long part", async () => {
    const { judge, service } = watched();
    expect(await service.openInStages(URI, 1, SHED, () => false)).toBeUndefined();
    expect(judge).not.toHaveBeenCalled();
    expect(service.drawable(URI)).toBeUndefined();
  });

  test("a hover in between does the work, and the stages find it done", async () => {
    const { judge, service } = watched();
    const staged = service.openInStages(URI, 2, SHED, () => true);
    const asked = service.open(URI, 2, SHED);
    expect(await staged).toBe(asked);
    expect(judge).toHaveBeenCalledOnce();
  });
});

describe("what can be drawn", () => {
  test("stays while a line is half typed, and says that it is old", () => {
    const { service } = watched();
    const first = service.open(URI, 1, SHED);
    service.open(URI, 2, SHED.replace("section: 8x10", "section: 8x"));
    expect(service.drawable(URI)).toMatchObject({ version: 1, stale: true });
    expect(service.drawable(URI)?.model).toBe(first.evaluation?.model);
  });

  test("is new again when timbers are taken out on purpose", () => {
    const { service } = watched();
    service.open(URI, 1, SHED);
    service.open(URI, 2, SHED.replace(/^ {2}(tie|tie-end): .*\n/gm, ""));
    expect(service.drawable(URI)).toMatchObject({ version: 2, stale: false });
  });

  test("stays when all is gone", () => {
    const { service } = watched();
    service.open(URI, 1, SHED);
    service.open(URI, 2, "");
    expect(service.drawable(URI)).toMatchObject({ version: 1, stale: true });
  });

  test("is not there from the start", () => {
    const { service } = watched();
    service.open(URI, 1, "frame: Nothing yet\n");
    expect(service.drawable(URI)).toBeUndefined();
  });
});

describe("faults", () => {
  const broken = (): never => {
    throw new TypeError("no such beam\n    at secret");
  };

  test.each([
    ["reading", { read: broken }, "reading the file"],
    ["checking", { evaluate: broken }, "checking the frame"],
  ])("%s", (_, stages, what) => {
    const snapshot = createFrameService(undefined, stages).open(URI, 1, SHED);
    expect(snapshot.findings.map(({ finding }) => finding)).toMatchObject([
      { check: "check-failed", level: "error" },
    ]);
    const message = snapshot.findings[0]?.finding.message ?? "";
    expect(message).toContain(what);
    expect(message).toContain("no such beam");
    expect(message).not.toContain("secret");
    expect(snapshot.faults).toHaveLength(1);
  });

  test("are over when their cause is", () => {
    let fails = true;
    const service = createFrameService(undefined, {
      evaluate: (...args) => (fails ? broken() : evaluate(...args)),
    });
    service.open(URI, 1, SHED);
    fails = false;
    expect(service.open(URI, 2, SHED).faults).toEqual([]);
  });

  test.each([
    "",
    "\ufeff",
    "\u0000",
    "- a\n- b",
    "{",
    "a: &a [*a]",
    "x".repeat(2_000_000),
    "%YAML 1.1\n---\n",
  ])("no text is one: %#", (text) => {
    const { faults, findings } = createFrameService().open(URI, 1, text);
    expect(faults).toEqual([]);
    expect(findings.length).toBeGreaterThan(0);
  });
});
