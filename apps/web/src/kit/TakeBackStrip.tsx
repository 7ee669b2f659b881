import { Word } from "./Word.tsx";
import "./TakeBackStrip.css";

export interface TakeBackStripProps {
  /** What was changed: “W30 discarded.” */
  readonly said: string;
  readonly onTakeBack: () => void;
}

/** After each change, over the foot, until the next change; never on a timer. */
export function TakeBackStrip({ said, onTakeBack }: TakeBackStripProps) {
  return (
    <div className="Kit-TakeBackStrip" data-ground="dark">
      <span role="status">{said}</span>
      <Word onPress={onTakeBack}>Take back</Word>
    </div>
  );
}
