import { Caution } from "../../../kit/Caution.tsx";

/** What can hurt a person or a box of paper at the lamp; it stands where the act is. */
export function FlashCautions() {
  return (
    <div className="Camera-Flash-cautions">
      <Caution stuff="Mains and wet hands:">
        dry hands at switch and plug; lamp, lead and switch out of reach of trays and taps, on a circuit with a
        residual-current breaker. Local rules for electrical work come first.
      </Caution>
      <Caution stuff="The lamp:">
        boxes, holders and every other sheet shut before it comes on. Do not look into it. A covered bulb grows hot: let
        it air, and cover it with nothing that can burn.
      </Caution>
    </div>
  );
}
