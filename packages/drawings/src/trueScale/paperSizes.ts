/** Sheets that a printer takes, upright. Sides of A sizes are whole millimetres; Letter is 8½ by 11 inches. */
export const paperSizes = {
  a6: { name: "A6", widthMm: 105, heightMm: 148 },
  a4: { name: "A4", widthMm: 210, heightMm: 297 },
  letter: { name: "Letter", widthMm: 215.9, heightMm: 279.4 },
} as const;
export type PaperName = keyof typeof paperSizes;

/** Few printers reach nearer to an edge. */
export const marginMm = 5;
