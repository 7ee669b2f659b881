import type { ShownCaution } from "@captray/science/chemistry";
import type { MixingPour, MixingStep } from "./mixingTypes.ts";

/** Solids are dissolved in three quarters of the water. */
const firstWater = 0.75;

/** At which step a caution is due first; what is not named here is due before all of it. */
const dueAt: Readonly<Record<string, (step: MixingStep) => boolean>> = {
  "ox-eye5": ({ does }) => does === "peroxide",
  "ox-eye8": ({ does }) => does === "peroxide",
  "ox-12": ({ does }) => does === "peroxide",
  "ox-35": ({ does }) => does === "peroxide",
  "ox-metal": ({ does }) => does === "peroxide",
  "ox-acetic": ({ does }) => does === "peroxide",
  "clear-hot": ({ does }) => does === "dissolve",
  ci: (step) => step.does === "dissolve" && step.what === "citric",
  "ac-10": (step) => step.does === "pour" && step.what === "acetic",
  "ac-25": (step) => step.does === "pour" && step.what === "acetic",
  "dev-skin": (step) => step.does === "pour" && step.what === "developer",
  "dev-powder": (step) => step.does === "pour" && step.what === "developer",
  "ox-vent": ({ does }) => does === "label",
};

type Bare<S> = S extends MixingStep ? Omit<S, "cautions"> : never;

/** The order of working: water first, one thing dissolved wholly before the next, acid into water, peroxide last and cold. */
export function mixingSteps(asked: {
  readonly volumeMl: number;
  readonly waterMl: number;
  readonly pours: readonly MixingPour[];
  readonly cautions: readonly ShownCaution[];
}): readonly MixingStep[] {
  const { volumeMl, waterMl, pours, cautions } = asked;
  const solids = pours.flatMap((pour) => ("amountG" in pour ? [pour] : []));
  const peroxide = pours.find((pour) => pour.what === "peroxide");
  const peroxideMl = peroxide !== undefined && "amountMl" in peroxide ? peroxide.amountMl : 0;
  const liquids = pours.flatMap((pour) =>
    "amountMl" in pour && pour.what !== "peroxide" && pour.what !== "water" ? [{ ...pour, what: pour.what }] : [],
  );
  const isForBleach = peroxide !== undefined || solids.some(({ what }) => what === "citric");
  const isStirred = solids.length > 0;
  const bare: Bare<MixingStep>[] = [
    ...(waterMl > 0
      ? [{ does: "water", amountMl: isStirred ? waterMl * firstWater : waterMl, isForBleach } as const]
      : []),
    ...solids.map(({ what, name, amountG }) => ({ does: "dissolve", what, name, amountG }) as const),
    ...liquids.map(({ what, name, amountMl }) => ({ does: "pour", what, name, amountMl }) as const),
    ...(isStirred ? [{ does: "topUp", toMl: volumeMl - peroxideMl, isForBleach } as const] : []),
    ...(peroxide === undefined
      ? []
      : [{ does: "peroxide", name: peroxide.name, amountMl: peroxideMl, toMl: volumeMl } as const]),
    { does: "label", isVented: peroxide !== undefined },
  ];
  const steps = bare.map((step) => ({ ...step, cautions: [] }) as MixingStep);
  return steps.map((step) => ({
    ...step,
    cautions: cautions.filter(({ id }) => steps.find((one) => dueAt[id]?.(one)) === step),
  }));
}
