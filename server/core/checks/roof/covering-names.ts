import type { CoveringKind } from "../../frame/roof.ts";

/** Names of the coverings at the start of a sentence, singular. */
export const COVERING_NAMES: Readonly<Record<CoveringKind, string>> = {
  "standing-seam": "A standing-seam covering",
  "ribbed-steel": "A ribbed steel covering",
  "corrugated-steel": "A corrugated steel covering",
  "asphalt-shingles": "An asphalt shingle covering",
  "wood-shingles": "A wood shingle covering",
  "wood-shakes": "A wood shake covering",
  slate: "A slate covering",
  "clay-tile": "A clay tile covering",
  "roll-roofing": "A roll roofing covering",
};
