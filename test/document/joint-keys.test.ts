/** Keys of single kinds of joint: what the schema takes, and what is read of it. */
import { expect, test } from "vitest";
import { fromInches } from "../../server/core/quantity/length.ts";
import { readFrame } from "../../server/document/read.ts";
import { linesOf } from "./facts.ts";

/** Nothing but a joint: what the file lacks besides is not looked at. */
const text = (joint: string): string => `frame: Test\nformat: 1\njoints:\n  one: ${joint}\n`;
const unknownIn = (joint: string): string[] =>
  linesOf(text(joint)).filter((line) => !line.startsWith("missing-key"));
const jointOf = (joint: string) => readFrame(text(joint)).frame.joints[0];

test.each([
  "{kind: stub-tenon, of: a, into: b, housing: 1/2 in, tenon: {thickness: 2 in, length: 2 in, set-in: 2 in}}",
  "{kind: corner-bridle, of: a, into: b, tenon: {thickness: 2 1/2 in}, pegs: {count: 2}}",
  "{kind: dovetail-lap, of: a, into: b, dovetail: {length: 8 in, depth: 4 in, flare: 1 in}, pegs: {count: 0}}",
  "{kind: bladed-scarf, of: a, into: a, lap: 24 in, blade: {thickness: 2 in, length: 4 in}}",
  "{kind: stop-splayed-scarf, of: a, into: a, lap: 36 in, butt: 2 in, wedge: {species: white-oak, slope: 1:12}}",
  "{kind: screwed-brace, of: a, into: b, housing: 1/2 in, screws: {count: 3, diameter: 3/8 in, length: 10 in}}",
])("%s has nothing that the language does not know", (joint) => {
  expect(unknownIn(joint)).toEqual([]);
});

test("blades, butts and screws are read", () => {
  expect(jointOf("{kind: bladed-scarf, of: a, into: a, blade: {thickness: 2 in}}")?.blade).toMatchObject({
    thickness: fromInches(2),
    length: undefined,
  });
  expect(jointOf("{kind: stop-splayed-scarf, of: a, into: a, butt: 3 in}")?.butt).toBe(fromInches(3));
  expect(jointOf("{kind: screwed-brace, of: a, into: b, screws: {diameter: 3/8 in}}")?.screws).toMatchObject({
    path: "/joints/one/screws",
    count: 2,
    diameter: fromInches(0.375),
    length: undefined,
  });
  expect(jointOf("{kind: screwed-brace, of: a, into: b}")?.screws).toBeUndefined();
});

test("screws with a value that cannot be read are unread, not the usual ones", () => {
  expect(jointOf("{kind: screwed-brace, of: a, into: b, screws: {count: 2, length: 8 inn}}")?.screws).toBe(
    "unread",
  );
});

test("keys that a kind does not have are named", () => {
  expect(linesOf(text("{kind: stub-tenon, of: a, into: b, pegs: {count: 2}}")).join()).toMatch(
    /unknown-key.*pegs/,
  );
  expect(linesOf(text("{kind: stub-tenon, of: a, into: b, tenon: {through: true}}")).join()).toMatch(
    /unknown-key.*through/,
  );
});
