import FFT from "fft.js";

/** Complex numbers in rows and columns. */
export interface Plane {
  readonly rows: number;
  readonly columns: number;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** The Fourier transform of a plane, there or back; a new plane. */
export function fourier2(plane: Plane, way: "there" | "back" = "there"): Plane {
  const { rows, columns } = plane;
  const re = Float64Array.from(plane.re);
  const im = Float64Array.from(plane.im);
  along(re, im, { lines: rows, length: columns, step: 1, next: columns }, way);
  along(re, im, { lines: columns, length: rows, step: columns, next: 1 }, way);
  return { rows, columns, re, im };
}

interface Lines {
  readonly lines: number;
  readonly length: number;
  /** From one number of a line to its next, and from one line to the next. */
  readonly step: number;
  readonly next: number;
}

function along(re: Float64Array, im: Float64Array, { lines, length, step, next }: Lines, way: "there" | "back"): void {
  const transform = transformOf(length, way);
  const line = new Float64Array(length * 2);
  for (let l = 0; l < lines; l++) {
    for (let i = 0; i < length; i++) {
      line[2 * i] = re[l * next + i * step] ?? 0;
      line[2 * i + 1] = im[l * next + i * step] ?? 0;
    }
    const out = transform(line);
    for (let i = 0; i < length; i++) {
      re[l * next + i * step] = out[2 * i] ?? 0;
      im[l * next + i * step] = out[2 * i + 1] ?? 0;
    }
  }
}

function transformOf(length: number, way: "there" | "back"): (line: Float64Array) => ArrayLike<number> {
  if (length > 1 && (length & (length - 1)) === 0) {
    const fft = new FFT(length);
    const out = fft.createComplexArray();
    return (line) => {
      if (way === "there") fft.transform(out, line as unknown as number[]);
      else fft.inverseTransform(out, line as unknown as number[]);
      return out;
    };
  }
  // Sizes that are no power of two are small here: written out as the sum it is.
  const sign = way === "there" ? -1 : 1;
  const scale = way === "there" ? 1 : 1 / length;
  const cos = Float64Array.from({ length }, (_, i) => Math.cos((2 * Math.PI * i) / length));
  const sin = Float64Array.from({ length }, (_, i) => sign * Math.sin((2 * Math.PI * i) / length));
  const out = new Float64Array(length * 2);
  return (line) => {
    for (let k = 0; k < length; k++) {
      let sumRe = 0;
      let sumIm = 0;
      for (let i = 0; i < length; i++) {
        const at = (k * i) % length;
        const [c, s, a, b] = [cos[at] ?? 0, sin[at] ?? 0, line[2 * i] ?? 0, line[2 * i + 1] ?? 0];
        sumRe += a * c - b * s;
        sumIm += a * s + b * c;
      }
      out[2 * k] = sumRe * scale;
      out[2 * k + 1] = sumIm * scale;
    }
    return out;
  };
}
