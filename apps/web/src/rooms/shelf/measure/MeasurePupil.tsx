import { lensFactsOf, measuredPupilOf, type PupilRuler } from "@captray/notebook/answers";
import { useState } from "react";
import { Caution } from "../../../kit/Caution.tsx";
import { Estimate } from "../../../kit/Estimate.tsx";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Section } from "../../../kit/Section.tsx";
import { Absent } from "../form/Absent.tsx";
import { choice, several } from "../form/fields.ts";
import type { FormPart, Texts } from "../form/formTypes.ts";
import { lengthsIn, readLengths } from "../form/readers.ts";
import { ThingForm } from "../form/ThingForm.tsx";
import { useForm } from "../form/useForm.ts";
import { lensName } from "../shelfWords.ts";
import { PupilCircle } from "./PupilCircle.tsx";

/** Measures the pupil of a lens with a ruler across its front; the f-number follows with its doubt. */
export default function MeasurePupil({ id }: { readonly id: string }) {
  const lens = useShelf("lens").find((one) => one.id === id);
  const [stopId, setStopId] = useState(lens?.stops[0]?.id);
  const form = useForm({ id, kind: "lens", stored: { ruler: "halfMm" } });
  if (lens === undefined) return <Absent thing="lens" />;
  const { texts } = form;
  const stop = lens.stops.find((one) => one.id === stopId) ?? lens.stops[0];
  const diametersMm = lengthsIn(texts.readings ?? "");
  const { focalLengthMm } = lensFactsOf({ lens });
  const found =
    diametersMm && measuredPupilOf({ diametersMm, ruler: (texts.ruler ?? "halfMm") as PupilRuler, focalLengthMm });
  const keep = () => {
    if (found === undefined) return;
    const path = `stops.${stop?.id ?? form.freshIds[0]}`;
    const set = {
      [`${path}.diameterMm`]: { ...found.diameterMm },
      ...(stop?.measuredFNumber && { [`${path}.measuredFNumber`]: null }),
      ...(stop?.holeMm && { [`${path}.holeMm`]: null }),
    };
    form.keep([{ id: lens.id, kind: "lens", set }], "Pupil measured", `/shelf/lens/${lens.id}`);
  };
  return (
    <ThingForm
      title={`The pupil of ${lensName(lens, "mm")}`}
      closeTo={`/shelf/lens/${lens.id}`}
      first={
        <div className="Shelf-How">
          <ol className="say">
            <li>Lay a ruler across the front of the lens.</li>
            <li>
              Stand two arm’s lengths away, with a white wall or a sheet of paper behind the lens, and look with one eye
              through the middle.
            </li>
            <li>
              Read across the bright disc. Turn the ruler and read again; two or three readings are better than one.
            </li>
          </ol>
          <Caution stuff="The sun.">
            Keep the sun at your back: a lens that sees the sun burns eye and cloth. Never look through it at the sun.
          </Caution>
        </div>
      }
      parts={[partOf(lens.stops.length, stop?.id ?? "", lens.stops)]}
      texts={{ ...texts, stop: stop?.id ?? "" }}
      onPut={(put: Texts) => {
        if (put.stop !== undefined) setStopId(lens.stops.find((one) => one.id === put.stop)?.id);
        form.put(put);
      }}
      keeps="Keep this pupil"
      onKeep={keep}
      waits={found === undefined ? "a reading" : undefined}
    >
      {found !== undefined && (
        <Section head="What came out" aside="nine in ten">
          <p>
            Pupil <Estimate {...found.diameterMm} of="other" unit="mm" />
          </p>
          {found.fNumber === undefined ? (
            <p className="soft">With a focal length this becomes an f-number.</p>
          ) : (
            <p>
              f/ <Estimate {...found.fNumber} of="other" />
            </p>
          )}
          <p className="small soft">
            The doubt of the ruler alone is ±{(1.645 * found.sdStops).toFixed(2)} stop of light.
            {stop?.marked ? " It goes before what is engraved; that stays on record." : ""}
          </p>
          <PupilCircle diameterMm={found.diameterMm.value} />
        </Section>
      )}
    </ThingForm>
  );
}

function partOf(
  count: number,
  stopId: string,
  stops: readonly { readonly id: string; readonly name?: string }[],
): FormPart {
  return {
    head: "What you read",
    fields: [
      ...(count > 1 && count <= 7
        ? [
            choice(
              "stop",
              "Which stop is in",
              stops.map((one, place) => ({ value: one.id, name: one.name || `stop ${place + 1}` })),
            ),
          ]
        : []),
      several("readings", "Across the disc", readLengths, { hint: "18.4 18.3", after: "mm" }),
      choice("ruler", "With", [
        { value: "halfMm", name: "a rule, half mm guessed", detail: "±0.5 mm" },
        { value: "wholeMm", name: "a rule, whole mm", detail: "±0.8 mm" },
        { value: "calliper", name: "callipers, to the eye", detail: "±0.25 mm" },
      ]),
    ],
    ...(stopId === "" ? { says: ["It becomes the first stop of this lens."] } : {}),
  };
}
