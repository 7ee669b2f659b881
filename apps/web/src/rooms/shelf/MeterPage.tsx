import { useShelf } from "../../kit/notebook/useShelf.ts";
import { Absent } from "./form/Absent.tsx";
import { changedOnly } from "./form/fromTexts.ts";
import { ThingForm } from "./form/ThingForm.tsx";
import { useForm } from "./form/useForm.ts";
import { meterGranted, meterParts, meterSet, meterTexts } from "./things/otherForms.ts";

/** A light meter: how it reads, where its dial begins, its clicks, and how much it is known to be off. */
export default function MeterPage({ id }: { readonly id: string }) {
  const meter = useShelf("meter").find((one) => one.id === id);
  const stored = meterTexts(meter);
  const form = useForm({ id, kind: "meter", stored });
  if (meter === undefined && !form.isNew) return <Absent thing="meter" />;
  const { texts } = form;
  const keep = () => {
    const now = meterSet(texts, form.isNew);
    const set = meter === undefined ? now : changedOnly({ was: meterSet(stored, false), now });
    form.keep([{ id: form.recordId, kind: "meter", set }], form.isNew ? "Meter put on the shelf" : "Meter changed");
  };
  return (
    <ThingForm
      title={meter === undefined ? "A meter for the shelf" : meter.name || "Meter"}
      parts={meterParts(texts, { id: meter?.id })}
      texts={texts}
      onPut={form.put}
      keeps={form.isNew ? "Put it on the shelf" : "Keep it so"}
      onKeep={keep}
      granted={meterGranted(texts)}
      onPutAway={form.isNew ? undefined : () => form.putAway("Meter put away")}
    />
  );
}
