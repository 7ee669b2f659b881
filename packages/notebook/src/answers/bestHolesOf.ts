import { pinholeDiameter } from "@captray/science/optics";

/** The holes that draw sharpest from this far off: for the eye, and for paper that sees blue. */
export function bestHolesOf({ extensionMm }: { readonly extensionMm: number }): {
  readonly eyeMm: number;
  readonly blueMm: number;
} {
  return {
    eyeMm: pinholeDiameter({ extensionMm }),
    blueMm: pinholeDiameter({ extensionMm, wavelengthNm: 450 }),
  };
}
