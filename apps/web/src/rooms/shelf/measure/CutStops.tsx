import { washers } from "@captray/drawings/shelf";
import { cardStopsOf, lensFactsOf } from "@captray/notebook/answers";
import { messageOf } from "@captray/science/errors";
import { formatLength } from "@captray/science/notation";
import { useState } from "react";
import { Caution } from "../../../kit/Caution.tsx";
import { Drawing } from "../../../kit/Drawing.tsx";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Absent } from "../form/Absent.tsx";
import { ThingForm } from "../form/ThingForm.tsx";
import { type ShelfSet, useForm } from "../form/useForm.ts";
import { lensName } from "../shelfWords.ts";
import { cardWidthIn, cutParts, cutSet, numbersIn, placeIn } from "./cutForm.ts";

/** Which holes to cut in card for a series of stops, drawn true to size. */
export default function CutStops({ id }: { readonly id: string }) {
  const notebook = useNotebook();
  const lens = useShelf("lens").find((one) => one.id === id);
  const { lengthUnit } = useSettings();
  const [fresh] = useState(() => Array.from({ length: 8 }, () => notebook.newId()));
  const place = lens?.stopPlace;
  const stored = {
    series: "8 11 16 22",
    place: place?.side ?? "",
    placeDistance: place === undefined ? "" : String(place.distanceMm),
    clearGlass: place?.glassMm === undefined ? "" : String(place.glassMm),
    card: "50",
  };
  const form = useForm({ id, kind: "lens", stored });
  if (lens === undefined) return <Absent thing="lens" />;
  const { texts } = form;
  const focal = lensFactsOf({ lens }).focalLengthMm;
  const fNumbers = numbersIn(texts.series ?? "");
  const answer =
    focal &&
    fNumbers &&
    cardStopsOf({ focalLengthMm: focal.value, fNumbers: fNumbers.map(({ value }) => value), place: placeIn(texts) });
  const refused = answer?.kind === "refused" ? messageOf({ ...answer.fault, lengthUnit }) : undefined;
  const stops = answer?.kind === "stops" ? answer.stops : [];
  const keep = () => {
    if (fNumbers === undefined || stops.length === 0) return;
    const set: ShelfSet = {
      id: lens.id,
      kind: "lens",
      set: cutSet({ stops, fNumbers, place: placeIn(texts), freshIds: fresh }),
    };
    form.keep([set], "Card stops cut", `/shelf/lens/${lens.id}`);
  };
  return (
    <ThingForm
      title={`Card stops for ${lensName(lens, lengthUnit)}`}
      closeTo={`/shelf/lens/${lens.id}`}
      parts={cutParts(texts)}
      texts={texts}
      onPut={form.put}
      keeps="They are cut: put them with the lens"
      onKeep={keep}
      waits={
        focal === undefined
          ? "a focal length of this lens"
          : stops.length === 0
            ? "f-numbers, one to eight of them"
            : undefined
      }
    >
      {refused && <ProblemNote head={refused.message}>{refused.hint}</ProblemNote>}
      {stops.length > 0 && (
        <Section head="Holes to cut" aside="true to size where the cards measure so">
          <table className="Shelf-Holes">
            <thead>
              <tr>
                <th scope="col">stop</th>
                <th scope="col">hole</th>
                <th scope="col">{stops[0]?.corners === undefined ? "half a mm off costs" : "fully lit, distant"}</th>
              </tr>
            </thead>
            <tbody>
              {stops.map((stop, row) => (
                <tr key={stop.fNumber}>
                  <th scope="row">f/{fNumbers?.[row]?.text}</th>
                  <td>{formatLength({ lengthMm: stop.holeMm, unit: lengthUnit })}</td>
                  <td>
                    {stop.corners === undefined
                      ? `${stop.halfMmStops.toFixed(2)} stop`
                      : `circle of ${formatLength({ lengthMm: stop.corners.fullCircleMm, unit: lengthUnit })}`}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          <div className="Shelf-Washers">
            <Drawing
              drawing={washers({
                widthMm: 90,
                cardMm: cardWidthIn(texts),
                washers: stops.map(({ holeMm }, row) => ({
                  holeMm,
                  words: `f/${fNumbers?.[row]?.text}, ${formatLength({ lengthMm: holeMm, unit: "mm" })}`,
                })),
              })}
            />
          </div>
          <Caution stuff="A sharp knife.">
            Cut away from the hand that holds, on a board that stays put. A punch or a hole saw cuts rounder than a
            knife.
          </Caution>
        </Section>
      )}
    </ThingForm>
  );
}
