import { type Affine, enlarged, led, scaleOf } from "./affine.ts";
import { coarseAlignment } from "./coarseAlignment.ts";
import { type FineFit, fineFit } from "./fineFit.ts";
import { type GreyPicture, greyPyramid, type Level, mirrored } from "./greyPyramid.ts";
import { type Likeness, likenessOf } from "./likenessOf.ts";
import { toneMatched } from "./toneMatched.ts";

export interface AlignPrintsInput {
  readonly first: GreyPicture;
  /** Another print of the scene, or its paper negative. */
  readonly second: GreyPicture;
}

/** How the first print lies in the second. */
export interface AlignedPrints extends Likeness {
  readonly kind: "aligned";
  readonly transform: Affine;
  readonly turnDegrees: number;
  /** How many times as large the second shows what the first shows. */
  readonly scale: number;
  /** Where the middle of the first lies, from the middle of the second. */
  readonly rightPx: number;
  readonly downPx: number;
  /** Tones run the other way: one of the two is a negative. */
  readonly negative: boolean;
  /** One is seen in a mirror, as a paper negative is against its contact print. */
  readonly mirrored: boolean;
  /** Standard deviation of where the worst corner of the first lies in the second. */
  readonly cornerErrorPx: number;
  /** Share of the first that lies on the second. */
  readonly overlap: number;
}

/** No placing can be trusted: four places tapped in both prints are the way out. */
export interface PrintsNotAligned extends Likeness {
  readonly kind: "printsNotAligned";
  readonly why: "noDetail" | "residualHigh" | "peakLow";
}

/** Above this share of unexplained details, and below this peak, nothing is said. */
const MOST_RESIDUAL = 0.9;
const LEAST_PEAK = 2;
/** One print of a flat sheet is turned and enlarged against another, never skewed by more than paper stretches. */
const MOST_SKEW = 0.03;
const SCALES = { least: 0.4, most: 2.5 };
/** A level's fit ends when no corner moves by more, or after so many rounds: the smallest level has the longest way to go. */
const SMALLEST = { stopPx: 0.02, mostRounds: 30 };
const LARGER = { stopPx: 0.02, mostRounds: 12 };
const WHOLE = { stopPx: 0.002, mostRounds: 12 };
/** Likeness is judged on the level that is at most so wide. */
const JUDGED_AT_PX = 400;

/**
 * Where one print of a scene lies in another print of it, or in its negative.
 *
 * Method   edges of small copies, faded out in a circle: turn and scale from their log-polar spectra and the shift, by phase
 *          correlation. From there and from "no turn": Gauss–Newton of six affine numbers, gain and offset over a pyramid of
 *          four levels, far-off pixels weighing less; the lower residual is kept. Where neither holds, the second is tried in
 *          a mirror. Details and phases, not what was fitted, decide whether the answer is given.
 * Units    pixels from the top left edge, x to the right and y down; degrees, clockwise as seen.
 * Holds    flat sheets of one scene by one camera: any turn, enlarged to half or double, a quarter of the first in common.
 *          Densities or codes rather than light: a negative is then nearer to a straight line of its positive.
 * Error    0.1 px at the corners of 1500 × 1200 painted prints; said with each answer, from what is left over in 64 blocks.
 *          A camera moved between two prints shifts near things against far ones: areas then agree, pixels do not.
 *
 * @throws {OutOfDomain} outOfRange (under 64 px or over 8192 px a side), listsDiffer, wrongType, notFinite
 * @source kuglin-hines-1975: phase correlation (from memory); reddy-chatterji-1996: log-polar spectra (from memory); baker-matthews-2004: the fit as a kind of Lucas–Kanade (from memory)
 * @example ((print) => alignPrints({ first: print, second: print }))({ widthPx: 64, heightPx: 64, values: Float32Array.from({ length: 4096 }, (_, i) => (1e4 * Math.sin(i + 1)) % 1) }).kind // "aligned"
 */
export function alignPrints({ first, second }: AlignPrintsInput): AlignedPrints | PrintsNotAligned {
  const [a, b] = [greyPyramid(first, "first"), greyPyramid(second, "second")];
  if (a === undefined || b === undefined) return { kind: "printsNotAligned", why: "noDetail", residual: 1, peak: 0 };
  const straight = attempt(a, b);
  if (straight.kind === "aligned") return straight;
  const other = attempt(a, b.map(mirrored));
  if (other.kind !== "aligned") return straight.residual <= other.residual ? straight : other;
  const { xx, xy, x0 } = other.transform;
  return {
    ...other,
    mirrored: true,
    rightPx: -other.rightPx,
    transform: { ...other.transform, xx: -xx, xy: -xy, x0: second.widthPx - x0 },
  };
}

function attempt(a: readonly Level[], b: readonly Level[]): AlignedPrints | PrintsNotAligned {
  const depth = Math.min(a.length, b.length);
  const fitsIn = (level: Level, i: number) =>
    Math.max(level.widthPx, level.heightPx) <= JUDGED_AT_PX || i === depth - 1;
  const judged = Math.max(0, a.findIndex(fitsIn));
  const starts = coarseAlignment(a, b);
  const [smallA, smallB] = [a[depth - 1] as Level, b[depth - 1] as Level];
  const fits = starts.flatMap((start) => fitFrom(smallA, smallB, enlarged(start, 0.5 ** (depth - 1))) ?? []);
  // Where a border draws every fit away, the coarse answer is still the best there is.
  let transform = enlarged(starts.at(-1) as Affine, 0.5 ** (depth - 1));
  if (fits.length > 0) transform = fits.reduce((one, other) => (likelier(other, one) ? other : one)).transform;
  let fit: FineFit | undefined;
  // Once laid over one another, the pictures tell each other's tone curve: a straight line between them then fits far better.
  for (let level = depth - 1; level >= 0; level--) {
    if (level < depth - 1) transform = enlarged(transform, 2);
    const { picture } = toneMatched(a[level] as Level, b[level] as Level, transform, level < 2 ? 2 : 1);
    fit = fitFrom(picture, b[level] as Level, transform, level === 0 ? WHOLE : LARGER);
    if (fit !== undefined) transform = fit.transform;
    // Strangers are known as such before the large levels are tried.
    if (level === judged && level > 0) {
      const { likeness } = judgedAt(a, b, transform, level, level);
      if (likeness.residual > MOST_RESIDUAL) return { kind: "printsNotAligned", why: "residualHigh", ...likeness };
    }
  }
  if (fit === undefined) return { kind: "printsNotAligned", why: "residualHigh", residual: 1, peak: 0 };
  const { overlap, cornerErrorPx } = fit;
  const { likeness, negative } = judgedAt(a, b, transform, 0, judged);
  if (likeness.residual > MOST_RESIDUAL) return { kind: "printsNotAligned", why: "residualHigh", ...likeness };
  if (likeness.peak < LEAST_PEAK) return { kind: "printsNotAligned", why: "peakLow", ...likeness };
  const [one, two] = [a[0] as Level, b[0] as Level];
  const [x, y] = led(transform, one.widthPx / 2, one.heightPx / 2);
  return {
    kind: "aligned",
    transform,
    turnDegrees: (Math.atan2(transform.yx - transform.xy, transform.xx + transform.yy) * 180) / Math.PI,
    scale: scaleOf(transform),
    rightPx: x - two.widthPx / 2,
    downPx: y - two.heightPx / 2,
    mirrored: false,
    ...{ negative, cornerErrorPx, overlap },
    ...likeness,
  };
}

/** How alike the pictures are on one level, by a placing found on another. */
function judgedAt(a: readonly Level[], b: readonly Level[], transform: Affine, found: number, level: number) {
  const [first, second] = [a[level] as Level, b[level] as Level];
  const small = enlarged(transform, 2 ** (found - level));
  const { picture, negative } = toneMatched(first, second, small, 1);
  return { likeness: likenessOf(picture, second, small), negative };
}

const likelier = (one: FineFit, other: FineFit) => one.correlation ** 2 > other.correlation ** 2;

/** One level's fit, if it is still one flat sheet laid on another. The two finest levels have pixels enough for every second to do. */
function fitFrom(first: Level, second: Level, start: Affine, ends = SMALLEST): FineFit | undefined {
  const stride = first.widthPx * first.heightPx > 300_000 ? 2 : 1;
  const fit = fineFit({ first, second, start, stride, ...ends });
  if (fit === undefined) return undefined;
  const { xx, xy, yx, yy } = fit.transform;
  const scale = scaleOf(fit.transform);
  const skew = Math.hypot(xx - yy, xy + yx) / scale;
  return skew <= MOST_SKEW && scale >= SCALES.least && scale <= SCALES.most ? fit : undefined;
}
