/** What joints leave of a post, and of its foot where the anchor holds it. Limits: common practice, no source. */
import { expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, gate, THREE_BENTS } from "./gate.ts";

/** A 6 in post with a girt from either side, each housed 1 in; the tenons meet in the middle. */
const crossed = (thickness: string, marker = ""): string =>
  gate({
    grid: THREE_BENTS,
    members: `
      members:
        post: {kind: post, section: 6x6, at: [A1, A2, A3], from: pier-top, to: plate}
        ${marker}
        plate: {kind: plate, section: 6x6, walls: [A], from: 1, to: 3, top: eave}
        girt: {kind: girt, section: 6x6, walls: [A], from: 1, to: 3, top: 4 ft}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 1 1/2 in, length: 3 in}}
        ends: {kind: mortise-and-tenon, of: girt, into: post, housing: 1 in, tenon: {thickness: ${thickness}, length: 2 in}, pegs: {count: 0}}
    `,
  });

findingsFixture(
  // housings leave 4 in of 6, the tenons 4 in of 6 of these: 16 of 36 in²
  "section-cut-away: two housings and what their tenons take (plane geometry)",
  crossed(
    "2 in",
    "#                           ^^^ warning section-cut-away: ends@A2.head and ends@A2.foot leave 44 % of the section of post@A2, 33 in along it",
  ),
);

test("section-cut-away: half of the section is enough", () => {
  const found = (thickness: string) =>
    findingsOf(crossed(thickness)).map(({ finding }) => `${finding.check} ${finding.value?.toFixed(4)}`);
  expect(found("1 9/16 in")).toEqual(["section-cut-away 0.4931"]);
  expect(found("1 1/2 in")).toEqual([]);
});

test("section-cut-away: no place near the limit is passed over before it is worked out", () => {
  for (let sixteenths = 20; sixteenths <= 30; sixteenths++) {
    const left = (4 * (6 - sixteenths / 16)) / 36;
    const found = findingsOf(crossed(`${sixteenths}/16 in`)).flatMap(({ finding }) =>
      finding.check === "section-cut-away" ? [finding.value?.toFixed(9)] : [],
    );
    expect(found, `${sixteenths}/16 in`).toEqual(left < 1 / 2 ? [left.toFixed(9)] : []);
  }
});

/** The post stands 1 in above its pier, with its foot at 9 in; the rail’s lower edge is 6 in below its top. */
const low = (top: string, anchor = "embedded-strap", marker = ""): string =>
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        rail: {kind: girt, section: 6x6, walls: [A], from: 1, to: 2, top: ${top}}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        rail-end: {kind: mortise-and-tenon, of: rail, into: post, tenon: {thickness: 1 1/2 in, length: 4 in}}
      ${marker}
    `,
    piers: `
      piers:
        all: {under: post, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: ${anchor}, stand-off: 1 in}}
    `,
  });

findingsFixture(
  "mortise-meets-anchor: a rail whose tenon ends 6 in above the post's foot",
  low(
    "21 in",
    "embedded-strap",
    "#@2-10 warning mortise-meets-anchor: rail-end@A1 is cut 6 in above the foot of post@A1, where the anchor of all@A1 is fastened over some 8 in: its bolts find no wood there, and the tenon is in their way. Set it 2 in higher",
  ),
);

test("mortise-meets-anchor: straps and bases take 8 in of the foot, dowels 6 in", () => {
  const ids = (top: string, anchor: string) =>
    findingsOf(low(top, anchor)).map(({ finding }) => `${finding.check} ${finding.value}`);
  expect(ids("22 in", "post-base")).toEqual(["mortise-meets-anchor 7"]);
  expect(ids("23 in", "post-base")).toEqual([]);
  expect(ids("20 in", "dowel")).toEqual(["mortise-meets-anchor 5"]);
  expect(ids("21 in", "dowel")).toEqual([]);
});
