/** What results do not mean; said once wherever a result could hurt someone who trusts it too far. */
export const CAUTION =
  "Bentwright checks rules it names and leaves others out, earthquake, wind from two sides at once and the stronger wind at the edges of a roof among them; local code and a licensed engineer decide.";
