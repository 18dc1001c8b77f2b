/** A gate of two posts and a plate: the smallest frame without a finding, from which each test breaks one part. */
import { expect } from "vitest";
import { toTextEdit } from "../../../server/document/edits.ts";
import { readFrame } from "../../../server/document/read.ts";
import { createFrameService, type LocatedFinding } from "../../../server/language/frame-service.ts";
import { dedent, OF_THE_WHOLE, readFixture } from "../../fixtures.ts";

const PARTS = {
  head: `
    frame: Gate
    format: 1
  `,
  site: `
    site: {frost-depth: 30 in, soil: sand}
  `,
  timber: `
    timber:
      frame: {species: eastern-white-pine, grade: no-1}
  `,
  mill: "",
  grid: `
    grid:
      walls: {A: 0, B: 10 ft}
      bents: {1: 0, 2: 9 ft}
      levels: {pier-top: 8 in, eave: 8 ft}
  `,
  members: `
    members:
      post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
      plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
  `,
  joints: `
    joints:
      head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
  `,
  roof: "",
  piers: `
    piers:
      all: {under: post, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
  `,
  accept: "",
} as const;

/** A grid of three bents, for gates of two spans. */
export const THREE_BENTS = `
  grid:
    walls: {A: 0, B: 10 ft}
    bents: {1: 0, 2: 9 ft, 3: 18 ft}
    levels: {pier-top: 8 in, eave: 8 ft}
`;

/** The gate's text with some parts, markers included, in place of its own. */
export function gate(parts: Partial<Record<keyof typeof PARTS, string>>): string {
  return Object.values({ ...PARTS, ...parts })
    .map(dedent)
    .join("")
    .trimStart();
}

/** Timber that does not shrink any more: half-dovetails and dovetails of green timber draw out, which is told. */
export const DRY = "timber:\n  frame: {species: eastern-white-pine, grade: no-1, seasoning: dry}\n";

/** What a frame under a roof says first, in snow and wind. */
export const UNDER_ROOF = {
  head: `
    frame: Pavilion
    format: 1
    basis: {loads: asce-7-16, risk-category: i}
  `,
  site: `
    site:
      snow: {ground: 45 psf, exposure: partially-exposed, thermal: open}
      wind: {speed: 107 mph, exposure: C, flow: clear}
      frost-depth: 30 in
      soil: sand
  `,
};

const PAVILION = {
  ...UNDER_ROOF,
  timber: `
    timber:
      frame: {species: eastern-white-pine, grade: no-1}
      rafters: {species: eastern-hemlock-tamarack, grade: no-2, seasoning: dry}
  `,
  members: `
    members:
      post: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}
      plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave, overhang: 12 in}
      tie: {kind: tie, section: 8x8, bents: [1, 2], from: A, to: B, top: 7 ft}
      king: {kind: king-post, section: 6x6, bents: [1, 2], from: tie, to: ridge}
      ridge: {kind: ridge, section: 6x8, from: 1, to: 2, overhang: 12 in}
  `,
  joints: `
    joints:
      head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
      tie-end: {kind: mortise-and-tenon, of: tie, into: post, tenon: {thickness: 2 in, length: 4 in}}
      king-foot: {kind: mortise-and-tenon, of: king, into: tie, tenon: {thickness: 2 in, length: 4 in}}
      king-head: {kind: mortise-and-tenon, of: king, into: ridge, tenon: {thickness: 2 in, length: 4 in}}
  `,
  roof: `
    roof:
      kind: gable
      pitch: 8:12
      rafters:
        section: 3x7
        spacing: 30 in
        seat: {kind: birds-mouth}
        head: {kind: housed, into: ridge, fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 8 in}}
        overhang: {eave: 12 in, rake: 12 in}
      deck: {kind: boards, thickness: 1 in}
      covering: {kind: standing-seam}
  `,
} as const;

/** Two walls with plates 8x8 and joists 4x6 let into them. @param sizes of the dovetails, their brackets closed */
export const dovetailed = (sizes: string, timber: string = PARTS.timber): string =>
  gate({
    timber,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave}
        joist: {kind: joist, section: 4x6, between: [plate@A, plate@B], from: 1, to: 2, spacing: 36 in, top: eave}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        end: {kind: housed-dovetail, of: joist, into: plate, dovetail: {${sizes}
    `,
  });

/** A gate of two spans whose plate is spliced. @param more further members, or a marker under the plate */
export function spliced(at: string, kind: string, more = "", joints: string = PARTS.joints): string {
  return gate({
    joints,
    grid: THREE_BENTS,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, A3], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 3, top: eave, splice: {at: ${at}, kind: ${kind}}}
        ${more}
    `,
  });
}

/** The same with sizes of the scarf in an entry of its own. @param keys after `into: plate`, with a comma before them */
export const scarfed = (at: string, kind: string, keys: string, ...marks: string[]): string =>
  spliced(
    at,
    kind,
    "",
    `${dedent(PARTS.joints).trimStart()}${[`  scarf: {kind: ${kind}, of: plate, into: plate${keys}}`, ...marks].join("\n")}\n`,
  );

/** The same with four posts and a gable roof. */
export function pavilion(parts: Partial<Record<keyof typeof PARTS, string>>): string {
  return gate({ ...PAVILION, ...parts });
}

/**
 * Findings of a text; markers in it are left out.
 * @param whole with those of a whole building, which a gate is not
 */
export function findingsOf(marked: string, whole = false): readonly LocatedFinding[] {
  return createFrameService()
    .open("file:///gate.frame.yaml", 1, readFixture(marked).text)
    .findings.filter(({ finding }) => whole || !OF_THE_WHOLE.has(finding.check));
}

/** The ids of all findings of a text that it does not accept. */
export function idsOf(text: string, whole = false): string[] {
  return findingsOf(text, whole)
    .filter(({ finding }) => finding.accepted === undefined)
    .map(({ finding }) => finding.check);
}

/**
 * The text after a finding's fix, which must leave nothing of its check behind.
 * @param nth which of the fixes, from 0
 * @param whole the check judges a whole building
 */
export function fixed(marked: string, check: string, nth = 0, whole = false): string {
  const { text } = readFixture(marked);
  const found = findingsOf(text, whole).find(({ finding }) => finding.check === check)!;
  expect(found, `${check} fires`).toBeDefined();
  const fix = found.finding.fixes()[nth]!;
  expect(fix, `${check} has a fix`).toBeDefined();
  const reading = readFrame(text);
  const edits = fix.edits.map((edit) => toTextEdit(reading, edit)!);
  const after = [...edits]
    .sort((a, b) => b.start - a.start)
    .reduce((done, { start, end, newText }) => done.slice(0, start) + newText + done.slice(end), text);
  expect(idsOf(after, whole)).not.toContain(check);
  return after;
}
