/** What stands on an aperture ring, and for how many stops from f/1 it stands. */
interface Mark {
  readonly marked: number;
  readonly stops: number;
}

const FULL = [1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22, 32, 45, 64, 90, 128];
const THIRDS = [
  1.1, 1.2, 1.6, 1.8, 2.2, 2.5, 3.2, 3.5, 4.5, 5, 6.3, 7.1, 9, 10, 13, 14, 18, 20, 25, 29, 36, 40, 51, 57, 72, 81,
];
const HALVES = [1.2, 1.7, 2.4, 3.3, 4.8, 6.7, 9.5, 13, 19, 27, 38];

/** Full stops first, then thirds, then halves: 1.2 and 13, which two series have, are thirds. */
const F_NUMBER_MARKS: readonly Mark[] = [
  ...FULL.map((marked, stops) => ({ marked, stops })),
  ...THIRDS.map((marked, index) => ({ marked, stops: (3 * Math.floor(index / 2) + (index % 2) + 1) / 3 })),
  ...HALVES.map((marked, index) => ({ marked, stops: index + 1 / 2 })),
];

const SAME_VALUE = 1e-6;

/** How many stops from f/1 the mark of this value stands for; none if no ring bears it. */
export function stopsOfFNumberMark(fNumber: number): number | undefined {
  return F_NUMBER_MARKS.find(({ marked }) => Math.abs(fNumber - marked) <= SAME_VALUE * marked)?.stops;
}

/** The full-stop mark a number of stops stands on or just past, and how far past; none off the ring. */
export function fullMarkBelow(stops: number): { readonly mark: number; readonly past: number } | undefined {
  const whole = Math.floor(stops + SAME_VALUE);
  const mark = FULL[whole];
  return mark === undefined ? undefined : { mark, past: stops - whole };
}
