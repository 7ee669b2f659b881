/** Sizes that paper, holders and cameras are sold in, as they are called in the trade; a form offers them at one press. */
export const sheetFormats = [
  { name: "9 × 12 cm", widthMm: 90, heightMm: 120 },
  { name: "4 × 5 in", widthMm: 101.6, heightMm: 127 },
  { name: "13 × 18 cm", widthMm: 130, heightMm: 180 },
  { name: "5 × 7 in", widthMm: 127, heightMm: 177.8 },
  { name: "18 × 24 cm", widthMm: 180, heightMm: 240 },
  { name: "8 × 10 in", widthMm: 203.2, heightMm: 254 },
] as const;
