/** What of an anchor gives way first. */
export type LimitKind =
  | "stated"
  | "end-grain"
  | "bolts"
  | "screws"
  | "row-tear-out"
  | "net-section"
  | "split"
  | "strap-yield"
  | "strap-rupture"
  | "strap-bending"
  | "strap-shear"
  | "strap-column"
  | "withdrawal";

/** A sentence's end: what makes it no more. */
export const LIMIT_WORDS: Readonly<Record<LimitKind, string>> = {
  stated: "what the file states",
  "end-grain": "the end grain on its plate",
  bolts: "the bolts in the wood",
  screws: "the screws in the wood",
  "row-tear-out": "the wood below the bolts, which tears out",
  "net-section": "the wood beside the bolt holes",
  split: "the wood, which splits at the bolts",
  "strap-yield": "the strap, which yields",
  "strap-rupture": "the strap at its hole",
  "strap-bending": "the strap, which bends",
  "strap-shear": "the strap, which shears",
  "strap-column": "the steel between concrete and post, as a column",
  withdrawal: "the screws, which draw out of the wood",
};
