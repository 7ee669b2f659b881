import type { ChemicalFocus } from "@captray/notebook/answers";

export interface ChecklistStep {
  readonly key: string;
  readonly say: string;
  readonly why?: string;
}

const nineInTen = 1.645;

/** What the hands do between the ground glass and the cap, in their order; the push for chemical focus where the lens asks for it. */
export function checklistSteps({
  chemicalFocus,
  focusSaid,
  boxName,
}: {
  readonly chemicalFocus: ChemicalFocus | undefined;
  /** “board to ground glass 248 mm”, where it was said. */
  readonly focusSaid: string | undefined;
  readonly boxName: string | undefined;
}): readonly ChecklistStep[] {
  return [
    { key: "stands", say: "The camera stands still: legs spread, screws tight, nothing swings from it." },
    {
      key: "focus",
      say: "Focused on the ground glass at the taking stop, and the corners looked at.",
      ...(focusSaid !== undefined && { why: `This scene was planned with ${focusSaid}.` }),
    },
    ...pushSteps(chemicalFocus),
    { key: "clamp", say: "Everything clamped: front, back and bed. The ground glass looked at once more." },
    { key: "stop", say: "The right stop in the lens." },
    { key: "cap", say: "The cap on the lens." },
    {
      key: "holder",
      say: "The holder in, seated all round, pushed home until it clicks.",
      ...(boxName !== undefined && { why: `The side that has ${boxName} in it faces the lens.` }),
    },
    { key: "cloth", say: "The dark cloth over the back of the camera: old holders leak." },
    { key: "slide", say: "The slide out, slowly and straight, and kept in the hand." },
    { key: "still", say: "Wait until nothing trembles." },
  ];
}

function pushSteps(chemicalFocus: ChemicalFocus | undefined): readonly ChecklistStep[] {
  if (chemicalFocus?.kind === "push" && chemicalFocus.shiftMm > 0) {
    const { shiftMm, sdMm, blurMm } = chemicalFocus;
    const left = blurMm === null ? "" : ` Left undone, a point becomes a disc of ${blurMm.toFixed(1)} mm.`;
    return [
      {
        key: "push",
        say: `Now push the back in, towards the lens, by ${shiftMm.toFixed(1)} mm.`,
        why: `A single lens draws the blue that this paper sees nearer than the eye's green: ${shiftMm.toFixed(1)} mm, give or take ${(nineInTen * sdMm).toFixed(1)}, an assumption until you photograph a slanted ruler.${left}`,
      },
    ];
  }
  if (chemicalFocus?.kind === "otherLight") {
    return [
      {
        key: "push",
        say: "A single lens, and a paper or filter that is not blue alone: try the focus with a slanted ruler.",
      },
    ];
  }
  return [];
}
