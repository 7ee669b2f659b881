import { planDefaults } from "@captray/science/exposure";
import { lensTransmission } from "@captray/science/optics";
import type { Lens } from "../records/index.ts";

/** Light thrown back at one surface, by its coating: bare 0.04 to 0.06; common practice. */
const reflectance = { bare: 0.0465, single: 0.015, several: 0.005 } as const;

/** The light a lens lets through, from its surfaces between air and glass and their coating; the doubt is that of unknown glass. */
export function glassPassesOf({ count, coating }: NonNullable<Lens["surfaces"]>): {
  readonly value: number;
  readonly sdStops: number;
} {
  const value = lensTransmission({ surfaces: count, surfaceReflectance: reflectance[coating] });
  return { value: Math.round(value * 1000) / 1000, sdStops: planDefaults.lens.transmissionSdStops };
}
