import { expect, test } from "vitest";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { findingsFixture } from "../../fixtures.ts";
import { ROOFED } from "../../roofed-shed.ts";
import { findingsOf, fixed, gate, idsOf } from "./gate.ts";

const post = (measured: string, keys = "section: 8x8"): string =>
  gate({
    members: `
      members:
        post: {kind: post, ${keys}, at: [A1, A2], from: pier-top, to: plate, measured: ${measured}}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
  });

findingsFixture(
  "stick-undersize: a stick short in one way, a place of the other",
  gate({
    members: `
      members:
        post:
          kind: post
          section: 8x8
          at: [A1, A2]
          from: pier-top
          to: plate
          measured:
            post@A1: {width: 7 7/8 in, depth: 8 1/8 in}
            #                ^^^^^^^^ error stick-undersize: post@A1 measures 7 7/8 in in width, 1/8 in less than the perfect 8 in
            post@A2:
              - {width: 8 1/4 in, depth: 8 in, at: 0}
              - {width: 8 in, depth: 7 3/4 in, at: 4 ft}
            #                        ^^^^^^^^ error stick-undersize: post@A2 measures 7 3/4 in in depth at 48 in from its first end, 1/4 in less than the perfect 8 in
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
  }),
);

findingsFixture(
  "stick-undersize: measured for a whole entry, said once",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate, measured: {width: 7 1/2 in, depth: 8 in}}
        #                                                                                           ^^^^^^^^ error stick-undersize: 1/2 in less than the perfect 8 in
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
  }),
);

test("exact and larger sticks are sound; half a mark is not measured", () => {
  const none = idsOf(gate({}));
  expect(idsOf(post("{width: 8 in, depth: 8 in}"))).toEqual(none);
  expect(idsOf(post("{width: 8 1/2 in, depth: 8 3/8 in}"))).toEqual(none);
  expect(idsOf(post("{width: 7 63/64 in, depth: 8 in}"))).toEqual(none);
});

findingsFixture(
  "stick-oversize: more than half an inch over",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate, measured: {width: 8 1/2 in, depth: 8 9/16 in}}
        #                                                                                                            ^^^^^^^^^ note stick-oversize: 9/16 in over the perfect 8 in
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
  }),
);

test("stick-oversize: twice its section or more is another number or another unit, and no note", () => {
  const of = (measured: string) =>
    findingsOf(post(measured)).flatMap(({ finding }) =>
      finding.check === "stick-oversize" ? [[finding.level, /mistyped/.test(finding.message)]] : [],
    );
  expect(of("{width: 15 15/16 in, depth: 8 in}")).toEqual([["note", false]]);
  expect(of("{width: 16 in, depth: 8 in}")).toEqual([["warning", true]]);
  expect(of("{width: 400 in, depth: 60 in}")).toEqual([
    ["warning", true],
    ["warning", true],
  ]);
});

findingsFixture(
  "measured-off-stick: past its end; unknown-id: a stick of another entry",
  gate({
    members: `
      members:
        post:
          kind: post
          section: 8x8
          at: [A1, A2]
          from: pier-top
          to: plate
          measured:
            post@A1: {width: 8 in, depth: 8 in, at: 20 ft}
            #                                       ^^^^^ warning measured-off-stick: post@A1 is measured at 20'-0", and is
            post@A7: {width: 8 in, depth: 8 in}
            #@6-13 error unknown-id: “post@A7”
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
  }),
);

test("the fix makes the section one that every measured stick has inside it", () => {
  const text = post("{post@A1: {width: 7 7/8 in, depth: 8 1/8 in}, post@A2: {width: 8 in, depth: 7 3/4 in}}");
  const mended = fixed(text, "stick-undersize");
  expect(mended).toContain("section: 7 7/8 x 7 3/4");
  expect(idsOf(mended)).not.toContain("stick-undersize");
});

test("a misspelt stick is renamed, and what was measured stays", () => {
  const text = post("{post@A7: {width: 8 1/4 in, depth: 8 in}, post@A1: {width: 8 in, depth: 8 in}}");
  expect(fixed(text, "unknown-id")).toContain("measured: {post@A2: {width: 8 1/4 in, depth: 8 in}, post@A1:");
});

test("of a turned timber, by its section’s own sides", () => {
  const text = post("{width: 5 3/4 in, depth: 8 in}", "section: 6x8, turned: true");
  expect(idsOf(text)).toContain("stick-undersize");
  expect(fixed(text, "stick-undersize")).toContain("section: 5 3/4 x 8");
});

test("what is measured wrongly is said like any other slip", () => {
  expect(idsOf(post("{width: 8 in}"))).toContain("missing-key");
  expect(idsOf(post("{width: 8 in, depth: eight}"))).toContain("unreadable-quantity");
  expect(idsOf(post("{width: 8 in, depht: 8 in}"))).toContain("unknown-key");
  expect(idsOf(post("[{width: 8 in, depth: 8 in}]"))).toContain("missing-key");
  expect(idsOf(post("8 1/4 in"))).toContain("wrong-shape");
});

const rafters = (measured: string): string => {
  const roof = "rafters: {section: 4x6, ";
  expect(ROOFED).toContain(roof);
  return ROOFED.replace(roof, `${roof}measured: ${measured}, `);
};
const said = (text: string): string[] =>
  findingsOf(text, true)
    .filter(({ finding }) => finding.level !== "note")
    .map(({ finding }) => `${finding.check} ${finding.path} ${finding.message}`);

test("the roof's own rafters: sound ones say nothing", () => {
  expect(said(rafters("{width: 4 in, depth: 6 in}"))).toEqual([]);
  expect(said(rafters("{rafter@A.1: {width: 4 1/8 in, depth: 6 1/4 in}}"))).toEqual([]);
});
test("stick-undersize: one of the roof's own rafters, along it, and the section that the fix writes", () => {
  const text = rafters(
    "{rafter@A.2: [{width: 4 in, depth: 6 in, at: 0}, {width: 4 in, depth: 5 3/4 in, at: 4 ft}]}",
  );
  expect(said(text)).toEqual([
    expect.stringMatching(
      /^stick-undersize \/roof\/rafters\/measured\/rafter@A\.2\/1\/depth rafter@A\.2 measures 5 3\/4 in in depth at 48 in from its first end, 1\/4 in less than the perfect 6 in/,
    ),
  ]);
  const mended = fixed(text, "stick-undersize", 0, true);
  expect(mended).toContain("section: 4 x 5 3/4");
  expect(said(mended).filter((line) => line.startsWith("stick-"))).toEqual([]);
});
test("stick-undersize: every one of the roof's own rafters, said once", () => {
  const [found, ...more] = said(rafters("{width: 3 3/4 in, depth: 6 in}"));
  expect(more).toEqual([]);
  expect(found).toMatch(
    /^stick-undersize \/roof\/rafters\/measured\/width rafter@A\.1 measures 3 3\/4 in in width/,
  );
});
test("of the roof's own rafters: past the end, a stick that is not there, and far over", () => {
  expect(said(rafters("{rafter@B.1: {width: 4 in, depth: 6 in, at: 40 ft}}"))).toEqual([
    expect.stringContaining(
      "measured-off-stick /roof/rafters/measured/rafter@B.1/at rafter@B.1 is measured at",
    ),
  ]);
  const unknown = rafters("{rafter@A.77: {width: 4 in, depth: 6 in}}");
  expect(said(unknown)).toEqual([expect.stringContaining("unknown-id /roof/rafters/measured/rafter@A.77")]);
  expect(fixed(unknown, "unknown-id", 0, true)).toMatch(
    /measured: \{rafter@A\.\d: \{width: 4 in, depth: 6 in\}\}/,
  );
  expect(idsOf(rafters("{width: 4 in, depth: 7 in}"))).toContain("stick-oversize");
  expect(idsOf(rafters("{width: 4 in}"))).toContain("missing-key");
});
test("what the roof's rafters measure takes no part in how the frame carries", () => {
  const service = createFrameService();
  const before = service.open("file:///m.frame.yaml", 1, ROOFED).evaluation?.results.frame;
  const after = service.open("file:///m.frame.yaml", 2, rafters("{width: 4 1/8 in, depth: 6 in}")).evaluation
    ?.results.frame;
  expect(after?.solution).toBe(before?.solution);
});
