import { requirePositive } from "../errors/require.ts";
import { exposureValue } from "./exposureValue.ts";
import type { ReadingSettings } from "./luminanceFromReading.ts";

export type Ev100Input = ReadingSettings;

/**
 * The light itself as an exposure value: the EV a meter set to ISO 100 would show.
 *
 * Formula  EV100 = log2(N² / t) − log2(S / 100).
 * Units    EV100 in stops; t in s; N and S (the dial's ISO) have none.
 * Holds    for any dial setting: light read at ISO 6 and at ISO 400 has one EV100. It is already free of the dial, so no
 *          bridge to the paper's index may be added to it from the dial.
 * Error    that of the meter, sd 0.10 to 0.15 stop.
 *
 * @throws {OutOfDomain} notPositive
 * @source apex: Bv + Sv = Av + Tv with Sv of ISO 100 (second hand)
 * @example ev100({ fNumber: 8, timeS: 4, iso: 6.25 }) // 8
 */
export function ev100({ fNumber, timeS, iso }: Ev100Input): number {
  requirePositive({ fNumber, timeS, iso });
  return exposureValue({ fNumber, timeS }) - Math.log2(iso / 100);
}
