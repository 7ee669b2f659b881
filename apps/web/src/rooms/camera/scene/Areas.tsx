import { type ReactNode, useState } from "react";
import { lazyPart } from "../../../kit/lazyPart.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { useDesk } from "../../../kit/useDesk.ts";
import type { AreaView } from "./sceneView.ts";
import "./Areas.css";

const PhotographPicture = lazyPart(() => import("./PhotographPicture.tsx").then((part) => part.PhotographPicture));
// What opens by a press is fetched by itself.
const AreaOpen = lazyPart(() => import("./AreaEdit.tsx").then((part) => part.AreaOpen));
const NewArea = lazyPart(() => import("./AreaEdit.tsx").then((part) => part.NewArea));

/** What the page knows of how an area should print; nothing where it does not yet. */
export interface AreaPrint {
  /** The patch of the chip and of the table. */
  readonly patch: ReactNode;
  /** Under the reading in a chip, where something is to be said: “black”. */
  readonly chipWords?: ReactNode;
  /** In the table: “0.24 ±0.03”. */
  readonly words: ReactNode;
}

export interface AreasProps {
  readonly sceneId: string;
  readonly areas: readonly AreaView[];
  readonly printOf?: ((areaId: string) => AreaPrint | undefined) | undefined;
}

/** The areas of a scene: chips three to a row, on a desk a table; one opens to be read, placed, moved or taken out. */
export function Areas({ sceneId, areas, printOf }: AreasProps) {
  const [open, setOpen] = useState<string | undefined>(undefined);
  const desk = useDesk();
  const scene = useShelf("scene").find((one) => one.id === sceneId);
  const turn = (id: string) => setOpen(id === open ? undefined : id);
  const chosen = areas.find((area) => area.id === open);
  const placed = areas.find((area) => area.isGround);
  const shared = { areas, open, onTurn: turn, printOf, from: placed === undefined ? "the mean" : placed.name };
  return (
    <>
      {desk && scene?.photograph !== undefined && <PhotographPicture scene={scene} />}
      {desk ? <AreaTable {...shared} /> : <AreaChips {...shared} />}
      {chosen !== undefined && <AreaOpen key={chosen.id} sceneId={sceneId} area={chosen} areas={areas} />}
      {open === "new" && <NewArea sceneId={sceneId} areas={areas} onAdded={() => setOpen(undefined)} />}
    </>
  );
}

interface AreaListProps {
  readonly areas: readonly AreaView[];
  readonly open: string | undefined;
  readonly onTurn: (id: string) => void;
  readonly printOf: AreasProps["printOf"];
  /** What the others are counted from. */
  readonly from: string;
}

function AreaChips({ areas, open, onTurn, printOf }: AreaListProps) {
  return (
    <ul className="Camera-Chips">
      {areas.map((area) => {
        const print = printOf?.(area.id);
        return (
          <li key={area.id}>
            <button
              type="button"
              aria-expanded={area.id === open}
              data-ground={area.isGround || undefined}
              onClick={() => onTurn(area.id)}
            >
              {print?.patch}
              <span>
                <span className="soft">{area.name}</span>
                <b>{area.said}</b>
                <span className="small soft">
                  {area.standing}
                  {print?.chipWords}
                </span>
              </span>
            </button>
          </li>
        );
      })}
      <li>
        <button type="button" aria-expanded={open === "new"} onClick={() => onTurn("new")}>
          <span className="Camera-Chips-add">Add an area</span>
        </button>
      </li>
    </ul>
  );
}

function AreaTable({ areas, open, onTurn, printOf, from }: AreaListProps) {
  return (
    <table className="Camera-AreaTable">
      <caption className="unseen">Areas: what the meter said of each, how far it stands from {from}</caption>
      <thead>
        <tr>
          <th scope="col">area</th>
          <th scope="col">meter said</th>
          <th scope="col">from {from}</th>
          {printOf !== undefined && <th scope="col">should print</th>}
        </tr>
      </thead>
      <tbody>
        {areas.map((area) => {
          const print = printOf?.(area.id);
          return (
            <tr key={area.id} data-open={area.id === open || undefined}>
              <th scope="row">
                <button type="button" aria-expanded={area.id === open} onClick={() => onTurn(area.id)}>
                  {area.name}
                </button>
              </th>
              <td className="Camera-AreaTable-said">{area.said}</td>
              <td>{area.isGround ? (area.placeStops === 0 ? "0" : `0, ${area.standing}`) : area.standing}</td>
              {printOf !== undefined && (
                <td>
                  <span className="Camera-AreaTable-print">
                    {print?.patch}
                    {print?.words}
                  </span>
                </td>
              )}
            </tr>
          );
        })}
        <tr>
          <th scope="row">
            <button type="button" aria-expanded={open === "new"} onClick={() => onTurn("new")}>
              <span className="Camera-Chips-add">Add an area</span>
            </button>
          </th>
          <td colSpan={printOf === undefined ? 2 : 3} />
        </tr>
      </tbody>
    </table>
  );
}
