/**
 * Where figures of the wood tables were seen, other than in the print of the table itself.
 */
const TEXTS = {
  MST417:
    "university course problem on No.1 Douglas Fir-Larch (LRFD values, divided back to psi of allowable stress)",
  MST430: "university course problem on No.2 Hem-Fir, Tables 4A and 4D, psi of allowable stress",
  WSDD92: "AWC Wood Structural Design Data, 1992 revisions, list of specific gravity and weight",
  AWC24A:
    "AWC 2024 NDS Supplement chapter 4, Table 4A p.34 and adjustment factors p.32, as transcribed in a published engineering note",
  AWC24D: "AWC 2024 NDS Supplement chapter 4, Table 4D p.47, as transcribed in a published engineering note",
  EVW: "permit calculation in a public record that quotes the 2018 NDS Supplement, Tables 4A and 4B",
  JUST: "worked problem that prints the reference values of a 10x10 No.1 Douglas Fir-Larch post",
  TTB6: "textbook chapter 6 solutions on Douglas Fir-Larch No.1 4x8",
  ETB: "table of Select Structural dimension lumber of six groups, NDS 1991 to 2001 era",
  SPN13:
    "floor joist spans of the residential code after the 2013 Southern Pine change, values recovered by inversion",
  SPN00: "floor joist spans of an older edition of the residential code, values recovered by inversion",
  DCA6: "AWC DCA 6 deck guide, Table 2 joist spans, values recovered by inversion",
  NELMA8: "NELMA grade rules section 8, adjustment tables",
  MERR: "Building Design and Construction Handbook, Table 10.6 (NDS 1997/2001 era; the 2024 Supplement prints the same for Table 4A)",
  WH41: "Wood Handbook FPL-GTR-190 (2010) Table 4-1",
  WH43: "Wood Handbook FPL-GTR-190 (2010) Table 4-3",
  WH282A: "Wood Handbook FPL-GTR-282 (2021) Tables 4-1 and 4-3",
  WH282B: "Wood Handbook FPL-GTR-282 (2021) Table 5-3a",
  WH190X: "Wood Handbook FPL-GTR-190 (2010) Table 5-3a, 12 percent rows",
  WH190P: "Wood Handbook FPL-GTR-190 (2010) Table 5-3a, pond pine to redwood",
  WH161: "Wood Handbook FPL-GTR-190 (2010) Table 16-1",
  WH135: "Wood Handbook FPL-GTR-190 (2010) Table 13-5, shrinkage recovered from the change coefficients",
  DEC: "heartwood decay groups of the Forest Products Laboratory as reprinted in US Navy MO-312 Table 2-1",
  WSPR: "published list that credits the Forest Products Laboratory",
} as const;

export type SourceKey = keyof typeof TEXTS;

/** @returns what the key stands for, in words for a reader */
export function sourceText(key: SourceKey): string {
  return TEXTS[key];
}
