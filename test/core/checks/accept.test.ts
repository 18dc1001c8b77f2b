import { describe, expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { SHED } from "../../shed.ts";
import { findingsOf, gate, idsOf } from "./gate.ts";

/** Both piers end above the frost. */
const shallow = (accept: string): string =>
  gate({
    piers: `
      piers:
        all: {under: post, kind: tube, diameter: 14 in, depth: 20 in, anchor: {kind: embedded-strap}}
    `,
    accept,
  });

describe("accept", () => {
  test("without a place it covers every place, and the finding carries the reason", () => {
    const text = shallow(`accept: [{check: pier-above-frost, because: "rock at 20 in"}]\n`);
    const found = findingsOf(text).map(({ finding }) => finding);
    expect(found.map(({ check, accepted, places }) => [check, accepted, places])).toEqual([
      ["pier-above-frost", "rock at 20 in", ["all@A1", "all@A2"]],
    ]);
    expect(idsOf(text)).toEqual([]);
  });

  test("with a place it covers that place only, and the others stand", () => {
    const text = shallow(`accept: [{check: pier-above-frost, at: all@A2, because: "rock at 20 in"}]\n`);
    const found = findingsOf(text).map(({ finding }) => finding);
    expect(found.map(({ accepted, places }) => [accepted, places])).toEqual([
      [undefined, ["all@A1"]],
      ["rock at 20 in", ["all@A2"]],
    ]);
  });

  test("two places with two reasons are two accepted findings", () => {
    const text = shallow(
      `accept: [{check: pier-above-frost, at: all@A2, because: "rock"}, {check: pier-above-frost, at: all@A1, because: "sand"}]\n`,
    );
    const reasons = findingsOf(text).map(({ finding }) => finding.accepted);
    expect(reasons.sort()).toEqual(["rock", "sand"]);
    expect(idsOf(text)).toEqual([]);
  });

  test("a frame that is accepted to rack says that its timbers were not checked", () => {
    const because = 'because: "boarded up"';
    const found = (accept: string) =>
      findingsOf(gate({ accept }), true).map(({ finding: { check, level, accepted } }) => [
        check,
        accepted === undefined ? level : "accepted",
      ]);
    const [along, across] = [
      ["frame-racks", "accepted"],
      ["frame-racks", "accepted"],
    ];
    expect(found("")).toEqual([
      ["frame-racks", "error"],
      ["frame-racks", "error"],
    ]);
    expect(found(`accept: [{check: frame-racks, ${because}}]\n`)).toEqual([
      along,
      across,
      ["loads-unanswered", "warning"],
    ]);
    expect(
      found(`accept: [{check: frame-racks, ${because}}, {check: loads-unanswered, ${because}}]\n`),
    ).toEqual([along, across, ["loads-unanswered", "warning"], ["accept-idle", "note"]]);
  });
});

test("an accepted end in mid-air does not hide that nothing was checked", () => {
  const rail = SHED.replace(
    "joints:\n",
    "  rail: {kind: girt, section: 6x6, walls: [A], from: 1, to: 5 ft, top: 4 ft}\njoints:\n",
  ).replace(/ {2}snow: .*\n/, "");
  const found = (accept: string): string[] =>
    findingsOf(`${rail}${accept}`, true).flatMap(({ finding: { check, accepted, level, message } }) =>
      ["end-unsupported", "loads-unanswered"].includes(check)
        ? [`${accepted === undefined ? level : "accepted"} ${check} ${message}`]
        : [],
    );
  expect(found("")).toEqual([expect.stringMatching(/^error end-unsupported /)]);
  expect(found('accept: [{check: end-unsupported, because: "a gate, hung later"}]\n')).toEqual([
    expect.stringMatching(/^accepted end-unsupported /),
    expect.stringMatching(
      /^warning loads-unanswered That an end hangs in mid-air is accepted here, .* so no timber, joint or pier was checked under them\./,
    ),
  ]);
});

findingsFixture(
  "accept-idle: what it accepted is not there, or not at that place, or no check at all",
  shallow(`
    accept:
      - {check: pier-above-frost, at: all@A1, because: "rock"}
      - {check: tenon-thin, because: "old"}
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ note accept-idle: There is no finding of tenon-thin any more. Remove this entry
      - {check: pier-above-frost, at: all@B1, because: "rock"}
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ note accept-idle: There is no finding of pier-above-frost at all@B1. Remove this entry, or correct its place.
      - {check: pier-above-forst, because: "rock"}
    #           ^^^^^^^^^^^^^^^^ note accept-idle: There is no check called pier-above-forst, so this entry accepts nothing. Did you mean pier-above-frost?
      - {check: loads-unanswered, because: "boarded"}
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ note accept-idle: A finding of loads-unanswered cannot be accepted. Remove this entry.
      - {check: gold, because: "plated"}
    #           ^^^^ note accept-idle: There is no check called gold, so this entry accepts nothing.
  `),
  { only: ["note"] },
);

describe("accept at an entry", () => {
  const thin = (accept: string): string =>
    gate({
      joints:
        "joints: {head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 1 in, length: 4 in}}}\n",
      accept: `accept: [${accept}]\n`,
    });
  const reasons = (text: string): (string | undefined)[] =>
    findingsOf(text)
      .map(({ finding }) => finding.accepted)
      .sort();

  test("a joint entry covers all places of the joint", () => {
    expect(idsOf(thin(`{check: tenon-thin, at: head, because: "small load"}`))).toEqual([]);
  });

  test("an entry that only begins alike covers nothing", () => {
    const text = thin(`{check: tenon-thin, at: hea, because: "small load"}`);
    expect(idsOf(text).sort()).toEqual(["accept-idle", "tenon-thin"]);
  });

  test("a place goes before its entry, the entry before all places, whatever their order", () => {
    const text = thin(
      `{check: tenon-thin, because: "all"}, {check: tenon-thin, at: head, because: "head"}, {check: tenon-thin, at: head@A1, because: "one"}`,
    );
    expect(reasons(text)).toEqual([undefined, "head", "one"].sort());
  });

  test("a pier entry covers its piers, a finding at the entry itself too", () => {
    const text = shallow(`accept: [{check: pier-above-frost, at: all, because: "rock"}]\n`);
    expect(idsOf(text)).toEqual([]);
  });
});
