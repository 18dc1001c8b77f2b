/**
 * Reference design values of Southern Pine dimension lumber (psi), NDS Supplement 2015/2018 Table 4B (the revision of
 * June 2013). The size is in the value: each block holds up to the nominal width named. Columns: see `DesignRow`.
 */
import type { WidthBlock } from "./table-types.ts";

export const TABLE_4B: readonly WidthBlock[] = [
  {
    nominalWidth: 4,
    rows: [
      ["select-structural", 2350, 1650, 175, 565, 1900, 1800000, 660000, "memory"],
      ["no-1", 1500, 1000, 175, 565, 1650, 1600000, 580000, "memory"],
      ["no-2", 1100, 675, 175, 565, 1450, 1400000, 510000, "memory"],
      ["no-3", 650, 400, 175, 565, 850, 1300000, 470000, "memory"],
    ],
  },
  {
    nominalWidth: 6,
    rows: [
      ["select-structural", 2100, 1450, 175, 565, 1800, 1800000, 660000, "memory"],
      ["no-1", 1350, 875, 175, 565, 1550, 1600000, 580000, "memory"],
      [
        "no-2",
        1000,
        600,
        175,
        565,
        1400,
        1400000,
        510000,
        "memory",
        { Fb: "derived", E: "derived" },
        ["SPN13"],
      ],
      ["no-3", 575, 350, 175, 565, 800, 1300000, 470000, "memory"],
    ],
  },
  {
    nominalWidth: 8,
    rows: [
      ["select-structural", 1950, 1350, 175, 565, 1700, 1800000, 660000, "memory"],
      ["no-1", 1250, 800, 175, 565, 1500, 1600000, 580000, "memory"],
      [
        "no-2",
        925,
        550,
        175,
        565,
        1350,
        1400000,
        510000,
        "memory",
        { Fb: "derived", E: "derived" },
        ["SPN13"],
      ],
      ["no-3", 525, 325, 175, 565, 775, 1300000, 470000, "memory"],
    ],
  },
  {
    nominalWidth: 10,
    rows: [
      ["select-structural", 1700, 1150, 175, 565, 1650, 1800000, 660000, "memory"],
      ["no-1", 1050, 700, 175, 565, 1450, 1600000, 580000, "memory"],
      ["no-2", 800, 475, 175, 565, 1300, 1400000, 510000, "memory", { Fb: "derived" }, ["SPN13"]],
      ["no-3", 475, 275, 175, 565, 750, 1300000, 470000, "memory"],
    ],
  },
  {
    nominalWidth: 12,
    rows: [
      ["select-structural", 1600, 1100, 175, 565, 1650, 1800000, 660000, "memory"],
      ["no-1", 1000, 650, 175, 565, 1400, 1600000, 580000, "memory"],
      ["no-2", 750, 450, 175, 565, 1250, 1400000, 510000, "memory", { Fb: "derived" }, ["SPN13"]],
      ["no-3", 450, 250, 175, 565, 725, 1300000, 470000, "memory"],
    ],
  },
];
