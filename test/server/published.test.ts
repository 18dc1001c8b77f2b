import { expect, test } from "vitest";
import { createFrameService } from "../../server/language/frame-service.ts";
import { createPublished } from "../../server/published.ts";

const URI = "file:///a.frame.yaml";
const snapshot = (version: number) => createFrameService().open(URI, version, "frame: A\n");

test("gives what is there at once", async () => {
  const published = createPublished();
  const two = snapshot(2);
  published.put(URI, 2, two);
  expect(await published.at(URI, 2)).toBe(two);
});

test("waits for the version, past older ones", async () => {
  const published = createPublished();
  const waiting = published.at(URI, 3);
  published.put(URI, 2, snapshot(2));
  const three = snapshot(3);
  published.put(URI, 3, three);
  expect(await waiting).toBe(three);
});

test("gives up when overtaken, broken down or closed", async () => {
  const published = createPublished();
  const [overtaken, broken, closed] = [published.at(URI, 1), published.at(URI, 2), published.at(URI, 9)];
  published.put(URI, 2, undefined);
  published.forget(URI);
  expect(await Promise.all([overtaken, broken, closed])).toEqual([undefined, undefined, undefined]);
});
