import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import frameSchema from "../../schemas/frame.schema.json" with { type: "json" };
import { type Dimension, parseQuantity } from "../../server/core/quantity/quantity.ts";
import { toPlain } from "../../server/document/plain.ts";
import { readYaml } from "../../server/document/read-yaml.ts";
import {
  KNOWN_KEYS,
  keysAllowed,
  LIST_KEYS,
  ROOT,
  type Schema,
  schemaAt,
} from "../../server/document/schema.ts";
import { PAVILION } from "./samples.ts";

interface Place {
  readonly path: string;
  readonly schema: Schema;
}

/** Every place where something can be written. */
function* places(schema: Schema, path = ""): Generator<Place> {
  yield { path, schema };
  for (const [key, value] of Object.entries(schema.properties ?? {})) yield* places(value, `${path}/${key}`);
  for (const value of Object.values(schema.patternProperties ?? {})) yield* places(value, `${path}/*`);
  if (typeof schema.additionalProperties === "object")
    yield* places(schema.additionalProperties, `${path}/*`);
  if (schema.items) yield* places(schema.items, `${path}/0`);
  for (const branch of schema.oneOf ?? [])
    yield* places(branch, `${path}(${branch.properties?.kind?.const})`);
}

const ALL = [...places(ROOT)];
const QUANTITIES = [
  "length",
  "section",
  "pitch",
  "area",
  "pressure",
  "stress",
  "density",
  "force",
  "speed",
  "angle",
];

describe("the frame schema", () => {
  it("is a valid JSON Schema 2020-12", () => {
    expect(new Ajv2020({ strict: false }).validateSchema(frameSchema)).toBe(true);
  });

  it("describes every place in a sentence", () => {
    for (const { path, schema } of ALL) expect(schema.description, path).toMatch(/^.{8,}[.)]$/s);
  });

  it("gives an example for every value", () => {
    const values = ALL.filter(({ path, schema }) => path !== "" && !schema.properties && !schema.oneOf);
    for (const { path, schema } of values) expect(schema.examples?.length, path).toBeGreaterThan(0);
  });

  it("gives examples of quantities that can be read as what they measure", () => {
    let count = 0;
    for (const { path, schema } of ALL) {
      const dimension = schema["x-quantity"];
      if (dimension === undefined) continue;
      expect([...QUANTITIES, "height", "grid-place"], path).toContain(dimension);
      if (!QUANTITIES.includes(dimension)) continue;
      for (const example of schema.examples ?? []) {
        if (/^[[{]/.test(String(example))) continue;
        expect(parseQuantity(String(example), dimension as Dimension, "inch").ok, `${path}: ${example}`).toBe(
          true,
        );
        count++;
      }
    }
    expect(count).toBeGreaterThan(100);
  });

  it("gives examples of maps and lists that it accepts itself", () => {
    const ajv = new Ajv2020({ strict: false, discriminator: true });
    let count = 0;
    for (const { path, schema } of ALL) {
      for (const example of schema.examples ?? []) {
        const { root, facts } = readYaml(String(example));
        expect(facts, `${path}: ${example}`).toEqual([]);
        const { $schema: _, $id: __, ...own } = schema as Record<string, unknown>;
        expect(ajv.validate(own, toPlain(root, schema)), `${path}: ${example} ${ajv.errorsText()}`).toBe(
          true,
        );
        count++;
      }
    }
    expect(count).toBeGreaterThan(200);
  });

  it("lets every joint be scribed, and every timber be measured", () => {
    const kinds = (area: "joints" | "members"): readonly Schema[] => {
      const entries = ROOT.properties?.[area]?.additionalProperties;
      return typeof entries === "object" ? (entries.oneOf ?? []) : [];
    };
    expect(kinds("joints").length).toBeGreaterThan(5);
    for (const kind of kinds("joints"))
      expect(kind.properties?.rule?.enum, kind.description).toEqual(["square", "scribe"]);
    expect(kinds("members").length).toBeGreaterThan(5);
    for (const kind of kinds("members"))
      expect(kind.properties?.measured?.properties?.width, kind.description).toBeDefined();
    const roofs = ROOT.properties?.roof?.oneOf ?? [];
    expect(roofs.length).toBe(2);
    for (const roof of roofs)
      expect(
        roof.properties?.rafters?.properties?.measured?.properties?.width,
        roof.description,
      ).toBeDefined();
  });

  it("names a source for every default, and a default that it accepts", () => {
    const defaults = ALL.filter(({ schema }) => schema.default !== undefined);
    expect(defaults.length).toBeGreaterThan(10);
    for (const { path, schema } of defaults) {
      expect(schema["x-default-source"], path).toBeTruthy();
      if (schema.enum) expect(schema.enum, path).toContain(schema.default);
    }
  });

  it("lets no unknown key into any map but those with free names", () => {
    for (const { path, schema } of ALL) {
      const types = [schema.type].flat();
      if (types.includes("object") && !schema.oneOf) expect(schema.additionalProperties, path).toBeDefined();
    }
  });
});

describe("looking up a place", () => {
  const { root } = readYaml(PAVILION);

  it("follows the kind of an entry", () => {
    expect(schemaAt(root, "/members/knee/curve/radius")?.["x-quantity"]).toBe("length");
    expect(schemaAt(root, "/members/post/curve")).toBeUndefined();
    expect(schemaAt(root, "/members/post/at/0")?.["x-quantity"]).toBe("grid-place");
    expect(schemaAt(root, "/roof/pitch")?.["x-quantity"]).toBe("pitch");
    expect(schemaAt(root, "/site/ground/2")?.["x-quantity"]).toBe("length");
    expect(schemaAt(root, "/grid/levels/eave")?.["x-quantity"]).toBe("length");
    expect(schemaAt(root, "/nothing")).toBeUndefined();
  });

  it("offers only the kinds as long as there is none", () => {
    const empty = readYaml("members: {x: {}}").root;
    const schema = schemaAt(empty, "/members/x");
    expect(schema && keysAllowed(schema)).toEqual(["kind"]);
    expect(schemaAt(empty, "/members/x/kind")?.enum).toContain("king-post");
  });

  it("knows which keys take lists", () => {
    expect([...LIST_KEYS].sort()).toEqual(
      [
        "accept",
        "ask",
        "at",
        "bents",
        "between",
        "ends",
        "into",
        "logs",
        "measured",
        "of",
        "offset",
        "under",
        "walls",
      ].sort(),
    );
    expect(KNOWN_KEYS.has("stand-off")).toBe(true);
  });
});
