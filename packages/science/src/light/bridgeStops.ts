import { requirePositive } from "../errors/require.ts";

export interface BridgeStopsInput {
  readonly dialIso: number;
  readonly exposureIndex: number;
}

/**
 * How many stops to add to a reading made at the dial's ISO, because the paper's own index lies below the dial.
 *
 * Formula  B = log2(S / EI); the time read is then multiplied by 2^B.
 * Units    B in stops; S (the dial's ISO) and EI have none. On a dial with third clicks B stops are 3 · B clicks.
 * Holds    for any pair; below 0 if the paper is faster than the dial. Never for an EV100, which is free of the dial.
 * Error    a dial of step c rounds with sd c / √12: 0.29, 0.14 or 0.10 stop for full, half or third steps.
 *
 * @throws {OutOfDomain} notPositive
 * @source apex: speeds as powers of two (second hand); none: the bridge itself (by hand)
 * @example bridgeStops({ dialIso: 6, exposureIndex: 0.75 }) // 3, in stops
 */
export function bridgeStops({ dialIso, exposureIndex }: BridgeStopsInput): number {
  requirePositive({ dialIso, exposureIndex });
  return Math.log2(dialIso / exposureIndex);
}
