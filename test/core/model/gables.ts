import { build, type Parts } from "./frames.ts";

export const GABLE = {
  post: "{kind: post, section: 8x8, at: [A1, A3, B1, B3], from: base, to: plate}",
  plate: "{kind: plate, section: 8x8, walls: [A, B], top: top}",
};
export const rafters = (keys = "") =>
  `rafters: {section: 2x6, seat: {kind: birds-mouth}, spacing: 24 in, overhang: {eave: 12 in}${keys}}`;
export const gable = (
  more: Partial<Parts> = {},
  members: Record<string, string> = {},
  keys = "",
  pitch = "12:12",
) =>
  build({
    members: { ...GABLE, ...members },
    roof: `{kind: gable, pitch: "${pitch}", ${rafters(keys)}}`,
    ...more,
  });

/** At 12:12, rafter 6 in: seat × sin 45° ≤ 1.5, so 2.1213 → 2; tops over the outside face 96 - 2 + 6 √2. */
export const TOP0 = 96 - 2 + 6 * Math.SQRT2;
