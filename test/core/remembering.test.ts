import { expect, test } from "vitest";
import { remembering } from "../../server/core/collect.ts";

test("what is made of a key is made once, also where it is nothing", () => {
  const asked: string[] = [];
  const firstLetter = remembering((word: string) => {
    asked.push(word);
    return word[0];
  });
  expect(["oak", "", "oak", ""].map(firstLetter)).toEqual(["o", undefined, "o", undefined]);
  expect(asked).toEqual(["oak", ""]);
});

test("a key whose making fails is tried again", () => {
  let fails = true;
  const made = remembering((key: string) => {
    if (fails) throw new Error(key);
    return key;
  });
  expect(() => made("oak")).toThrow("oak");
  fails = false;
  expect(made("oak")).toBe("oak");
});
