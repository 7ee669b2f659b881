import type { Scene } from "@captray/notebook/records";
import { steppedBy } from "./photographMarks.ts";
import "./Photograph.css";

/** The photograph with its marks; once an area is chosen a press on it, or the arrow keys, set that area's mark. */
export function PhotographPicture(props: {
  readonly scene: Scene;
  readonly areaId?: string | undefined;
  readonly onMark?: (at: { readonly x: number; readonly y: number }) => void;
}) {
  const { scene, areaId, onMark } = props;
  const address = scene.photograph;
  if (address === undefined) return null;
  const marks = (scene.marks ?? []).flatMap((mark) => {
    const name = scene.areas.find((area) => area.id === mark.areaId)?.name;
    return name === undefined ? [] : [{ ...mark, name: name || "Subject" }];
  });
  const of = scene.subject === "" ? "the scene" : scene.subject;
  const said = marks.length === 0 ? "no area marked" : `marked: ${marks.map(({ name }) => name).join(", ")}`;
  const inside = (
    <>
      <img src={address} alt={`Photograph of ${of}; ${said}`} />
      {marks.map((mark) => (
        <span
          key={mark.areaId}
          aria-hidden="true"
          className="Camera-Photograph-mark"
          data-chosen={mark.areaId === areaId || undefined}
          style={{ insetInlineStart: `${mark.x * 100}%`, insetBlockStart: `${mark.y * 100}%` }}
          data-left={mark.x > 0.6 || undefined}
        >
          <b>{mark.name}</b>
        </span>
      ))}
    </>
  );
  if (areaId === undefined || onMark === undefined) return <div className="Camera-Photograph-picture">{inside}</div>;
  return (
    <button
      type="button"
      className="Camera-Photograph-picture"
      onClick={(event) => {
        const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
        const byKey = event.detail === 0;
        onMark(byKey ? { x: 0.5, y: 0.5 } : { x: (event.clientX - left) / width, y: (event.clientY - top) / height });
      }}
      onKeyDown={(event) => {
        const at = steppedBy({ key: event.key, from: marks.find((mark) => mark.areaId === areaId) });
        if (at === undefined) return;
        event.preventDefault();
        onMark(at);
      }}
    >
      {inside}
    </button>
  );
}
