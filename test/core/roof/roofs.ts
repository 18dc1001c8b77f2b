/** The pavilion with other decks and more snow. */
import { createFrameService } from "../../../server/language/frame-service.ts";
import { pavilion } from "../checks/gate.ts";

export interface RoofParts {
  /** keys of the deck */
  readonly deck: string;
  readonly spacing?: string;
  /** ground snow, psf */
  readonly ground?: number;
  readonly covering?: string;
}

/** @returns a frame file: 4x8 rafters of Eastern Hemlock-Tamarack at 8:12 */
export function roofOf({
  deck,
  spacing = "24 in",
  ground = 45,
  covering = "standing-seam",
}: RoofParts): string {
  return pavilion({
    site: `
      site:
        snow: {ground: ${ground} psf, exposure: partially-exposed, thermal: open}
        wind: {speed: 107 mph, exposure: C, flow: clear}
        frost-depth: 30 in
        soil: sand
    `,
    roof: `
      roof:
        kind: gable
        pitch: 8:12
        rafters: {section: 4x8, spacing: ${spacing}, seat: {kind: birds-mouth}, head: {kind: housed, into: ridge}, overhang: {eave: 12 in, rake: 12 in}}
        deck: {${deck}}
        covering: {kind: ${covering}}
    `,
  });
}

/** The last step of the chain for a text. */
export function evaluated(text: string) {
  const { evaluation } = createFrameService().open("file:///roof.frame.yaml", 1, text);
  if (!evaluation) throw new Error("not evaluated");
  return evaluation;
}
