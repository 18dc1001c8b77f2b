/** What the tests inside the extension host report to their launcher. */
export interface SuiteResult {
  readonly name: string;
  /** empty when it passed */
  readonly error: string;
  readonly milliseconds: number;
}
