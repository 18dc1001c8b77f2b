/** Which test reads which cases and tables of joints.yaml. */
export const TOPICS = {
  steel: ["bearing-", "withdraw-", "nail-", "screw-", "bolt-"],
  pegs: ["peg-", "drawbore-"],
  wood: ["relish-", "dovetail-", "shoulder-"],
  /**
   * not reckoned this way: a rafter's heel has one abutment (`statics/end-surfaces.ts`), no seat of two faces; a housing
   * bears beside the tenon in it (`statics/notched-ends.ts`), never alone
   */
  unused: ["notch-", "housing-"],
} as const;

export const TABLES = {
  steel: ["lag-wood", "lag-steel", "lag-withdrawal", "nail-withdrawal", "bolt-single"],
  pegs: ["peg-distance"],
  wood: [],
  unused: [],
} as const;
