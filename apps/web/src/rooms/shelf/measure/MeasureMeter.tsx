import { meterOffsetOf } from "@captray/notebook/answers";
import { momentNow } from "../../../devices/momentNow.ts";
import { Caution } from "../../../kit/Caution.tsx";
import { Estimate } from "../../../kit/Estimate.tsx";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Section } from "../../../kit/Section.tsx";
import { Absent } from "../form/Absent.tsx";
import { ThingForm } from "../form/ThingForm.tsx";
import { useForm } from "../form/useForm.ts";
import { meterAsked, meterAskedParts } from "./meterOffsetForm.ts";

/** Holds a meter against a light that is known: another meter, the clear sun, a lux meter. */
export default function MeasureMeter({ id }: { readonly id: string }) {
  const meter = useShelf("meter").find((one) => one.id === id);
  const iso = String(Math.max(100, meter?.lowestIso ?? 100));
  const form = useForm({ id, kind: "meter", stored: { by: "otherMeter", iso, otherIso: iso, shadow: "45" } });
  if (meter === undefined) return <Absent thing="meter" />;
  const { texts } = form;
  const asked = meterAsked(texts, momentNow());
  const found = asked && meterOffsetOf({ ...asked, meter });
  const keep = () => {
    if (found === undefined || asked === undefined) return;
    const { value, sd } = found.offsetStops;
    const offsetStops = { value: Math.round(value * 1000) / 1000, sd: Math.round(sd * 1000) / 1000 };
    form.keep(
      [{ id: meter.id, kind: "meter", set: { offsetStops, offsetBy: asked.light.by } }],
      "Meter measured",
      `/shelf/meter/${meter.id}`,
    );
  };
  return (
    <ThingForm
      title={`What ${meter.name || "the meter"} is off`}
      closeTo={`/shelf/meter/${meter.id}`}
      first={
        texts.by === "fullSun" && (
          <Caution stuff="The sun.">Turn the card and the meter, never your eye, to the sun.</Caution>
        )
      }
      parts={meterAskedParts(texts, meter)}
      texts={texts}
      onPut={form.put}
      keeps="Count it from now on"
      onKeep={keep}
      waits={found === undefined ? "both readings" : undefined}
    >
      {found !== undefined && (
        <Section head="What came out" aside="nine in ten">
          <p>
            It shows too {found.offsetStops.value < 0 ? "little" : "much"} light by{" "}
            <Estimate value={Math.abs(found.offsetStops.value)} sd={found.offsetStops.sd} of="stops" unit="stop" />
          </p>
          <p className="small soft">
            {found.withinDoubt
              ? "That is less than this light can tell: no fault was found, and it may as well stay at 0."
              : "That is more than this light can explain. Read once more, then let it count."}
          </p>
        </Section>
      )}
    </ThingForm>
  );
}
