/**
 * Many arrays of figures in one buffer: to make a small typed array costs more than what it is filled with. All that is
 * taken from one room lives as long as its last array.
 */
export class Room {
  readonly #all: Float64Array;
  #taken = 0;

  /** @param size how many numbers it has room for */
  constructor(size: number) {
    this.#all = new Float64Array(size);
  }

  /** @returns so many numbers, all nought; once the room is full an array of their own */
  take(length: number): Float64Array {
    const end = this.#taken + length;
    if (end > this.#all.length) return new Float64Array(length);
    const taken = this.#all.subarray(this.#taken, end);
    this.#taken = end;
    return taken;
  }
}
