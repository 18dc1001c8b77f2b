/** Arrays that share a buffer (derived: no two of them share a number). */
import { expect, test } from "vitest";
import { Room } from "../../../server/core/analysis/room.ts";

test("what is taken from a room is nought, of its own length, and apart from all else", () => {
  const room = new Room(5);
  const taken = [room.take(2), room.take(3), room.take(4), room.take(0)];
  expect(taken.map((a) => [...a])).toEqual([[0, 0], [0, 0, 0], [0, 0, 0, 0], []]);
  taken.forEach((a, n) => {
    a.fill(n + 1);
  });
  expect(taken.map((a) => [...a])).toEqual([[1, 1], [2, 2, 2], [3, 3, 3, 3], []]);
});

test("what fits shares the buffer, and what no longer fits has one of its own", () => {
  const room = new Room(5);
  const [first, second, third] = [room.take(2), room.take(3), room.take(1)];
  expect(second.buffer).toBe(first.buffer);
  expect(third.buffer).not.toBe(first.buffer);
});
