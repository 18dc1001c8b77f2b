/**
 * Reference design values of dimension lumber, 2 to 4 in thick (psi), all species but Southern Pine,
 * NDS Supplement 2015/2018 Table 4A. Most rows are remembered from that table; the status of each row, and of single
 * figures where it differs, says so. Columns: see `DesignRow`. A row printed as No.1/No.2 stands here twice.
 */
import type { DimensionGroup } from "./table-types.ts";

export const TABLE_4A: readonly DimensionGroup[] = [
  {
    group: "douglas-fir-larch",
    rows: [
      [
        "select-structural",
        1500,
        1000,
        180,
        625,
        1700,
        1900000,
        690000,
        "memory",
        { "Fc-perp": "published", Fc: "published" },
        ["ETB"],
      ],
      ["no-1-and-better", 1200, 800, 180, 625, 1550, 1800000, 660000, "memory"],
      ["no-1", 1000, 675, 180, 625, 1500, 1700000, 620000, "published", {}, ["MST417", "TTB6"]],
      ["no-2", 900, 575, 180, 625, 1350, 1600000, 580000, "published", {}, ["AWC24A", "EVW"]],
      ["no-3", 525, 325, 180, 625, 775, 1400000, 510000, "memory"],
    ],
  },
  {
    group: "douglas-fir-larch-north",
    rows: [
      ["select-structural", 1350, 825, 180, 625, 1900, 1900000, 690000, "memory"],
      ["no-1-and-better", 1150, 750, 180, 625, 1800, 1800000, 660000, "memory"],
      ["no-1", 850, 500, 180, 625, 1400, 1600000, 580000, "memory"],
      ["no-2", 850, 500, 180, 625, 1400, 1600000, 580000, "memory"],
    ],
  },
  {
    group: "hem-fir",
    rows: [
      ["select-structural", 1400, 925, 150, 405, 1500, 1600000, 580000, "memory"],
      ["no-1-and-better", 1100, 725, 150, 405, 1350, 1500000, 550000, "memory"],
      ["no-1", 975, 625, 150, 405, 1350, 1500000, 550000, "memory", { E: "derived" }, ["SPN00"]],
      ["no-2", 850, 525, 150, 405, 1300, 1300000, 470000, "published", {}, ["MST430"]],
      ["no-3", 500, 300, 150, 405, 725, 1200000, 440000, "memory"],
    ],
  },
  {
    group: "spruce-pine-fir",
    rows: [
      ["select-structural", 1250, 700, 135, 425, 1400, 1500000, 550000, "memory"],
      [
        "no-1",
        875,
        450,
        135,
        425,
        1150,
        1400000,
        510000,
        "memory",
        { Fb: "derived", E: "derived" },
        ["SPN13"],
      ],
      [
        "no-2",
        875,
        450,
        135,
        425,
        1150,
        1400000,
        510000,
        "memory",
        { Fb: "derived", E: "derived" },
        ["SPN13"],
      ],
      ["no-3", 500, 250, 135, 425, 650, 1200000, 440000, "memory"],
    ],
  },
  {
    group: "spruce-pine-fir-south",
    rows: [
      ["select-structural", 1300, 575, 135, 335, 1200, 1300000, 470000, "memory"],
      ["no-1", 875, 400, 135, 335, 1050, 1200000, 440000, "memory", { E: "derived" }, ["SPN00"]],
      ["no-2", 775, 350, 135, 335, 1000, 1100000, 400000, "memory", { E: "derived" }, ["SPN00"]],
      ["no-3", 450, 200, 135, 335, 575, 1000000, 370000, "memory"],
    ],
  },
  {
    group: "western-woods",
    rows: [
      ["select-structural", 900, 400, 135, 335, 1050, 1200000, 440000, "memory"],
      ["no-1", 675, 300, 135, 335, 950, 1100000, 400000, "memory"],
      ["no-2", 675, 300, 135, 335, 900, 1000000, 370000, "memory"],
    ],
  },
  {
    group: "western-cedars",
    rows: [
      ["select-structural", 1000, 600, 155, 425, 1000, 1100000, 400000, "memory"],
      ["no-1", 725, 425, 155, 425, 825, 1000000, 370000, "memory"],
      ["no-2", 700, 425, 155, 425, 650, 1000000, 370000, "memory"],
    ],
  },
  {
    group: "eastern-white-pine",
    rows: [
      [
        "select-structural",
        1250,
        575,
        135,
        350,
        1200,
        1200000,
        440000,
        "memory",
        { Fc: "published", Fb: "derived" },
        ["ETB"],
      ],
      ["no-1", 775, 350, 135, 350, 1000, 1100000, 400000, "memory"],
      ["no-2", 575, 275, 135, 350, 825, 1100000, 400000, "memory"],
    ],
  },
  {
    group: "eastern-hemlock-tamarack",
    rows: [
      ["select-structural", 1250, 575, 170, 555, 1200, 1200000, 440000, "memory"],
      ["no-1", 775, 350, 170, 555, 1000, 1100000, 400000, "memory"],
      ["no-2", 575, 275, 170, 555, 825, 1100000, 400000, "memory"],
    ],
  },
  {
    group: "northern-species",
    rows: [
      ["select-structural", 975, 425, 110, 350, 1100, 1100000, 400000, "memory"],
      ["no-1", 625, 275, 110, 350, 850, 1100000, 400000, "memory", { Fb: "derived" }, ["DCA6"]],
      ["no-2", 625, 275, 110, 350, 850, 1100000, 400000, "memory", { Fb: "derived" }, ["DCA6"]],
    ],
  },
  {
    group: "redwood",
    rows: [
      [
        "select-structural",
        1350,
        800,
        160,
        650,
        1500,
        1400000,
        510000,
        "memory",
        { "Fc-perp": "published", Fc: "published", Fb: "derived" },
        ["ETB"],
      ],
      ["no-1", 975, 575, 160, 650, 1200, 1300000, 470000, "memory"],
      ["no-2", 925, 525, 160, 650, 950, 1200000, 440000, "memory"],
      ["no-2-open-grain", 725, 425, 160, 425, 700, 1000000, 370000, "memory"],
    ],
  },
  {
    group: "mixed-oak",
    rows: [
      ["select-structural", 1150, 675, 170, 800, 1000, 1100000, 400000, "memory"],
      ["no-1", 825, 500, 170, 800, 825, 1000000, 370000, "memory"],
      ["no-2", 800, 475, 170, 800, 625, 900000, 330000, "memory"],
    ],
  },
  {
    group: "red-oak",
    rows: [
      ["select-structural", 1150, 675, 170, 820, 1000, 1400000, 510000, "memory"],
      ["no-1", 825, 500, 170, 820, 825, 1300000, 470000, "memory"],
      ["no-2", 800, 475, 170, 820, 625, 1200000, 440000, "memory"],
    ],
  },
  {
    group: "white-oak",
    rows: [
      ["select-structural", 1200, 700, 220, 800, 1100, 1100000, 400000, "memory"],
      ["no-1", 875, 500, 220, 800, 900, 1000000, 370000, "memory"],
      ["no-2", 850, 500, 220, 800, 700, 900000, 330000, "memory"],
    ],
  },
  {
    group: "beech-birch-hickory",
    rows: [
      [
        "select-structural",
        1450,
        850,
        195,
        715,
        1200,
        1700000,
        620000,
        "memory",
        { "Fc-perp": "published", Fc: "published", Fb: "derived" },
        ["ETB"],
      ],
      ["no-1", 1050, 600, 195, 715, 950, 1600000, 580000, "memory"],
      ["no-2", 1000, 600, 195, 715, 750, 1500000, 550000, "memory"],
      ["no-3", 575, 350, 195, 715, 425, 1300000, 470000, "memory", { E: "uncertain", "E-min": "uncertain" }],
    ],
  },
  {
    group: "northern-red-oak",
    rows: [
      [
        "select-structural",
        1400,
        800,
        220,
        885,
        1150,
        1400000,
        510000,
        "memory",
        { "Fc-perp": "published", Fc: "published", Fb: "derived" },
        ["ETB"],
      ],
      ["no-1", 1000, 600, 220, 885, 925, 1400000, 510000, "memory"],
      ["no-2", 975, 575, 220, 885, 725, 1300000, 470000, "memory"],
      ["no-3", 550, 325, 220, 885, 425, 1200000, 440000, "memory"],
    ],
  },
  {
    group: "red-maple",
    rows: [
      [
        "select-structural",
        1300,
        750,
        210,
        615,
        1100,
        1700000,
        620000,
        "memory",
        { "Fc-perp": "published", Fc: "published", Fb: "derived" },
        ["ETB"],
      ],
      ["no-1", 925, 550, 210, 615, 900, 1600000, 580000, "memory"],
      ["no-2", 900, 525, 210, 615, 700, 1500000, 550000, "memory"],
      ["no-3", 525, 300, 210, 615, 400, 1300000, 470000, "memory", { E: "uncertain", "E-min": "uncertain" }],
    ],
  },
  {
    group: "mixed-maple",
    rows: [
      ["select-structural", 1000, 600, 195, 620, 875, 1300000, 470000, "memory"],
      ["no-1", 725, 425, 195, 620, 700, 1200000, 440000, "memory"],
      ["no-2", 700, 425, 195, 620, 550, 1100000, 400000, "memory"],
    ],
  },
  {
    group: "yellow-poplar",
    rows: [
      ["select-structural", 1000, 575, 145, 420, 900, 1500000, 550000, "memory"],
      ["no-1", 725, 425, 145, 420, 725, 1400000, 510000, "memory"],
      ["no-2", 700, 400, 145, 420, 575, 1300000, 470000, "memory"],
      ["no-3", 400, 225, 145, 420, 325, 1200000, 440000, "memory"],
    ],
  },
  {
    group: "aspen",
    rows: [
      ["select-structural", 875, 500, 120, 265, 725, 1100000, 400000, "memory"],
      ["no-1", 625, 375, 120, 265, 600, 1100000, 400000, "memory"],
      ["no-2", 600, 350, 120, 265, 450, 1000000, 370000, "memory"],
    ],
  },
  {
    group: "northern-white-cedar",
    rows: [
      ["select-structural", 775, 450, 120, 370, 750, 800000, 290000, "memory"],
      ["no-1", 575, 325, 120, 370, 600, 700000, 260000, "memory"],
      ["no-2", 550, 325, 120, 370, 475, 700000, 260000, "memory"],
    ],
  },
  {
    group: "eastern-softwoods",
    rows: [
      ["select-structural", 1250, 575, 140, 335, 1200, 1200000, 440000, "memory"],
      ["no-1", 775, 350, 140, 335, 1000, 1100000, 400000, "memory"],
      ["no-2", 575, 275, 140, 335, 825, 1100000, 400000, "memory"],
    ],
  },
  {
    group: "eastern-hemlock-balsam-fir",
    rows: [
      ["select-structural", 1250, 575, 140, 335, 1200, 1200000, 440000, "memory"],
      ["no-1", 775, 350, 140, 335, 1000, 1100000, 400000, "memory"],
      ["no-2", 575, 275, 140, 335, 825, 1100000, 400000, "memory"],
    ],
  },
  {
    group: "hem-fir-north",
    rows: [
      ["select-structural", 1300, 775, 145, 405, 1700, 1700000, 620000, "memory"],
      ["no-1", 1000, 575, 145, 405, 1450, 1600000, 580000, "memory"],
      ["no-2", 1000, 575, 145, 405, 1450, 1600000, 580000, "memory"],
    ],
  },
];
