import type { SceneLine } from "./scenesView.ts";
import "./Scenes.css";

/** One scene as a line to follow. */
export function SceneLineLink({ line }: { readonly line: SceneLine }) {
  const second = [line.where, line.setUp, line.still].filter((words) => words !== "").join(" · ");
  return (
    <a className="Camera-Scenes-line" href={`#/camera/${line.id}`}>
      {line.photograph !== undefined && <img src={line.photograph} alt="" />}
      <span>
        <b>{line.subject}</b>
        {second !== "" && <span className="soft">{second}</span>}
        <span className="soft">
          {line.reading} · {line.sheets}
        </span>
      </span>
    </a>
  );
}
