/** The model that the command line prints, solved by a solver that reads nothing else. */
import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import modelSchema from "../../schemas/model.schema.json" with { type: "json" };
import { run } from "../../server/cli/run.ts";
import type { OutsideCombination, OutsideModel } from "./outside-model.ts";
import { type OutsideAnswer, outside } from "./outside-solver.ts";

const FRAMES = [
  "samples/garden-arch",
  "samples/kayak-shelter",
  "samples/cider-press-pavilion",
  "test/frames/loft",
  "test/frames/purlins-on-principals",
  "test/frames/trussed-lean-to",
];
/** share of the largest figure of the same kind in the same combination */
const TOLERANCE = 0.005;
const validate = new Ajv2020({ strict: false, allErrors: true }).compile(modelSchema);

function modelOf(frame: string): OutsideModel {
  let out = "";
  const code = run(["model", "--format", "json", `${frame}.frame.yaml`], {
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

/** Combinations by how the rafters sit and what has let go: one matrix each. */
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

/** Named numbers: ours, the other solver's. */
type Pair = readonly [place: string, ours: number, other: number];

function pairs(place: string, ours: readonly number[], other: readonly number[] | undefined): Pair[] {
  return ours.map((v, m) => [`${place} [${m}]`, v, other?.[m] ?? Number.NaN]);
}

/** Forces, moments, shifts and turns, by kind. */
function compared({ answer }: OutsideCombination, other: OutsideAnswer): Record<string, Pair[]> {
  const reactions = answer.reactions.map(({ node, force }) => ({
    place: `support ${node}`,
    ours: force,
    other: other.reactions.get(node),
  }));
  const ends = answer.endForces.flatMap(({ element, i, j }) => {
    const found = other.endForces.get(element);
    return [
      { place: `${element} end i`, ours: i, other: found?.slice(0, 6) },
      { place: `${element} end j`, ours: j, other: found?.slice(6) },
    ];
  });
  const half = (list: typeof reactions, from: number): Pair[] =>
    list.flatMap((p) => pairs(p.place, p.ours.slice(from, from + 3), p.other?.slice(from, from + 3)));
  return {
    "reaction force": half(reactions, 0),
    "end force": half(ends, 0),
    "end moment": half(ends, 3),
    shift: answer.displacements.flatMap(({ node, motion }) =>
      pairs(node, motion.slice(0, 3), other.displacements.get(node)?.slice(0, 3)),
    ),
    turn: answer.displacements.flatMap(({ node, motion }) =>
      pairs(node, motion.slice(3), other.displacements.get(node)?.slice(3)),
    ),
  };
}

/** Places that differ by more than the tolerance. */
function apart(list: readonly Pair[]): string[] {
  const largest = Math.max(...list.map(([, , other]) => Math.abs(other)));
  return list
    .filter(([, ours, other]) => !(Math.abs(ours - other) <= TOLERANCE * largest))
    .map(([place, ours, other]) => `${place}: ${ours} for ${other}`);
}

describe.each(FRAMES)("%s", (frame) => {
  const model = modelOf(frame);

  test.each(
    byFrame(model).map((group): [string, number, number, () => typeof group] => [
      group[0].seats,
      group[0].answer.dropped.length,
      group.length,
      () => group,
    ]),
  )(
    "seats %s, %i let go: %i combinations within half a percent of the outside solver [derived]",
    (_seats, _dropped, _count, members) => {
      const group = members();
      outside(model, group).forEach((other, n) => {
        const { id, answer } = group[n]!;
        expect(answer.status, id).toBe("sound");
        expect(answer.endForces, id).toHaveLength(model.elements.length);
        expect(answer.displacements, id).toHaveLength(model.nodes.length);
        expect(other.residual, id).toBeLessThan(1e-6);
        for (const [kind, list] of Object.entries(compared(group[n]!, other)))
          expect(apart(list), `${id}: ${kind}`).toEqual([]);
      });
    },
    120_000,
  );
});

describe("a model that is not the one solved", () => {
  const model = modelOf("test/frames/loft");
  const [group] = byFrame(model);
  const changed = (id: string, by: Partial<OutsideModel["elements"][number]>): OutsideModel => ({
    ...model,
    elements: model.elements.map((e) => (e.id === id ? { ...e, ...by } : e)),
  });
  const kindsApart = (other: OutsideModel): string[] => {
    const [answer] = outside(other, group!);
    return Object.entries(compared(group![0], answer!)).flatMap(([kind, list]) =>
      apart(list).length > 0 ? [kind] : [],
    );
  };
  const tie = model.elements.find((e) => e.id.startsWith("tie@1") && e.releaseI)!;

  test("an end of a tie held that is free shows in forces, moments and motions", () => {
    const { releaseI: _, ...held } = tie;
    const other = { ...model, elements: model.elements.map((e) => (e === tie ? held : e)) };
    expect(kindsApart(other)).toEqual(["reaction force", "end force", "end moment", "shift", "turn"]);
  });

  test("a post a tenth softer shows in motions", () => {
    const post = model.elements.find((e) => e.id.startsWith("post@A1"))!;
    expect(kindsApart(changed(post.id, { E: 0.9 * post.E }))).toEqual(expect.arrayContaining(["shift"]));
  });

  test("the same model shows nothing", () => expect(kindsApart(changed(tie.id, {}))).toEqual([]));
});
