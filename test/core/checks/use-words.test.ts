/** How the limit of a check is said. */
import { describe, expect, test } from "vitest";
import { fromFoot, limitWords } from "../../../server/core/checks/members/use-words.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import { END_GRAIN } from "../../../server/core/members/bearing.ts";
import { checked, loft, use } from "../statics/members.ts";

const inch = makeSay("inch");
const mm = makeSay("mm");

describe("the value that a bearing goes by", () => {
  const across = use(checked(loft("4x8")), "joist.2", "bearing");
  const endGrain = { ...across, factors: [...across.factors, END_GRAIN] };

  test("across the grain and at an angle F_c⊥, on end grain F_c (NDS 3.10) [memory]", () => {
    expect(limitWords(across, inch)).toMatch(/^F_c⊥ \d+ psi/);
    expect(limitWords(endGrain, inch)).toMatch(/^F_c \d+ psi.* × f_c\/F_c\* 0\.75$/);
  });
});

test("a place in a timber: to the nearest 1/16 in, in millimetres as it is", () => {
  expect(fromFoot(12.05, inch)).toBe("12 1/16 in from its foot");
  expect(fromFoot(12.05, mm)).toBe("306 mm from its foot");
  expect(fromFoot(0.01, inch)).toBe("at its foot");
});
