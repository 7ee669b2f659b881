import { type Affine, led } from "./affine.ts";
import { fourier2, type Plane } from "./fourier2.ts";
import { type Level, valueAt } from "./greyPyramid.ts";
import { phaseCorrelation, shiftOf } from "./phaseCorrelation.ts";

/** Copies for the spectra are at most so wide; those for the shift are half as wide. */
const MOST_SIDE_PX = 512;
/** The part of the spectrum that is looked at, of its half width: below lies the window, above the grain. */
const LOWEST = 0.03;
const HIGHEST = 0.7;
/** Enlargements looked for, either way. */
const MOST_SCALE = 2;

/**
 * Where the first picture may lie in the second, to a degree and a hundredth: from "no turn", and from the turn and scale of
 * their spectra. Edges, not tones, are compared, so that a negative is like its positive.
 */
export function coarseAlignment(first: readonly Level[], second: readonly Level[]): Affine[] {
  const [a, b] = [first[0] as Level, second[0] as Level];
  const longest = Math.max(a.widthPx, a.heightPx, b.widthPx, b.heightPx);
  const side = Math.min(MOST_SIDE_PX, 2 ** Math.floor(Math.log2(longest)));
  const unturned = { turn: 0, scale: 1 };
  const spectral = turnAndScale(
    edgesOf(first, unturned, side, longest / side),
    edgesOf(second, unturned, side, longest / side),
  );
  const small = side / 2;
  const stepPx = longest / small;
  const plane = edgesOf(first, unturned, small, stepPx);
  const shifted = (turned: Turned) => {
    const correlation = phaseCorrelation(plane, edgesOf(second, turned, small, stepPx));
    const { downPx, rightPx } = shiftOf(correlation, plane);
    const { xx, xy, yx, yy } = turnedBy(turned);
    // The shift was found in the turned copy: it is turned back onto the picture.
    const [dx, dy] = [rightPx * stepPx - a.widthPx / 2, downPx * stepPx - a.heightPx / 2];
    const affine: Affine = {
      ...{ xx, xy, yx, yy },
      x0: b.widthPx / 2 + xx * dx + xy * dy,
      y0: b.heightPx / 2 + yx * dx + yy * dy,
    };
    return { affine, height: correlation.data[correlation.peak] ?? 0 };
  };
  // A spectrum looks the same upside down.
  const found = [spectral, { ...spectral, turn: spectral.turn + Math.PI }].map(shifted);
  const best = found.reduce((one, other) => (other.height > one.height ? other : one));
  return [shifted(unturned).affine, best.affine];
}

interface Turned {
  readonly turn: number;
  readonly scale: number;
}

function turnedBy({ turn, scale }: Turned): Affine {
  const [c, s] = [scale * Math.cos(turn), scale * Math.sin(turn)];
  return { xx: c, xy: -s, x0: 0, yx: s, yy: c, y0: 0 };
}

/**
 * The edges of a picture in a square about its middle, turned back, and faded out in a circle: a window with corners would
 * put its own axes into the spectrum, and small turns would not be seen.
 */
function edgesOf(levels: readonly Level[], turned: Turned, side: number, stepPx: number): Plane {
  const whole = levels[0] as Level;
  const depth = Math.min(levels.length - 1, Math.max(0, Math.floor(Math.log2(stepPx * turned.scale))));
  const level = levels[depth] as Level;
  const times = 2 ** depth;
  const affine = turnedBy(turned);
  const copy = new Float64Array(side * side);
  for (let r = 0; r < side; r++) {
    for (let c = 0; c < side; c++) {
      const [x, y] = led(affine, (c + 0.5 - side / 2) * stepPx, (r + 0.5 - side / 2) * stepPx);
      copy[r * side + c] = valueAt(level, (x + whole.widthPx / 2) / times, (y + whole.heightPx / 2) / times);
    }
  }
  const edges = new Float64Array(side * side).fill(Number.NaN);
  let sum = 0;
  let count = 0;
  for (let r = 1; r < side - 1; r++) {
    for (let c = 1; c < side - 1; c++) {
      const at = r * side + c;
      const across = (copy[at + 1] as number) - (copy[at - 1] as number);
      const down = (copy[at + side] as number) - (copy[at - side] as number);
      // The root: the strongest edges should not speak alone.
      const edge = Math.sqrt(Math.hypot(across, down));
      if (Number.isNaN(edge)) continue;
      edges[at] = edge;
      sum += edge;
      count++;
    }
  }
  const mean = count === 0 ? 0 : sum / count;
  const radius = Math.min(side / 2, Math.min(whole.widthPx, whole.heightPx) / (2 * stepPx * turned.scale));
  for (let r = 0; r < side; r++) {
    for (let c = 0; c < side; c++) {
      const at = r * side + c;
      const share = Math.hypot(r + 0.5 - side / 2, c + 0.5 - side / 2) / radius;
      const edge = edges[at] as number;
      edges[at] = share >= 1 || Number.isNaN(edge) ? 0 : (edge - mean) * Math.cos((Math.PI / 2) * share) ** 2;
    }
  }
  return { rows: side, columns: side, re: edges, im: new Float64Array(side * side) };
}

/** Turn and scale of the second against the first: a shift of their spectra in angle and logarithm of frequency. */
function turnAndScale(first: Plane, second: Plane): Turned {
  const [a, b] = [logPolar(first), logPolar(second)];
  const correlation = phaseCorrelation(a, b);
  const perColumn = Math.log(HIGHEST / LOWEST) / a.columns;
  const reach = Math.floor(Math.log(MOST_SCALE) / perColumn);
  let peak = 0;
  let height = -Infinity;
  for (let r = 0; r < a.rows; r++) {
    for (let k = -reach; k <= reach; k++) {
      const at = r * a.columns + ((k + a.columns) % a.columns);
      const value = correlation.data[at] ?? 0;
      if (value > height) [height, peak] = [value, at];
    }
  }
  const { downPx, rightPx } = shiftOf({ peak, data: correlation.data }, a);
  return { turn: (downPx * Math.PI) / a.rows, scale: Math.exp(-rightPx * perColumn) };
}

/** Half the spectrum of a plane, a row an angle and a column a step of frequency. */
function logPolar(plane: Plane): Plane {
  const side = plane.columns;
  const { re, im } = fourier2(plane);
  const [rows, columns] = [side / 2, side / 2];
  const out = new Float64Array(rows * columns);
  const size = new Float64Array(side * side);
  for (let i = 0; i < size.length; i++) size[i] = Math.log1p(Math.hypot(re[i] as number, im[i] as number));
  const at = (x: number, y: number) => size[((y + side) % side) * side + ((x + side) % side)] as number;
  for (let c = 0; c < columns; c++) {
    const radius = (side / 2) * LOWEST * (HIGHEST / LOWEST) ** (c / columns);
    const window = Math.sin((Math.PI * (c + 0.5)) / columns) ** 2;
    let sum = 0;
    for (let r = 0; r < rows; r++) {
      const [x, y] = [radius * Math.cos((Math.PI * r) / rows), radius * Math.sin((Math.PI * r) / rows)];
      const [ix, iy] = [Math.floor(x), Math.floor(y)];
      const [fx, fy] = [x - ix, y - iy];
      const value =
        (at(ix, iy) * (1 - fx) + at(ix + 1, iy) * fx) * (1 - fy) +
        (at(ix, iy + 1) * (1 - fx) + at(ix + 1, iy + 1) * fx) * fy;
      out[r * columns + c] = value;
      sum += value;
    }
    // The fall of every spectrum towards fine detail says nothing of the turn, and would hold the scale at 1.
    for (let r = 0; r < rows; r++) {
      out[r * columns + c] = ((out[r * columns + c] as number) - sum / rows) * window;
    }
  }
  return { rows, columns, re: out, im: new Float64Array(out.length) };
}
