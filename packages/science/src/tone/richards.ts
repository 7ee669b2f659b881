// Inner helpers keep positions: they run for every patch of every sheet.

/** What of a curve's form the developable share depends on. */
export interface Form {
  readonly x50: number;
  readonly width: number;
  readonly q: number;
}

/** The developable share and its slopes. */
export interface Share {
  readonly share: number;
  readonly byLogExposure: number;
  readonly byLnWidth: number;
  readonly byLnQ: number;
}

const LN10 = Math.LN10;
const LN2 = Math.LN2;
const NINE_TENTHS = -Math.log(0.9);

/** Richards' curve at a log exposure, in steps that neither overflow nor cancel. */
export function shareAt(logExposure: number, { x50, width, q }: Form): Share {
  const steepness = (placeOf(LN10, q) - placeOf(NINE_TENTHS, q)) / width;
  const off = logExposure - x50;
  const z = steepness * off - placeOf(LN2, q);
  const least = Math.log1p(Math.exp(-Math.abs(z)));
  // ln(1 + e^−z) and ln(1 + e^z)
  const [soft, softUp] = z > 0 ? [least, z + least] : [least - z, least];
  const share = Math.exp(-q * soft);
  const byPlace = q * share * Math.exp(-softUp);
  // 0 · ∞ at exposures beyond all paper is still 0.
  const flat = byPlace === 0;
  const bend = flat ? 0 : (off / width) * (placeSlope(LN10, q) - placeSlope(NINE_TENTHS, q)) - placeSlope(LN2, q);
  return {
    share,
    byLogExposure: flat ? 0 : steepness * byPlace,
    // Adding 0 makes a plain zero of −0.
    byLnWidth: flat ? 0 : -steepness * off * byPlace + 0,
    byLnQ: (share === 0 ? 0 : -q * share * soft) - (byPlace * bend) / q + 0,
  };
}

/** The place z of a log exposure on the curve as a straight line: z = slope · x + start. */
export function straightPlace({ x50, width, q }: Form): { readonly slope: number; readonly start: number } {
  const slope = (placeOf(LN10, q) - placeOf(NINE_TENTHS, q)) / width;
  return { slope, start: -slope * x50 - placeOf(LN2, q) };
}

/** The developable share at a place, without its slopes. */
export function shareOfPlace(z: number, q: number): number {
  const least = Math.log1p(Math.exp(-Math.abs(z)));
  return Math.exp(-q * (z > 0 ? least : least - z));
}

/** The log exposure that gives a share; 0 < share < 1. */
export function logExposureFor(share: number, { x50, width, q }: Form): number {
  const steepness = (placeOf(LN10, q) - placeOf(NINE_TENTHS, q)) / width;
  return x50 + (placeOf(LN2, q) - placeOf(-Math.log(share), q)) / steepness;
}

/** What of a curve's form all its places share: z = steepness · (x − x50) − half, and how both turn with 1/q. */
export function formOf({ width, q }: Omit<Form, "x50">): {
  readonly steepness: number;
  readonly half: number;
  readonly steepBend: number;
  readonly halfBend: number;
} {
  return {
    steepness: (placeOf(LN10, q) - placeOf(NINE_TENTHS, q)) / width,
    half: placeOf(LN2, q),
    steepBend: (placeSlope(LN10, q) - placeSlope(NINE_TENTHS, q)) / width,
    halfBend: placeSlope(LN2, q),
  };
}

/** c(p) = ln(p^(−1/q) − 1), with −ln p handed in. */
function placeOf(minusLnP: number, q: number): number {
  const power = minusLnP / q;
  return power > 30 ? power + Math.log1p(-Math.exp(-power)) : Math.log(Math.expm1(power));
}

/** Its slope by 1/q. */
function placeSlope(minusLnP: number, q: number): number {
  return minusLnP / -Math.expm1(-minusLnP / q);
}
