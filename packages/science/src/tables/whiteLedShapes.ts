// Blue-pumped white LED lamps as two bell curves: a symmetrical blue one and a phosphor one with unlike flanks.
// Source: shape jin-2013 (abstract seen); parameters fitted by least squares to the tables LED-B1…B5 of cie-15 (by hand, rms
// 1.6–2.2 % of the peak). Violet-pumped and red-green-blue lamps are other lamps and differ by stops.

export interface WhiteLedShape {
  readonly cctK: number;
  readonly blueNm: number;
  readonly blueWidthNm: number;
  readonly phosphorNm: number;
  readonly leftWidthNm: number;
  readonly rightWidthNm: number;
  /** Height of the phosphor's curve, that of the blue one being 1. */
  readonly phosphorRatio: number;
}

/** From the warmest to the coolest; widths are full widths at half height. */
export const whiteLedShapes: readonly WhiteLedShape[] = [
  {
    cctK: 2733,
    blueNm: 452.5,
    blueWidthNm: 28.4,
    phosphorNm: 608.8,
    leftWidthNm: 151.3,
    rightWidthNm: 126.3,
    phosphorRatio: 3.08,
  },
  {
    cctK: 2998,
    blueNm: 452.4,
    blueWidthNm: 24,
    phosphorNm: 605.3,
    leftWidthNm: 159.9,
    rightWidthNm: 131,
    phosphorRatio: 2.15,
  },
  {
    cctK: 4103,
    blueNm: 448.2,
    blueWidthNm: 20.4,
    phosphorNm: 589.7,
    leftWidthNm: 179.3,
    rightWidthNm: 139.8,
    phosphorRatio: 1.05,
  },
  {
    cctK: 5109,
    blueNm: 451.2,
    blueWidthNm: 26.3,
    phosphorNm: 556.4,
    leftWidthNm: 98.4,
    rightWidthNm: 175.1,
    phosphorRatio: 0.7,
  },
  {
    cctK: 6598,
    blueNm: 451.7,
    blueWidthNm: 25.7,
    phosphorNm: 553.7,
    leftWidthNm: 117.1,
    rightWidthNm: 166.2,
    phosphorRatio: 0.55,
  },
];
