/** Which test reads which cases and tables of joints.yaml. */
export const TOPICS = {
  steel: ["bearing-", "withdraw-", "nail-", "screw-", "bolt-"],
  pegs: ["peg-", "drawbore-"],
  wood: ["relish-", "dovetail-", "shoulder-", "notch-", "housing-"],
} as const;

export const TABLES = {
  steel: ["lag-wood", "lag-steel", "lag-withdrawal", "nail-withdrawal", "bolt-single"],
  pegs: ["peg-distance"],
  wood: [],
} as const;
