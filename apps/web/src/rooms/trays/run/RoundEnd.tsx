import { WetPress } from "../../../kit/WetPress.tsx";
import { DarkOrClear } from "./DarkOrClear.tsx";
import { Notices } from "./Notices.tsx";
import type { RunView } from "./runTypes.ts";

/** The end of a bleach round: two halves, each a press. */
export function RoundEnd({
  view,
  round,
  notices,
  onPress,
}: {
  readonly view: RunView;
  readonly round: NonNullable<RunView["round"]>;
  readonly notices: readonly string[];
  readonly onPress: (press: "another" | "clear", stampMs?: number) => void;
}) {
  return (
    <div className="Trays-Round">
      <p className="Trays-Run-top">
        <b>{round.top}</b>
        <span>{view.since}</span>
      </p>
      <Notices words={notices} />
      <div className="Trays-Round-head">
        <h1>{round.head}</h1>
        <p>{round.say}</p>
      </div>
      <span className="unseen" role="timer" aria-live="off">
        {view.figure}
      </span>
      {round.halves.map((half) => (
        <WetPress
          key={half.press}
          className="Trays-Round-half"
          means={`${view.laneId}${half.press}`}
          main={half.press === "another"}
          onPress={(stampMs) => onPress(half.press, stampMs)}
        >
          <span className="Trays-Round-words">
            <b>{half.word}</b>
            <strong>{half.line}</strong>
            <span>{half.more}</span>
            {half.noPress !== undefined && <strong>{half.noPress}</strong>}
          </span>
          <DarkOrClear dark={half.press === "another"} />
        </WetPress>
      ))}
      <p className="Trays-Round-keys">{view.move.split(":")[0]}: any key is “still dark”; C is “clear”.</p>
    </div>
  );
}
