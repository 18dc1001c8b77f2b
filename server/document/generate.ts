/** Compiles the frame schema to the validator that ships, so that no schema is compiled while somebody types. */
import { Ajv2020 } from "ajv/dist/2020.js";
import standaloneCode from "ajv/dist/standalone/index.js";
import frameSchema from "../../schemas/frame.schema.json" with { type: "json" };

/** Our own keywords: they inform readers of the schema and check nothing. */
const KEYWORDS = ["x-quantity", "x-ref", "x-default-source"];

/**
 * @returns the text of `generated/validate.js`: an ES module that exports `validate(value)` and needs nothing at run time
 * @throws when the schema breaks the rules of JSON Schema 2020-12 or of ajv's strict mode: a mistake of ours
 */
export function validatorSource(): string {
  const ajv = new Ajv2020({
    code: { source: true, esm: true, lines: true },
    allErrors: true,
    discriminator: true,
    inlineRefs: false,
    allowUnionTypes: true,
    messages: false,
    strictTypes: true,
    strictTuples: true,
    keywords: KEYWORDS,
  });
  // The package is CommonJS: its default export is the function to some loaders and an object that holds it to others.
  const exported: unknown = standaloneCode;
  const print =
    typeof exported === "function"
      ? standaloneCode
      : (exported as { default: typeof standaloneCode }).default;
  const validate = ajv.compile(frameSchema);
  return `// Generated from schemas/frame.schema.json by \`npm run generate\`. Do not edit.\n${print(ajv, validate).replace(/^export default .*$/m, "")}\n`;
}
