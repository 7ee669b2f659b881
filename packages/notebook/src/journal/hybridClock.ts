export interface HybridClockInput {
  readonly now: () => number;
  /** Ten characters: eight of the device, two drawn anew by each tab. */
  readonly writer: string;
}

/**
 * Names for changes that sort in the order of time, and never before anything this clock has seen.
 *
 * Formula  a name is time in ms (9 digits of base 36), a counter (4) and the writer (10); seeing a later name moves the
 *          clock up to it, and a full counter takes the next millisecond.
 *
 * @source kulkarni-2014: the rule of a clock that is physical and logical at once (second hand)
 */
export class HybridClock {
  readonly #now: () => number;
  readonly #writer: string;
  #time = 0;
  #count = 0;
  #highest = "";

  constructor({ now, writer }: HybridClockInput) {
    this.#now = now;
    this.#writer = writer;
  }

  tick(): string {
    const now = Math.floor(this.#now());
    if (now > this.#time) {
      this.#time = now;
      this.#count = 0;
    } else if (++this.#count === 36 ** 4) {
      this.#time++;
      this.#count = 0;
    }
    const name = this.#time.toString(36).padStart(9, "0") + this.#count.toString(36).padStart(4, "0") + this.#writer;
    this.#highest = name;
    return name;
  }

  see(name: string): void {
    if (name <= this.#highest) return;
    this.#highest = name;
    const time = timeOf(name);
    const count = Number.parseInt(name.slice(9, 13), 36);
    if (time > this.#time) {
      this.#time = time;
      this.#count = count;
    } else if (time === this.#time && count > this.#count) {
      this.#count = count;
    }
  }

  /** The highest name made or seen. */
  get highest(): string {
    return this.#highest;
  }
}

/** The writer's clock in ms when a name was made: an order, and as a date only as good as that clock. */
export function timeOf(name: string): number {
  return Number.parseInt(name.slice(0, 9), 36);
}

/** The eight characters of the device that made a name. */
export function deviceOf(name: string): string {
  return name.slice(13, 21);
}

/** The ten characters of the tab that made a name. */
export function writerOf(name: string): string {
  return name.slice(13, 23);
}
