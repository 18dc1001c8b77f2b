import { describe, expect, it } from "vitest";
import { type Ask, askThrough, type Reply } from "../../client/new-frame/course.ts";
import { frameName, freeName } from "../../client/new-frame/name.ts";
import type { NewFrameQuestion } from "../../server/protocol.ts";

const questions = ["roof", "width", "snow"].map(
  (id): NewFrameQuestion => ({ id, title: id, sentence: id, default: `${id}?`, mayBeUnknown: false }),
);
const answer = (value: string): Reply => ({ kind: "answer", value });
const back: Reply = { kind: "back" };
const cancel: Reply = { kind: "cancel" };

/** Replies in turn, and keeps what was asked: `id=given`. */
function scripted(...replies: readonly Reply[]): { readonly ask: Ask; readonly asked: string[] } {
  const asked: string[] = [];
  const ask: Ask = async ({ id }, given) => {
    asked.push(`${id}=${given}`);
    return replies[asked.length - 1] ?? expect.unreachable(`asked once too often: ${id}`);
  };
  return { ask, asked };
}

describe("the way through the questions of New Frame", () => {
  it("asks each once, beginning with its default", async () => {
    const { ask, asked } = scripted(answer("shed"), answer("12 ft"), answer("unknown"));
    const answers = await askThrough({ questions, answers: { units: "inch" }, from: 0, to: 3 }, ask);
    expect(answers).toEqual({ units: "inch", roof: "shed", width: "12 ft", snow: "unknown" });
    expect(asked).toEqual(["roof=roof?", "width=width?", "snow=snow?"]);
  });

  it("goes back to what was answered, and keeps it", async () => {
    const { ask, asked } = scripted(answer("shed"), back, answer("gable"), answer("10 ft"), answer("30 psf"));
    expect(await askThrough({ questions, answers: {}, from: 0, to: 3 }, ask)).toEqual({
      roof: "gable",
      width: "10 ft",
      snow: "30 psf",
    });
    expect(asked).toEqual(["roof=roof?", "width=width?", "roof=shed", "width=width?", "snow=snow?"]);
  });

  it("goes back from the first question to what stands before it", async () => {
    expect(await askThrough({ questions, answers: {}, from: 0, to: 3 }, scripted(back).ask)).toBe("back");
  });

  it.each([0, 1, 2])("gives nothing when it is cancelled at question %i", async (index) => {
    const { ask } = scripted(...Array.from({ length: index }, () => answer("x")), cancel);
    expect(await askThrough({ questions, answers: {}, from: 0, to: 3 }, ask)).toBe("cancel");
  });

  it("asks again only for the answer that no frame can be made for", async () => {
    const { ask, asked } = scripted(answer("9 ft"));
    const answers = { roof: "shed", width: "40 ft", snow: "90 psf" };
    expect(await askThrough({ questions, answers, from: 1, to: 2 }, ask)).toEqual({
      ...answers,
      width: "9 ft",
    });
    expect(asked).toEqual(["width=40 ft"]);
  });
});

describe("names of new frames", () => {
  it.each([
    ["/a/shed.frame.yaml", "/a/shed.frame.yaml"],
    ["/a/shed.FRAME.YML", "/a/shed.FRAME.YML"],
    ["/a/shed", "/a/shed.frame.yaml"],
    ["/a/shed.yaml", "/a/shed.frame.yaml"],
    ["/a/shed.frame", "/a/shed.frame.yaml"],
    ["/a.yaml/my shed 2.0", "/a.yaml/my shed 2.0.frame.yaml"],
  ])("%s is kept as %s", (typed, kept) => expect(frameName(typed)).toBe(kept));

  it("takes the first number that is free", () => {
    expect(freeName("f", new Set())).toBe("f.frame.yaml");
    expect(freeName("f", new Set(["f.frame.yaml", "f-2.frame.yaml"]))).toBe("f-3.frame.yaml");
  });
});
