/** One fault, as ajv reports it; only these fields are read. */
export interface SchemaError {
  readonly instancePath: string;
  readonly schemaPath: string;
  readonly keyword: string;
  readonly params: Readonly<Record<string, unknown>>;
}

export interface Validate {
  (value: unknown): boolean;
  errors: readonly SchemaError[] | null;
}

export declare const validate: Validate;
