/** How the limit of a check is said. */
import { describe, expect, test } from "vitest";
import { fromFoot, limitWords } from "../../../server/core/checks/members/use-words.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import { checked, loft, use } from "../statics/members.ts";

const inch = makeSay("inch");
const mm = makeSay("mm");

describe("the value that a bearing goes by", () => {
  const pressed = use(checked(loft("4x8")), "tie@1", "bearing");
  const at = (angle: number) => {
    const { bearing } = pressed;
    return limitWords(bearing ? { ...pressed, bearing: { ...bearing, angle } } : pressed, inch);
  };

  test("across the grain and at an angle F_c⊥, along it F_c (NDS 3.10) [published]", () => {
    expect(at(90)).toMatch(/^F_c⊥ \d+ psi/);
    expect(at(60)).toMatch(/^F_c⊥ \d+ psi/);
    expect(at(0)).toMatch(/^F_c \d+ psi/);
  });
});

test("a place in a timber: to the nearest 1/16 in, in millimetres as it is", () => {
  expect(fromFoot(12.05, inch)).toBe("12 1/16 in from its foot");
  expect(fromFoot(12.05, mm)).toBe("306 mm from its foot");
  expect(fromFoot(0.01, inch)).toBe("at its foot");
});
