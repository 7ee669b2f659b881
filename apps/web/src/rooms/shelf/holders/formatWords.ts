export interface Format {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** "13 × 18 cm". */
export function formatWords({ format: { widthMm, heightMm } }: { readonly format: Format }): string {
  const cm = (mm: number) => String(Number((mm / 10).toFixed(1)));
  return `${cm(widthMm)} × ${cm(heightMm)} cm`;
}
