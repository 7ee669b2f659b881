import type { BathRole, RecipeStep } from "@captray/notebook/records";

const byBath: Readonly<Partial<Record<BathRole, string>>> = {
  developer: "Developer: gloves.",
  firstDeveloper: "Developer: gloves.",
  secondDeveloper: "Developer: gloves.",
  stop: "Stop: gloves, air moving.",
  acid: "Acid: gloves, goggles.",
  peroxide: "Peroxide: gloves, goggles, no lid.",
  acidAndPeroxide: "Bleach: gloves, goggles, air moving, no lid.",
  clear: "Clearing bath: no acid carried in; air moving.",
  fix: "Fix: gloves, air moving; its waste apart from the bleach.",
};

/** The caution that stands where the act is: of the bath the hands are in, or of the lamp they switch. */
export function cautionWords(steps: readonly (RecipeStep | undefined)[]): string | null {
  const said = steps.flatMap((step) => {
    if (step === undefined) return [];
    if (step.light === "whiteRequired") return ["Mains and wet hands: switch with a dry hand, or the foot."];
    const words = step.bath === undefined ? undefined : byBath[step.bath];
    return words === undefined ? [] : [words];
  });
  return said.length === 0 ? null : [...new Set(said)].join(" ");
}
