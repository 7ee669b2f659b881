declare module "fft.js" {
  /** Fourier transforms of one length, a power of two; complex numbers lie as real, imaginary, real, imaginary … */
  export default class FFT {
    constructor(size: number);
    createComplexArray(): number[];
    transform(out: number[], data: readonly number[]): void;
    inverseTransform(out: number[], data: readonly number[]): void;
  }
}
