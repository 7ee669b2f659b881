import { isoStandardLens } from "../tables/isoStandardLens.ts";
import { requireWord } from "./requireWord.ts";
import { bell, wavelengthsNm } from "./spectralGrid.ts";

/** What a paper is sensitive to; a variable-contrast paper is blue-sensitive with a little green, more, and much. */
export type PaperSensitivity = "chloride" | "chlorobromide" | "bromide" | "orthochromatic" | "variableContrast";

/** The glass between subject and paper: the ISO standard camera lens, old thin glass, or none (a pinhole). */
export type LensGlass = "standard" | "simple" | "none";

/** Height of the green bell of an orthochromatic paper, its blue plateau being 1. */
export const greenOfOrthochromatic = 0.3;

// The shapes are after textbook figures; edges and heights are assumptions, each edge with an sd of 10 nm.
const blueSide = {
  chloride: edge(380, 28),
  chlorobromide: edge(415, 36),
  bromide: edge(440, 36),
} as const;

export const green: readonly number[] = wavelengthsNm.map((nm) => bell(nm, 545, 60));

/** The three emulsions of a variable-contrast paper, from the hardest to the softest. */
export const variableContrastParts = [withGreen(0.003), withGreen(0.03), withGreen(0.3)] as const;

const papers: Readonly<Record<PaperSensitivity, readonly number[]>> = {
  ...blueSide,
  orthochromatic: withGreen(greenOfOrthochromatic),
  variableContrast: wavelengthsNm.map((_, index) => meanOfParts(index)),
};

const lenses: Readonly<Record<LensGlass, readonly number[]>> = {
  standard: wavelengthsNm.map(
    (nm) => (isoStandardLens.find((row) => row[0] === nm) ?? isoStandardLens.at(-1))?.[1] ?? 1,
  ),
  simple: wavelengthsNm.map((nm) => 1 / (1 + Math.exp(-(nm - 345) / 6))),
  none: wavelengthsNm.map(() => 1),
};

export const paperSensitivities = Object.keys(papers) as readonly PaperSensitivity[];
export const lensGlasses = Object.keys(lenses) as readonly LensGlass[];

/** The paper's answer to equal energy at each wavelength of the grid. Inner helper. */
export function paperResponse(paper: PaperSensitivity): readonly number[] {
  requireWord({ paper }, paperSensitivities);
  return papers[paper];
}

/** What the glass lets through at each wavelength of the grid. Inner helper. */
export function glassOf(lens: LensGlass): readonly number[] {
  requireWord({ lens }, lensGlasses);
  return lenses[lens];
}

function edge(edgeNm: number, widthNm: number): readonly number[] {
  return wavelengthsNm.map((nm) => (nm <= edgeNm ? 1 : 10 ** -(((nm - edgeNm) / widthNm) ** 2)));
}

function withGreen(height: number): readonly number[] {
  return blueSide.bromide.map((blue, index) => blue + height * (green[index] ?? 0));
}

function meanOfParts(index: number): number {
  return variableContrastParts.reduce((sum, part) => sum + (part[index] ?? 0), 0) / variableContrastParts.length;
}
