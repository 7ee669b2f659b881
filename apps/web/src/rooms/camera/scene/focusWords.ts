import type { FocusOf, SharpOf } from "@captray/notebook/answers";
import type { Camera, Lens, Scene } from "@captray/notebook/records";
import { messageOf } from "@captray/science/errors";
import { formatLength, showFNumber } from "@captray/science/notation";
import { lengthWithDoubt } from "./focusForm.ts";

type Unit = "mm" | "inch";

/** A lens by its own name, else by its focal length. */
export function lensWords(lens: Lens, lengthUnit: Unit): string {
  if (lens.name !== "") return lens.name;
  if (lens.sort === "pinhole") return "a pinhole";
  const focalLengthMm = lens.measuredFocalLengthMm?.value ?? lens.markedFocalLengthMm?.value;
  return focalLengthMm === undefined ? "a lens" : formatLength({ lengthMm: focalLengthMm, unit: lengthUnit });
}

/** A stop by what was measured, else by what is marked on it. */
export function stopName(stop: Lens["stops"][number]): string {
  const measured = stop.measuredFNumber?.value;
  if (measured !== undefined) return showFNumber({ fNumber: measured });
  if (stop.marked !== undefined) return stop.marked.text ?? showFNumber({ fNumber: stop.marked.value });
  if (stop.diameterMm !== undefined) return `${Number(stop.diameterMm.value.toPrecision(3))} mm hole`;
  return stop.name ?? "a stop";
}

/** “210 mm at f/11.4, subject at 1.37 m”, at the right of the head. */
export function setUpWords({
  scene,
  lens,
  focus,
  sharp,
  lengthUnit,
}: {
  readonly scene: Scene;
  readonly lens: Lens | undefined;
  readonly focus: FocusOf;
  readonly sharp: SharpOf;
  readonly lengthUnit: Unit;
}): string {
  if (lens === undefined) return "no lens yet";
  const words = [lensWords(lens, lengthUnit)];
  if (sharp.kind === "sharp") words[0] += ` at ${showFNumber({ fNumber: sharp.fNumber })}`;
  if (scene.focus === undefined) words.push("not focused yet");
  else if (focus.kind === "focus")
    words.push(
      focus.subjectDistanceMm === null
        ? "distant"
        : `subject at ${lengthWithDoubt({ value: Number(focus.subjectDistanceMm.value.toPrecision(3)), sd: 0 }, lengthUnit).value}`,
    );
  return words.join(", ");
}

export interface FocusProblem {
  readonly head: string;
  readonly say: string;
}

/** What cannot be, or what the bellows cannot do, in words; nothing where all is well. */
export function focusProblem({
  focus,
  camera,
  lengthUnit,
}: {
  readonly focus: FocusOf;
  readonly camera: Camera | undefined;
  readonly lengthUnit: Unit;
}): FocusProblem | undefined {
  if (focus.kind === "refused") {
    const { code, facts, key } = focus.fault;
    const { message, hint } = messageOf({ code, facts, key, lengthUnit });
    return { head: message, say: hint };
  }
  if (focus.kind === "missing") {
    return focus.missing === "lens"
      ? undefined
      : { head: "The lens has no focal length yet", say: "Say on the Shelf what is engraved on it." };
  }
  const { reach } = focus;
  const limits = camera?.extensionLimits;
  if (limits === undefined || reach === undefined || reach === "within") return undefined;
  const mm = (lengthMm: number) => formatLength({ lengthMm, unit: lengthUnit });
  const wanted = focus.kind === "focus" ? focus.extensionMm.value : (focus.extensionMm ?? 0);
  const between = `The camera racks from ${mm(limits.leastMm)} to ${mm(limits.mostMm)}`;
  return reach === "tooLong"
    ? {
        head: "The bellows do not reach so far",
        say: `${between}; this wants ${mm(wanted)}. Step back, or take a shorter lens.`,
      }
    : {
        head: "The board does not come so near",
        say: `${between}; this wants ${mm(wanted)}. Step closer, take a longer lens, or sink the board.`,
      };
}
