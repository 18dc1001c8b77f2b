/**
 * A text being repaired so that YAML can read it: characters are blanked in place or added, and every offset of the
 * repaired text leads back to the text that the user wrote.
 */
export class Draft {
  #text: string;
  /** offsets, in the repaired text, of characters that the user did not write; ascending */
  #added: number[] = [];

  constructor(text: string) {
    this.#text = text;
  }

  get text(): string {
    return this.#text;
  }

  /** Overwrites with blanks; line breaks stay. */
  blank(start: number, end: number): void {
    const blanks = this.#text.slice(start, end).replace(/[^\r\n]/g, " ");
    this.#text = this.#text.slice(0, start) + blanks + this.#text.slice(end);
  }

  /** Overwrites one character by another. */
  overwrite(at: number, char: string): void {
    this.#text = this.#text.slice(0, at) + char + this.#text.slice(at + 1);
  }

  insert(at: number, characters: string): void {
    const shifted = this.#added.map((offset) => (offset >= at ? offset + characters.length : offset));
    for (let i = 0; i < characters.length; i++) shifted.push(at + i);
    this.#added = shifted.sort((a, b) => a - b);
    this.#text = this.#text.slice(0, at) + characters + this.#text.slice(at);
  }

  /** @returns the offset in the user's text of an offset in the repaired text */
  original(offset: number): number {
    let low = 0;
    let high = this.#added.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.#added[middle] ?? 0) < offset) low = middle + 1;
      else high = middle;
    }
    return offset - low;
  }
}
