/** One thing that can be put in where the cursor is. */
export interface Choice {
  readonly sort: "key" | "value" | "name" | "unit";
  readonly label: string;
  /** a few words beside it */
  readonly detail: string | undefined;
  /** Markdown */
  readonly about: string;
  /** the same without marks, for editors that show none */
  readonly plain: string;
  /** what the typed word is compared with */
  readonly filter: string;
  /** what is put in before the cursor and behind it */
  readonly head: string;
  readonly tail: string;
  /** the same as a name that may be typed over, and pieces with gaps between them for what the user knows */
  readonly skeleton?: { readonly lead: string; readonly name: string; readonly pieces: readonly string[] };
}
