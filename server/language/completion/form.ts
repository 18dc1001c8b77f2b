/** How keys and their values begin, in the hand of the file. */
import type { Schema } from "../../document/schema.ts";

/** How the file is written. */
export interface Hand {
  /** columns of one step of indentation */
  readonly step: number;
  readonly lineBreak: string;
}

/** @param present the keys that the map has already */
export function requiredOf(schema: Schema, present: ReadonlySet<string>): ReadonlySet<string> {
  const following = Object.entries(schema.dependentRequired ?? {}).flatMap(([key, needed]) =>
    present.has(key) ? needed : [],
  );
  return new Set([...(schema.required ?? []), ...following]);
}

export type Form = "scalar" | "map" | "list" | "maps";

/** A value that can be written as a single one begins as that. */
export function formOf(schema: Schema): Form {
  const types = [schema.type ?? (schema.oneOf === undefined ? "string" : "object")].flat();
  if (types.includes("object")) return types.every((type) => type !== "string") ? "map" : "scalar";
  if (types.every((type) => type === "array")) return schema.items?.type === "object" ? "maps" : "list";
  return "scalar";
}

export const BRACKETS: Readonly<Record<Exclude<Form, "scalar">, readonly [string, string]>> = {
  map: ["{", "}"],
  list: ["[", "]"],
  maps: ["[{", "}]"],
};
