export interface ToneCurvePoint {
  /** From the placed area. */
  readonly stops: number;
  readonly density: number;
  /** Nine in ten. */
  readonly low: number;
  readonly high: number;
}

export interface ToneArea {
  readonly name: string;
  /** Where it lies on the curve, flash and flare included, in stops from the placed area. */
  readonly stops: number;
  readonly density: number;
  readonly low: number;
  readonly high: number;
  /** The same area under the other choice: without flash, or at the advised time. */
  readonly other?: { readonly stops: number; readonly density: number } | undefined;
}

export interface ToneDrawingInput {
  readonly widthPx: number;
  /** Size of the letters: 15 at the usual size of the page's letters. */
  readonly letterPx: number;
  /** Height of one whole density. */
  readonly perDensityPx: number;
  readonly kind: "positive" | "negative";
  /** What the curve is of, for the ear: "paper box C with recipe 4". */
  readonly of: string;
  /** From the least exposure to the most; at least two points. */
  readonly curve: readonly ToneCurvePoint[];
  readonly areas: readonly ToneArea[];
  /** Ends of the exposure axis; without them those of the curve. */
  readonly fromStops?: number | undefined;
  readonly toStops?: number | undefined;
  /** Densities aimed at, that of the highlights first. */
  readonly wanted: readonly { readonly words: string; readonly density: number }[];
  /** What spans how many stops, drawn above: the scene, this paper. */
  readonly dimensions: readonly { readonly words: string; readonly from: number; readonly to: number }[];
  /** Rows kept free for the names, so that the height stays while marks glide. */
  readonly leastNameRows?: number | undefined;
}
