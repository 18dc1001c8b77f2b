import { expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { fixed, gate, idsOf } from "./gate.ts";

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
