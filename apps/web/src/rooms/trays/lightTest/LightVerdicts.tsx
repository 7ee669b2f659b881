import { verdictLine } from "./lightWords.ts";
import { useLightTests } from "./useLightTests.ts";
import "./Light.css";

/** What is known of the safelight and of this screen, on this paper: for the door of the room and the list before the lights go out. */
export function LightVerdicts({ paperBoxId }: { readonly paperBoxId?: string }) {
  const { verdictOf, paperOf } = useLightTests();
  const lines = (["safelight", "screen"] as const).map((light) => ({ light, verdict: verdictOf(light, paperBoxId) }));
  return (
    <ul className="Trays-Light-verdicts">
      {lines.map(({ light, verdict }) => (
        <li key={light} data-unsafe={verdict?.answer.kind === "notSafe" || undefined}>
          <b>{light === "safelight" ? "Safelight" : "This screen"}</b>
          <span>{verdict === undefined ? "not tested yet" : verdictLine(verdict, paperOf(verdict.test))}</span>
        </li>
      ))}
    </ul>
  );
}
