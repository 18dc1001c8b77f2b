/** The model that the command line prints, solved by a solver that reads nothing else. */
import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import modelSchema from "../../schemas/model.schema.json" with { type: "json" };
import { run } from "../../server/cli/run.ts";
import { type OutsideCombination, type OutsideModel, outside } from "./outside-solver.ts";

const SAMPLES = ["garden-arch", "kayak-shelter", "cider-press-pavilion"];
const validate = new Ajv2020({ strict: false, allErrors: true }).compile(modelSchema);

function modelOf(sample: string): OutsideModel {
  let out = "";
  const code = run(["model", "--format", "json", `samples/${sample}.frame.yaml`], {
    read: (file) => readFileSync(file),
    write: () => undefined,
    out: (text) => {
      out += text;
    },
    err: () => undefined,
    color: false,
  });
  expect(code).toBe(0);
  const value: unknown = JSON.parse(out);
  expect(validate(value), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
  return value as OutsideModel;
}

/** Frames by the elements that have let go: each is factorised once. */
function byFrame(model: OutsideModel): [OutsideCombination, ...OutsideCombination[]][] {
  const groups = new Map<string, [OutsideCombination, ...OutsideCombination[]]>();
  for (const c of model.combinations) {
    const key = [c.seats, ...[...c.answer.dropped].sort()].join();
    const own = groups.get(key);
    if (own) own.push(c);
    else groups.set(key, [c]);
  }
  return [...groups.values()];
}

/** As many frames with dropped members as are solved again: the full matrix is slow. */
const DROPPED_FRAMES = 8;
const TOLERANCE = 0.005;

describe.each(SAMPLES)("%s", (sample) => {
  const model = modelOf(sample);
  const groups = byFrame(model);
  const whole = groups.filter(([first]) => first.answer.dropped.length === 0);
  const partly = groups.filter(([first]) => first.answer.dropped.length > 0).slice(0, DROPPED_FRAMES);

  test.each(
    [...whole, ...partly].map((group): [string, number, () => typeof group] => [
      group[0].seats,
      group[0].answer.dropped.length,
      () => group,
    ]),
  )(
    "seats %s, %i dropped: reactions and end forces within 0.5 %%",
    (_seats, _dropped, members) => {
      const group = members();
      const solve = outside(model, group[0].seats, group[0].answer.dropped);
      for (const combination of group) {
        const { answer, id } = combination;
        expect(answer.status, id).toBe("sound");
        const { reactions, endForces } = solve(combination);
        const largest = Math.max(...answer.reactions.flatMap(({ force }) => force.slice(0, 3).map(Math.abs)));
        expect(largest, id).toBeGreaterThan(10);
        for (const { node, force } of answer.reactions)
          force.slice(0, 3).forEach((v, m) => {
            expect(
              Math.abs(v - (reactions.get(node)?.[m] ?? Number.NaN)),
              `${id} reaction of ${node}`,
            ).toBeLessThan(TOLERANCE * Math.max(Math.abs(v), largest / 100));
          });
        // moments are held against the moment that the largest force makes on an arm of a foot
        for (const { element, i, j } of answer.endForces) {
          const other = endForces.get(element) ?? [];
          [...i, ...j].forEach((v, m) => {
            const least = (m % 6 < 3 ? largest : 12 * largest) / 100;
            expect(
              Math.abs(v - (other[m] ?? Number.NaN)),
              `${id} end force ${m} of ${element}: ${v} against ${other[m]}`,
            ).toBeLessThan(TOLERANCE * Math.max(Math.abs(v), least));
          });
        }
      }
    },
    60_000,
  );
});
