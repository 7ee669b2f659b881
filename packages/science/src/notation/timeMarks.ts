/** What stands on a dial, and for how many stops from 1 s (+ longer) it stands. */
interface Mark {
  readonly marked: number;
  readonly stops: number;
}

const DOWN_FULL = [2, 4, 8, 15, 30, 60, 125, 250, 500, 1000, 2000, 4000, 8000];
const UP_FULL = [1, 2, 4, 8, 15, 30, 60];

const UP_THIRDS = [1.3, 1.6, 2.5, 3.2, 5, 6, 10, 13, 20, 25, 40, 50];
const DOWN_THIRDS = [
  0.8,
  0.6,
  0.4,
  0.3,
  ...[5, 6, 10, 13, 20, 25, 40, 50, 80, 100, 160, 200, 320, 400, 640, 800, 1250, 1600, 2500, 3200, 5000, 6400].map(
    (part) => 1 / part,
  ),
];

const UP_HALVES = [1.5, 3, 6, 10, 20, 45];
const DOWN_HALVES = [0.7, 0.3, ...[6, 10, 20, 45, 90, 180, 350, 750, 1500, 3000, 6000].map((part) => 1 / part)];

/** The thirds stand two and two between whole stops: 1/3, 2/3, 4/3, 5/3 … */
function thirdsOf(index: number): number {
  return (3 * Math.floor(index / 2) + (index % 2) + 1) / 3;
}

/**
 * Every mark of a dial of full, third or half stops. A mark of two series stands once, in the first of full, third, half;
 * the order of this list is that order.
 */
const TIME_MARKS: readonly Mark[] = [
  ...UP_FULL.map((marked, stops) => ({ marked, stops })),
  ...DOWN_FULL.map((part, index) => ({ marked: 1 / part, stops: -(index + 1) })),
  ...UP_THIRDS.map((marked, index) => ({ marked, stops: thirdsOf(index) })),
  { marked: 3, stops: 5 / 3 },
  ...DOWN_THIRDS.map((marked, index) => ({ marked, stops: -thirdsOf(index) })),
  { marked: 1 / 1.3, stops: -1 / 3 },
  { marked: 1 / 1.6, stops: -2 / 3 },
  { marked: 1 / 3, stops: -5 / 3 },
  ...UP_HALVES.map((marked, index) => ({ marked, stops: index + 1 / 2 })),
  ...DOWN_HALVES.map((marked, index) => ({ marked, stops: -(index + 1 / 2) })),
  { marked: 1 / 1.5, stops: -1 / 2 },
  { marked: 1 / 11, stops: -7 / 2 },
  { marked: 1 / 23, stops: -9 / 2 },
];

/** A mark is known by its value, however it is written: 1m is 60. */
const SAME_VALUE = 1e-6;

/** How many stops from 1 s the mark of this value stands for; none if no dial bears it. */
export function stopsOfTimeMark(timeS: number): number | undefined {
  return TIME_MARKS.find(({ marked }) => Math.abs(timeS - marked) <= SAME_VALUE * marked)?.stops;
}
