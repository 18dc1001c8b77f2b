/**
 * Species groups that carry reference design values, and the species each is sold from.
 */
import type { GroupRow } from "./table-types.ts";

/** G of NDS 2018 Table 12.3.3A. */
export const GROUPS: readonly GroupRow[] = [
  {
    id: "douglas-fir-larch",
    name: "Douglas Fir-Larch",
    G: [0.5, "published", "WSDD92"],
    agency: "WCLIB / WWPA",
  },
  { id: "hem-fir", name: "Hem-Fir", G: [0.43, "published", "WSDD92"], agency: "WWPA (WCLIB rows differ)" },
  { id: "southern-pine", name: "Southern Pine", G: [0.55, "published", "WSDD92"], agency: "SPIB" },
  { id: "spruce-pine-fir", name: "Spruce-Pine-Fir", G: [0.42, "published", "WSDD92"], agency: "NLGA" },
  {
    id: "spruce-pine-fir-south",
    name: "Spruce-Pine-Fir (South)",
    G: [0.36, "published", "WSDD92"],
    agency: "NELMA / NSLB / WWPA",
  },
  {
    id: "eastern-white-pine",
    name: "Eastern White Pine",
    G: [0.36, "published", "WSDD92"],
    agency: "NELMA / NSLB",
  },
  { id: "northern-pine", name: "Northern Pine", G: [0.42, "published", "WSDD92"], agency: "NELMA / NSLB" },
  {
    id: "eastern-hemlock",
    name: "Eastern Hemlock",
    G: [0.41, "published", "WSDD92"],
    agency: "NELMA / NSLB",
  },
  {
    id: "eastern-hemlock-tamarack",
    name: "Eastern Hemlock-Tamarack",
    G: [0.41, "published", "WSDD92"],
    agency: "NELMA / NSLB",
  },
  { id: "eastern-spruce", name: "Eastern Spruce", G: [0.41, "published", "WSDD92"], agency: "NELMA / NSLB" },
  { id: "balsam-fir", name: "Balsam Fir", G: [0.36, "published", "WSDD92"], agency: "NELMA / NSLB" },
  {
    id: "northern-white-cedar",
    name: "Northern White Cedar",
    G: [0.31, "published", "WSDD92"],
    agency: "NELMA",
  },
  { id: "mixed-oak", name: "Mixed Oak", G: [0.68, "published", "WSDD92"], agency: "NELMA" },
  { id: "red-oak", name: "Red Oak", G: [0.67, "published", "WSDD92"], agency: "NELMA" },
  { id: "northern-red-oak", name: "Northern Red Oak", G: [0.68, "published", "WSDD92"], agency: "NELMA" },
  { id: "white-oak", name: "White Oak", G: [0.73, "derived", "WSDD92"], agency: "NELMA" },
  {
    id: "beech-birch-hickory",
    name: "Beech-Birch-Hickory",
    G: [0.71, "published", "WSDD92"],
    agency: "NELMA",
  },
  { id: "ponderosa-pine", name: "Ponderosa Pine", G: [0.43, "published", "WSDD92"], agency: "NLGA" },
  { id: "western-cedars", name: "Western Cedars", G: [0.36, "published", "WSDD92"], agency: "WCLIB / WWPA" },
  { id: "western-hemlock", name: "Western Hemlock", G: [0.47, "published", "WSDD92"], agency: "WCLIB" },
  { id: "western-woods", name: "Western Woods", G: [0.36, "derived", "WSDD92"], agency: "WWPA" },
  { id: "redwood", name: "Redwood", G: [0.37, "published", "WSDD92"], agency: "RIS" },
  { id: "red-maple", name: "Red Maple", G: [0.58, "published", "WSDD92"], agency: "NELMA" },
  { id: "mixed-maple", name: "Mixed Maple", G: [0.55, "published", "WSDD92"], agency: "NELMA" },
  { id: "red-pine", name: "Red Pine", G: [0.44, "published", "WSDD92"], agency: "NLGA" },
  {
    id: "douglas-fir-larch-north",
    name: "Douglas Fir-Larch (North)",
    G: [0.49, "published", "WSDD92"],
    agency: "NLGA",
  },
  { id: "northern-species", name: "Northern Species", G: [0.35, "published", "WSDD92"], agency: "NLGA" },
  { id: "yellow-poplar", name: "Yellow-Poplar", G: [0.43, "derived", "WSDD92"], agency: "NELMA" },
  { id: "aspen", name: "Aspen", G: [0.39, "published", "WSDD92"], agency: "NELMA / NSLB / WWPA" },
  {
    id: "eastern-softwoods",
    name: "Eastern Softwoods",
    G: [0.36, "published", "WSDD92"],
    agency: "NELMA / NSLB",
  },
  {
    id: "eastern-hemlock-balsam-fir",
    name: "Eastern Hemlock-Balsam Fir",
    G: [0.36, "memory"],
    agency: "NELMA / NSLB",
  },
  { id: "hem-fir-north", name: "Hem-Fir (North)", G: [0.46, "published", "WSDD92"], agency: "NLGA" },
];

/**
 * Where the design values of a name are looked up: species or group → group in Table 4D (timbers) and in Table 4A/4B
 * (dimension lumber). By the composition of the commercial groups as the NDS Supplement lists them, from memory; of two
 * groups that take a species, the weaker. A name that is absent stands under its own name, or has no values.
 */
export const DESIGN_GROUP: Readonly<
  Record<string, { readonly timbers?: string; readonly dimension?: string }>
> = {
  "douglas-fir-coast": { timbers: "douglas-fir-larch", dimension: "douglas-fir-larch" },
  "douglas-fir-interior-north": { timbers: "douglas-fir-larch", dimension: "douglas-fir-larch" },
  "western-larch": { timbers: "douglas-fir-larch", dimension: "douglas-fir-larch" },
  "western-hemlock": { timbers: "western-hemlock", dimension: "hem-fir" },
  "white-fir": { timbers: "hem-fir", dimension: "hem-fir" },
  "grand-fir": { timbers: "hem-fir", dimension: "hem-fir" },
  "loblolly-pine": { timbers: "southern-pine", dimension: "southern-pine" },
  "longleaf-pine": { timbers: "southern-pine", dimension: "southern-pine" },
  "shortleaf-pine": { timbers: "southern-pine", dimension: "southern-pine" },
  "slash-pine": { timbers: "southern-pine", dimension: "southern-pine" },
  "eastern-hemlock": { timbers: "eastern-hemlock", dimension: "eastern-hemlock-tamarack" },
  tamarack: { timbers: "eastern-hemlock-tamarack", dimension: "eastern-hemlock-tamarack" },
  "balsam-fir": { timbers: "balsam-fir", dimension: "eastern-hemlock-balsam-fir" },
  "northern-pine": { timbers: "northern-pine", dimension: "eastern-softwoods" },
  "red-pine": { timbers: "red-pine", dimension: "eastern-softwoods" },
  "eastern-spruce": { timbers: "eastern-spruce", dimension: "eastern-softwoods" },
  "red-spruce": { timbers: "eastern-spruce", dimension: "eastern-softwoods" },
  "white-spruce": { timbers: "eastern-spruce", dimension: "eastern-softwoods" },
  "black-spruce": { timbers: "eastern-spruce", dimension: "eastern-softwoods" },
  "norway-spruce": { timbers: "spruce-pine-fir-south", dimension: "spruce-pine-fir-south" },
  "lodgepole-pine": { timbers: "spruce-pine-fir-south", dimension: "spruce-pine-fir-south" },
  "engelmann-spruce": { timbers: "spruce-pine-fir-south", dimension: "spruce-pine-fir-south" },
  "sitka-spruce": { timbers: "spruce-pine-fir-south", dimension: "spruce-pine-fir-south" },
  "ponderosa-pine": { timbers: "ponderosa-pine", dimension: "western-woods" },
  "sugar-pine": { timbers: "western-woods", dimension: "western-woods" },
  "western-white-pine": { timbers: "western-woods", dimension: "western-woods" },
  "western-redcedar": { timbers: "western-cedars", dimension: "western-cedars" },
  "incense-cedar": { timbers: "western-cedars", dimension: "western-cedars" },
  "port-orford-cedar": { timbers: "western-cedars", dimension: "western-cedars" },
  "yellow-cedar": { timbers: "western-cedars", dimension: "western-cedars" },
  "redwood-old": { timbers: "redwood", dimension: "redwood" },
  "redwood-young": { timbers: "redwood", dimension: "redwood" },
  "sugar-maple": { timbers: "mixed-maple", dimension: "mixed-maple" },
  "silver-maple": { timbers: "mixed-maple", dimension: "mixed-maple" },
  "hickory-shagbark": { timbers: "beech-birch-hickory", dimension: "beech-birch-hickory" },
  "hickory-mockernut": { timbers: "beech-birch-hickory", dimension: "beech-birch-hickory" },
  "hickory-pignut": { timbers: "beech-birch-hickory", dimension: "beech-birch-hickory" },
  "american-beech": { timbers: "beech-birch-hickory", dimension: "beech-birch-hickory" },
};

/**
 * The species of a group that are in the species tables, for weight and shrinkage: whichever is heaviest or moves most
 * counts. A group that is itself a species stands under its own name.
 */
export const GROUP_MEMBERS: Readonly<Record<string, readonly string[]>> = {
  "douglas-fir-larch": ["douglas-fir-coast", "western-larch"],
  "douglas-fir-larch-north": ["douglas-fir-interior-north", "western-larch"],
  "hem-fir": ["western-hemlock", "white-fir", "grand-fir"],
  "hem-fir-north": ["western-hemlock", "white-fir"],
  "southern-pine": ["loblolly-pine", "longleaf-pine", "shortleaf-pine", "slash-pine"],
  "spruce-pine-fir": ["white-spruce", "black-spruce", "red-spruce", "lodgepole-pine", "balsam-fir"],
  "spruce-pine-fir-south": [
    "engelmann-spruce",
    "sitka-spruce",
    "lodgepole-pine",
    "white-spruce",
    "balsam-fir",
  ],
  "northern-pine": ["red-pine"],
  "eastern-hemlock-tamarack": ["eastern-hemlock", "tamarack"],
  "eastern-spruce": ["red-spruce", "white-spruce", "black-spruce"],
  "eastern-softwoods": ["eastern-white-pine", "eastern-hemlock", "red-spruce", "balsam-fir", "red-pine"],
  "eastern-hemlock-balsam-fir": ["eastern-hemlock", "balsam-fir"],
  "mixed-oak": ["northern-red-oak", "white-oak"],
  "red-oak": ["northern-red-oak"],
  "beech-birch-hickory": ["american-beech", "hickory-mockernut", "hickory-pignut", "hickory-shagbark"],
  "western-cedars": ["western-redcedar", "incense-cedar", "port-orford-cedar", "yellow-cedar"],
  "western-woods": ["ponderosa-pine", "sugar-pine", "western-white-pine", "engelmann-spruce"],
  redwood: ["redwood-old", "redwood-young"],
  "mixed-maple": ["red-maple", "silver-maple", "sugar-maple"],
  "northern-species": ["western-redcedar", "red-pine", "ponderosa-pine", "balsam-fir"],
};
