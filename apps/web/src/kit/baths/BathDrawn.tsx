import { bathDrawing } from "@captray/drawings/baths";
import type { BathOnHand } from "@captray/notebook/answers";
import { Drawing } from "../Drawing.tsx";
import { useRoomFor } from "../useRoomFor.ts";
import { bathDrawn } from "./bathDrawn.ts";

export interface BathDrawnProps {
  readonly onHand: BathOnHand;
  readonly nowMs: number;
  readonly sheetM2: number;
}

/** A tray in section over the scale that ends it. */
export function BathDrawn({ onHand, nowMs, sheetM2 }: BathDrawnProps) {
  const [widthPx, letterPx, place] = useRoomFor();
  const drawn = bathDrawn({ onHand, nowMs, sheetM2, widthPx: Math.min(widthPx, 520), letterPx });
  return <div ref={place}>{widthPx > 0 && drawn !== undefined && <Drawing drawing={bathDrawing(drawn)} />}</div>;
}
