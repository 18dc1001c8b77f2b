/**
 * Reference design values of timbers 5 in and thicker (psi), NDS Supplement 2015/2018 Table 4D.
 * Most rows are remembered from that table; the status of each row, and of single figures where it differs, says so.
 * Columns: see `DesignRow`.
 */
import type { TimberGroup } from "./table-types.ts";

export const TABLE_4D: readonly TimberGroup[] = [
  {
    group: "douglas-fir-larch",
    beams: [
      ["dense-select-structural", 1900, 1100, 170, 730, 1300, 1700000, 620000, "memory", { Fb: "uncertain" }],
      ["select-structural", 1600, 950, 170, 625, 1100, 1600000, 580000, "memory"],
      ["dense-no-1", 1550, 775, 170, 730, 1100, 1700000, 620000, "memory"],
      ["no-1", 1350, 675, 170, 625, 925, 1600000, 580000, "published", {}, ["MST417"]],
      ["no-2", 875, 425, 170, 625, 600, 1300000, 470000, "memory"],
    ],
    posts: [
      ["dense-select-structural", 1750, 1150, 170, 730, 1350, 1700000, 620000, "memory"],
      ["select-structural", 1500, 1000, 170, 625, 1150, 1600000, 580000, "memory"],
      ["dense-no-1", 1400, 950, 170, 730, 1200, 1700000, 620000, "memory"],
      ["no-1", 1200, 825, 170, 625, 1000, 1600000, 580000, "published", {}, ["MST417", "JUST"]],
      ["no-2", 750, 475, 170, 625, 700, 1300000, 470000, "published", {}, ["AWC24D"]],
    ],
  },
  {
    group: "hem-fir",
    beams: [
      [
        "select-structural",
        1300,
        750,
        140,
        405,
        925,
        1300000,
        470000,
        "memory",
        { Fb: "uncertain", Ft: "uncertain" },
      ],
      ["no-1", 1050, 525, 140, 405, 775, 1300000, 470000, "memory", { Fc: "uncertain" }],
      ["no-2", 675, 350, 140, 405, 500, 1100000, 400000, "published", {}, ["MST430"]],
    ],
    posts: [
      ["select-structural", 1200, 800, 140, 405, 975, 1300000, 470000, "memory"],
      ["no-1", 975, 650, 140, 405, 850, 1300000, 470000, "memory"],
      ["no-2", 575, 375, 140, 405, 575, 1100000, 400000, "published", {}, ["MST430"]],
    ],
  },
  {
    group: "southern-pine",
    both: [
      ["dense-select-structural", 1750, 1200, 165, 440, 1100, 1600000, 580000, "memory"],
      ["select-structural", 1500, 1000, 165, 375, 950, 1500000, 550000, "memory"],
      ["dense-no-1", 1550, 1050, 165, 440, 975, 1600000, 580000, "memory"],
      ["no-1", 1350, 900, 165, 375, 825, 1500000, 550000, "memory"],
      ["dense-no-2", 975, 650, 165, 440, 625, 1300000, 470000, "memory"],
      ["no-2", 850, 550, 165, 375, 525, 1200000, 440000, "memory"],
    ],
  },
  {
    group: "spruce-pine-fir",
    beams: [
      ["select-structural", 1100, 650, 125, 425, 775, 1300000, 470000, "memory"],
      ["no-1", 900, 450, 125, 425, 625, 1300000, 470000, "memory"],
      ["no-2", 600, 300, 125, 425, 425, 1000000, 370000, "memory"],
    ],
    posts: [
      ["select-structural", 1050, 700, 125, 425, 800, 1300000, 470000, "memory"],
      ["no-1", 850, 550, 125, 425, 700, 1300000, 470000, "memory"],
      ["no-2", 500, 325, 125, 425, 500, 1000000, 370000, "memory", { Fc: "uncertain" }],
    ],
  },
  {
    group: "spruce-pine-fir-south",
    beams: [
      ["select-structural", 1050, 625, 125, 335, 675, 1200000, 440000, "memory", { Ft: "uncertain" }],
      ["no-1", 900, 450, 125, 335, 550, 1200000, 440000, "memory", { Fc: "uncertain" }],
      ["no-2", 575, 300, 125, 335, 375, 1000000, 370000, "memory", { Ft: "uncertain" }],
    ],
    posts: [
      ["select-structural", 1000, 675, 125, 335, 700, 1200000, 440000, "memory"],
      ["no-1", 800, 550, 125, 335, 625, 1200000, 440000, "memory", { Ft: "uncertain" }],
      [
        "no-2",
        475,
        325,
        125,
        335,
        425,
        1000000,
        370000,
        "memory",
        { Fb: "uncertain", Ft: "uncertain", Fc: "uncertain" },
      ],
    ],
  },
  {
    group: "eastern-white-pine",
    beams: [
      ["select-structural", 1050, 700, 125, 350, 675, 1100000, 400000, "memory"],
      ["no-1", 875, 600, 125, 350, 575, 1100000, 400000, "memory"],
      ["no-2", 575, 275, 125, 350, 400, 900000, 330000, "memory"],
    ],
    posts: [
      ["select-structural", 975, 650, 125, 350, 725, 1100000, 400000, "memory"],
      ["no-1", 800, 525, 125, 350, 625, 1100000, 400000, "memory"],
      ["no-2", 450, 300, 125, 350, 325, 900000, 330000, "memory"],
    ],
  },
  {
    group: "northern-pine",
    beams: [
      ["select-structural", 1250, 850, 135, 435, 850, 1300000, 470000, "memory"],
      ["no-1", 1050, 700, 135, 435, 725, 1300000, 470000, "memory"],
      ["no-2", 675, 350, 135, 435, 475, 1000000, 370000, "memory", { Fc: "uncertain" }],
    ],
    posts: [
      ["select-structural", 1150, 800, 135, 435, 900, 1300000, 470000, "memory"],
      ["no-1", 950, 650, 135, 435, 800, 1300000, 470000, "memory"],
      ["no-2", 525, 350, 135, 435, 400, 1000000, 370000, "memory", { Fc: "uncertain" }],
    ],
  },
  {
    group: "eastern-hemlock",
    beams: [
      ["select-structural", 1350, 925, 155, 550, 950, 1200000, 440000, "memory"],
      ["no-1", 1150, 775, 155, 550, 800, 1200000, 440000, "memory"],
      ["no-2", 750, 375, 155, 550, 550, 900000, 330000, "memory"],
    ],
    posts: [
      ["select-structural", 1250, 850, 155, 550, 1000, 1200000, 440000, "memory"],
      ["no-1", 1050, 700, 155, 550, 875, 1200000, 440000, "memory"],
      ["no-2", 600, 400, 155, 550, 400, 900000, 330000, "memory", { Fc: "uncertain" }],
    ],
  },
  {
    group: "eastern-hemlock-tamarack",
    beams: [
      ["select-structural", 1400, 925, 155, 555, 950, 1200000, 440000, "memory"],
      ["no-1", 1150, 775, 155, 555, 800, 1200000, 440000, "memory"],
      ["no-2", 750, 375, 155, 555, 550, 900000, 330000, "memory", { Fc: "uncertain" }],
    ],
    posts: [
      [
        "select-structural",
        1300,
        875,
        155,
        555,
        1000,
        1200000,
        440000,
        "memory",
        { Fb: "uncertain", Ft: "uncertain" },
      ],
      ["no-1", 1050, 700, 155, 555, 875, 1200000, 440000, "memory"],
      ["no-2", 600, 400, 155, 555, 400, 900000, 330000, "memory", { Fc: "uncertain" }],
    ],
  },
  {
    group: "eastern-spruce",
    beams: [
      ["select-structural", 1050, 725, 135, 390, 750, 1400000, 510000, "memory"],
      ["no-1", 900, 600, 135, 390, 625, 1400000, 510000, "memory"],
      ["no-2", 575, 275, 135, 390, 375, 1000000, 370000, "memory", { Fc: "uncertain" }],
    ],
    posts: [
      ["select-structural", 1000, 675, 135, 390, 775, 1400000, 510000, "memory"],
      ["no-1", 800, 550, 135, 390, 675, 1400000, 510000, "memory"],
      ["no-2", 450, 300, 135, 390, 325, 1000000, 370000, "memory", { Fc: "uncertain" }],
    ],
  },
  {
    group: "balsam-fir",
    beams: [
      ["select-structural", 1350, 900, 125, 305, 950, 1400000, 510000, "memory"],
      ["no-1", 1100, 750, 125, 305, 800, 1400000, 510000, "memory"],
      ["no-2", 725, 350, 125, 305, 500, 1100000, 400000, "memory", { Fc: "uncertain" }],
    ],
    posts: [
      ["select-structural", 1250, 825, 125, 305, 1000, 1400000, 510000, "memory"],
      ["no-1", 1000, 675, 125, 305, 875, 1400000, 510000, "memory"],
      ["no-2", 575, 375, 125, 305, 400, 1100000, 400000, "memory", { Fc: "uncertain" }],
    ],
  },
  {
    group: "northern-white-cedar",
    beams: [
      ["select-structural", 900, 600, 115, 370, 600, 700000, 260000, "memory"],
      ["no-1", 750, 500, 115, 370, 500, 700000, 260000, "memory"],
      ["no-2", 475, 250, 115, 370, 325, 600000, 220000, "memory"],
    ],
    posts: [
      ["select-structural", 850, 575, 115, 370, 650, 700000, 260000, "memory"],
      ["no-1", 675, 450, 115, 370, 550, 700000, 260000, "memory"],
      ["no-2", 400, 250, 115, 370, 250, 600000, 220000, "memory", { Ft: "uncertain", Fc: "uncertain" }],
    ],
  },
  {
    group: "mixed-oak",
    beams: [
      ["select-structural", 1350, 800, 155, 800, 825, 1000000, 370000, "memory"],
      ["no-1", 1150, 550, 155, 800, 700, 1000000, 370000, "memory"],
      ["no-2", 725, 375, 155, 800, 450, 800000, 290000, "memory"],
    ],
    posts: [
      ["select-structural", 1250, 850, 155, 800, 875, 1000000, 370000, "memory"],
      ["no-1", 1000, 675, 155, 800, 775, 1000000, 370000, "memory"],
      ["no-2", 575, 400, 155, 800, 350, 800000, 290000, "memory"],
    ],
  },
  {
    group: "red-oak",
    beams: [
      ["select-structural", 1350, 800, 155, 820, 825, 1200000, 440000, "memory"],
      ["no-1", 1150, 550, 155, 820, 700, 1200000, 440000, "memory"],
      ["no-2", 725, 375, 155, 820, 450, 1000000, 370000, "memory", { E: "uncertain", "E-min": "uncertain" }],
    ],
    posts: [
      ["select-structural", 1250, 850, 155, 820, 875, 1200000, 440000, "memory"],
      ["no-1", 1000, 675, 155, 820, 775, 1200000, 440000, "memory"],
      ["no-2", 575, 400, 155, 820, 350, 1000000, 370000, "memory", { E: "uncertain", "E-min": "uncertain" }],
    ],
  },
  {
    group: "northern-red-oak",
    beams: [
      ["select-structural", 1600, 950, 205, 885, 950, 1300000, 470000, "memory"],
      ["no-1", 1350, 675, 205, 885, 800, 1300000, 470000, "memory"],
      ["no-2", 875, 425, 205, 885, 500, 1000000, 370000, "memory", { Fc: "uncertain" }],
    ],
    posts: [
      ["select-structural", 1500, 1000, 205, 885, 1000, 1300000, 470000, "memory"],
      ["no-1", 1200, 800, 205, 885, 875, 1300000, 470000, "memory", { Ft: "uncertain" }],
      ["no-2", 700, 475, 205, 885, 400, 1000000, 370000, "memory"],
    ],
  },
  {
    group: "white-oak",
    beams: [
      ["select-structural", 1400, 825, 205, 800, 900, 1000000, 370000, "memory"],
      ["no-1", 1200, 575, 205, 800, 775, 1000000, 370000, "memory"],
      ["no-2", 750, 375, 205, 800, 475, 800000, 290000, "memory", { Fc: "uncertain" }],
    ],
    posts: [
      ["select-structural", 1300, 875, 205, 800, 950, 1000000, 370000, "memory"],
      ["no-1", 1050, 700, 205, 800, 825, 1000000, 370000, "memory"],
      ["no-2", 600, 400, 205, 800, 400, 800000, 290000, "memory"],
    ],
  },
  {
    group: "beech-birch-hickory",
    beams: [
      ["select-structural", 1650, 975, 180, 715, 975, 1500000, 550000, "memory"],
      ["no-1", 1400, 700, 180, 715, 825, 1500000, 550000, "memory"],
      ["no-2", 900, 450, 180, 715, 525, 1200000, 440000, "memory"],
    ],
    posts: [
      ["select-structural", 1550, 1050, 180, 715, 1050, 1500000, 550000, "memory", { Ft: "uncertain" }],
      ["no-1", 1250, 850, 180, 715, 900, 1500000, 550000, "memory"],
      ["no-2", 725, 475, 180, 715, 425, 1200000, 440000, "memory"],
    ],
  },
  {
    group: "ponderosa-pine",
    beams: [
      ["select-structural", 1100, 725, 130, 535, 750, 1100000, 400000, "memory", { Ft: "uncertain" }],
      ["no-1", 925, 500, 130, 535, 625, 1100000, 400000, "memory"],
      ["no-2", 600, 300, 130, 535, 400, 900000, 330000, "memory"],
    ],
    posts: [
      ["select-structural", 1000, 675, 130, 535, 800, 1100000, 400000, "memory"],
      ["no-1", 825, 550, 130, 535, 700, 1100000, 400000, "memory"],
      ["no-2", 475, 325, 130, 535, 325, 900000, 330000, "memory", { Fc: "uncertain" }],
    ],
  },
  {
    group: "western-cedars",
    beams: [
      ["select-structural", 1150, 700, 140, 425, 875, 1000000, 370000, "memory", { Ft: "uncertain" }],
      ["no-1", 1000, 475, 140, 425, 725, 1000000, 370000, "memory", { Fb: "uncertain", Ft: "uncertain" }],
      ["no-2", 625, 325, 140, 425, 475, 800000, 290000, "memory"],
    ],
    posts: [
      ["select-structural", 1100, 725, 140, 425, 925, 1000000, 370000, "memory", { Ft: "uncertain" }],
      ["no-1", 875, 600, 140, 425, 800, 1000000, 370000, "memory"],
      [
        "no-2",
        500,
        350,
        140,
        425,
        375,
        800000,
        290000,
        "memory",
        { Fb: "uncertain", Ft: "uncertain", Fc: "uncertain" },
      ],
    ],
  },
  {
    group: "western-hemlock",
    beams: [
      ["select-structural", 1400, 825, 170, 410, 1000, 1400000, 510000, "memory"],
      ["no-1", 1150, 575, 170, 410, 850, 1400000, 510000, "memory"],
      ["no-2", 750, 375, 170, 410, 550, 1100000, 400000, "memory"],
    ],
    posts: [
      ["select-structural", 1300, 875, 170, 410, 1100, 1400000, 510000, "memory"],
      ["no-1", 1050, 700, 170, 410, 950, 1400000, 510000, "memory", { Fc: "uncertain" }],
      ["no-2", 650, 425, 170, 410, 650, 1100000, 400000, "memory", { Ft: "uncertain" }],
    ],
  },
  {
    group: "western-woods",
    beams: [
      ["select-structural", 1050, 625, 125, 335, 675, 1100000, 400000, "memory", { Ft: "uncertain" }],
      ["no-1", 900, 450, 125, 335, 550, 1100000, 400000, "memory", { Fc: "uncertain" }],
      ["no-2", 575, 300, 125, 335, 375, 900000, 330000, "memory", { Ft: "uncertain" }],
    ],
    posts: [
      ["select-structural", 1000, 675, 125, 335, 700, 1100000, 400000, "memory"],
      ["no-1", 800, 525, 125, 335, 625, 1100000, 400000, "memory"],
      [
        "no-2",
        475,
        325,
        125,
        335,
        425,
        900000,
        330000,
        "memory",
        { Fb: "uncertain", Ft: "uncertain", Fc: "uncertain" },
      ],
    ],
  },
  {
    group: "redwood",
    both: [
      ["clear-structural", 1850, 1250, 145, 650, 1650, 1300000, 470000, "memory"],
      ["select-structural", 1400, 950, 145, 650, 1200, 1300000, 470000, "memory"],
      ["select-structural-open-grain", 1100, 750, 145, 420, 900, 1000000, 370000, "memory"],
      ["no-1", 1200, 800, 145, 650, 1050, 1300000, 470000, "memory"],
      ["no-1-open-grain", 950, 650, 145, 420, 800, 1000000, 370000, "memory"],
      ["no-2", 1000, 525, 145, 650, 900, 1100000, 400000, "memory", { Ft: "uncertain" }],
      ["no-2-open-grain", 750, 400, 145, 420, 650, 900000, 330000, "memory"],
    ],
  },
  {
    group: "red-maple",
    beams: [
      ["select-structural", 1500, 875, 195, 615, 900, 1500000, 550000, "memory"],
      ["no-1", 1250, 625, 195, 615, 750, 1500000, 550000, "memory", { Fc: "uncertain" }],
      ["no-2", 800, 400, 195, 615, 475, 1200000, 440000, "memory"],
    ],
    posts: [
      ["select-structural", 1400, 925, 195, 615, 950, 1500000, 550000, "memory"],
      ["no-1", 1150, 750, 195, 615, 825, 1500000, 550000, "memory", { Fb: "uncertain" }],
      ["no-2", 650, 425, 195, 615, 375, 1200000, 440000, "memory"],
    ],
  },
  {
    group: "mixed-maple",
    beams: [
      ["select-structural", 1150, 700, 180, 620, 725, 1100000, 400000, "memory"],
      ["no-1", 975, 500, 180, 620, 600, 1100000, 400000, "memory"],
      ["no-2", 625, 325, 180, 620, 375, 900000, 330000, "memory"],
    ],
    posts: [
      ["select-structural", 1100, 725, 180, 620, 750, 1100000, 400000, "memory"],
      ["no-1", 875, 600, 180, 620, 650, 1100000, 400000, "memory"],
      ["no-2", 500, 350, 180, 620, 300, 900000, 330000, "memory"],
    ],
  },
  {
    group: "red-pine",
    beams: [
      ["select-structural", 1050, 625, 130, 440, 725, 1100000, 400000, "memory"],
      ["no-1", 875, 450, 130, 440, 600, 1100000, 400000, "memory", { Fb: "uncertain", Ft: "uncertain" }],
      ["no-2", 575, 300, 130, 440, 375, 900000, 330000, "memory", { Fc: "uncertain" }],
    ],
    posts: [
      ["select-structural", 1000, 675, 130, 440, 775, 1100000, 400000, "memory"],
      ["no-1", 800, 550, 130, 440, 675, 1100000, 400000, "memory"],
      ["no-2", 475, 325, 130, 440, 325, 900000, 330000, "memory", { Fc: "uncertain" }],
    ],
  },
];
