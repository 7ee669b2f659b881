import { measuredFocalLengthOf } from "@captray/notebook/answers";
import { messageOf } from "@captray/science/errors";
import { Caution } from "../../../kit/Caution.tsx";
import { Estimate } from "../../../kit/Estimate.tsx";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Absent } from "../form/Absent.tsx";
import { ThingForm } from "../form/ThingForm.tsx";
import { useForm } from "../form/useForm.ts";
import { lensName } from "../shelfWords.ts";
import { focalAsked, focalParts, focalSet } from "./focalForm.ts";

/** Measures a focal length: with a distant subject, or from two sizes on the ground glass. */
export default function MeasureFocal({ id }: { readonly id: string }) {
  const lens = useShelf("lens").find((one) => one.id === id);
  const { lengthUnit } = useSettings();
  const form = useForm({ id, kind: "lens", stored: { way: "twoSizes" } });
  if (lens === undefined) return <Absent thing="lens" />;
  const { texts } = form;
  const asked = focalAsked(texts);
  const answer = asked && measuredFocalLengthOf(asked);
  const refused = answer?.kind === "refused" ? messageOf({ ...answer.fault, lengthUnit }) : undefined;
  const keep = () => {
    if (answer?.kind !== "found" || asked === undefined) return;
    form.keep(
      [{ id: lens.id, kind: "lens", set: focalSet({ answer, by: asked.by, lens }) }],
      "Focal length measured",
      `/shelf/lens/${lens.id}`,
    );
  };
  return (
    <ThingForm
      title={`The focal length of ${lensName(lens, lengthUnit)}`}
      closeTo={`/shelf/lens/${lens.id}`}
      first={
        <Caution stuff="The sun.">
          Point the lens at a far bank or a chimney, never at the sun: it burns eye, cloth and bellows.
        </Caution>
      }
      parts={focalParts(texts)}
      texts={texts}
      onPut={form.put}
      keeps="Keep it"
      onKeep={keep}
      waits={answer === undefined ? "the measures above" : refused?.message}
    >
      {refused && <ProblemNote head={refused.message}>{refused.hint}</ProblemNote>}
      {answer?.kind === "found" && (
        <Section head="What came out" aside="nine in ten">
          <p>
            Focal length <Estimate {...answer.focalLengthMm} of="other" unit="mm" />
          </p>
          <p>
            Board to ground glass with a distant subject{" "}
            <Estimate {...answer.infinityExtensionMm} of="other" unit="mm" />
          </p>
          {lens.markedFocalLengthMm !== undefined && (
            <p className="small soft">Marked {lens.markedFocalLengthMm.value} mm; the mark stays on record.</p>
          )}
          {asked?.by === "infinity" && (lens.markedFocalLengthMm ?? lens.measuredFocalLengthMm) !== undefined && (
            <p className="small soft">
              Where the middle of the lens lies is not known, so only the place of infinity is kept: it makes what you
              rack out exact. Two sizes would measure the focal length itself.
            </p>
          )}
        </Section>
      )}
    </ThingForm>
  );
}
