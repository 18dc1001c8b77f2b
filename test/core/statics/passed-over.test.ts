/**
 * What is passed over, since nothing there can be worse than what is known, is never worse: each combination looked at alone
 * and in full gives the same worst of each timber.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { analyseFrame } from "../../../server/core/statics/analyse-frame.ts";
import { isSolved, rowOf } from "../../../server/core/statics/force-table.ts";
import { memberResults } from "../../../server/core/statics/member-results.ts";
import { TimberStress } from "../../../server/core/statics/member-stresses.ts";
import { shownCases } from "../../../server/core/statics/shown-case.ts";
import { TimberBend } from "../../../server/core/statics/timber-bend.ts";
import { STRESSES } from "../../../server/core/statics/worst-stress.ts";
import { readFrame } from "../../../server/document/read.ts";

const texts = ["samples", "test/frames"].flatMap((folder) =>
  readdirSync(new URL(`../../../${folder}/`, import.meta.url))
    .filter((name) => name.endsWith(".frame.yaml") && !name.startsWith("wrong"))
    .map(
      (name) => [name, readFileSync(new URL(`../../../${folder}/${name}`, import.meta.url), "utf8")] as const,
    ),
);

describe.each(texts)("%s", (_, text) => {
  const { basis, members, solution } = analyseFrame(buildModel(readFrame(text).frame))!;
  const cases = solution.cases.filter(isSolved);

  test("the worst stress of each kind is the most of the combinations, each alone", () => {
    const table = new Float64Array(rowOf(solution.hold.structure.elements.length, 0));
    for (const plan of basis.plans) {
      const uses = members.get(plan.timber.id)!.uses;
      for (const what of STRESSES) {
        let most = 0;
        for (const { frameCase, combined } of cases) {
          const stress = new TimberStress(plan);
          stress.show(plan.values.get(frameCase.combination.duration.value)!, combined, table, 0);
          most = Math.max(most, stress.worst(what)?.ratio ?? 0);
        }
        const told = uses.find((use) => use.what === what)?.ratio;
        if (told !== undefined) expect(told, `${plan.timber.id} ${what}`).toBe(most);
        else expect(most, `${plan.timber.id} ${what}`).toBeLessThan(0.01);
      }
    }
  });

  test("the farthest bend is the most of the combinations, each alone", () => {
    const table = new Float64Array(rowOf(solution.hold.structure.elements.length, 0));
    const shown = shownCases(solution.cases, false);
    for (const [plan, bent] of basis.bends) {
      const uses = members.get(plan.timber.id)!.uses;
      const values = (duration: number) => plan.values.get(shown.durations[duration]!.value)!;
      const most = { live: 0, total: 0 };
      for (const one of shown.cases) {
        const bend = new TimberBend(bent, shown.loads);
        for (const { solved, duration, comesAndGoes } of shown.cases)
          if (!comesAndGoes) bend.keepDead(values(duration), solved, table);
        bend.show(values(one.duration), one, table);
        most.live = Math.max(most.live, bend.live.ratio);
        most.total = Math.max(most.total, bend.total.ratio);
      }
      for (const what of ["live", "total"] as const) {
        const told = uses.find((use) => use.what === `${what}-deflection`)?.ratio ?? 0;
        expect(told, `${plan.timber.id} ${what}`).toBe(most[what]);
      }
    }
  });
});

test("where it looks first changes no result", () => {
  const text = readFileSync(new URL("../../../samples/goat-shed.frame.yaml", import.meta.url), "utf8");
  const frame = (snow: string) => buildModel(readFrame(text.replace(/ground: \d+/, `ground: ${snow}`)).frame);
  const own = analyseFrame(frame("40"))!;
  const after = analyseFrame(frame("40"), analyseFrame(frame("5")))!;
  expect([...after.members.values()].map((m) => m.uses)).toEqual(
    [...own.members.values()].map((m) => m.uses),
  );
});

test("of combinations that ask the same the earlier one is named, wherever it looks first", () => {
  const text = readFileSync(
    new URL("../../../samples/cider-press-pavilion.frame.yaml", import.meta.url),
    "utf8",
  );
  const { basis, solution } = analyseFrame(buildModel(readFrame(text).frame))!;
  const copies = solution.cases.map((c) => ({
    ...c,
    frameCase: { ...c.frameCase, id: `${c.frameCase.id} again` },
  }));
  const twice = [...solution.cases, ...copies];
  const own = memberResults(basis, twice);
  const before = new Map(
    [...own].map(([id, m]) => [
      id,
      { ...m, uses: m.uses.map((u) => ({ ...u, caseId: `${u.caseId} again` })) },
    ]),
  );
  const after = memberResults(basis, twice, before);
  expect([...after.values()].map((m) => m.uses)).toEqual([...own.values()].map((m) => m.uses));
});
