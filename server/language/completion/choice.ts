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
  /** the same with places in it that may be typed over, one after the other, in the snippet syntax of the protocol */
  readonly snippet?: string;
}
