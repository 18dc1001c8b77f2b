/** Which kinds of joint can be cut where: rules of the trade, common practice, no source. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { jointKindOf } from "../../../server/core/joinery/kinds/index.ts";
import { modelOf } from "../model/support.ts";

const FRAMES = ["samples", "test/frames"].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".frame.yaml"))
    .map((name) => join(folder, name)),
);

test.each(FRAMES)("every joint of %s can be cut where it stands", (file) => {
  const { joints } = modelOf(readFileSync(file, "utf8"));
  const unfit = joints.flatMap(({ id, kind, of, end, into, meeting }) => {
    const intoEnd = meeting.a.id === into.id ? meeting.aEnd : meeting.bEnd;
    const why = jointKindOf(kind).unfit({ of, end, into, intoEnd });
    return why ? [[id, kind, why]] : [];
  });
  expect(joints.length).toBeGreaterThan(0);
  expect(unfit).toEqual([]);
});
