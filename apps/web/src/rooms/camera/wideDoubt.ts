/** A doubt from which on (nine in ten, stops) a picture is a guess, and a step test the better sheet. */
const wideStops = 0.8;
const nineInTen = 1.645;

/** Whether a plan is so unsure that a step test should come first. */
export function isWideDoubt({ sdStops }: { readonly sdStops: number }): boolean {
  return nineInTen * sdStops >= wideStops;
}
