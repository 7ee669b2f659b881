import { useState } from "react";
import { momentNow } from "../../devices/momentNow.ts";
import { Button } from "../../kit/Button.tsx";
import { useNotebook } from "../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../kit/notebook/useSettings.ts";
import { useShelf } from "../../kit/notebook/useShelf.ts";
import { Absent } from "./form/Absent.tsx";
import { changedOnly } from "./form/fromTexts.ts";
import { ThingForm } from "./form/ThingForm.tsx";
import { useForm } from "./form/useForm.ts";
import { lensName } from "./shelfWords.ts";
import { lensGranted, lensSet, lensTexts, lensWaits, stopIdsOf } from "./things/lensForm.ts";
import { lensParts } from "./things/lensParts.ts";

/** A lens: what is engraved on it, and what was measured, which goes before. */
export default function LensPage({ id }: { readonly id: string }) {
  const notebook = useNotebook();
  const lens = useShelf("lens").find((one) => one.id === id);
  const usualExtensionMm = useShelf("camera").at(-1)?.lastExtension?.value;
  const { lengthUnit } = useSettings();
  const [freshStopId] = useState(() => notebook.newId());
  const stored = lensTexts(lens, freshStopId, lengthUnit);
  const form = useForm({ id, kind: "lens", stored });
  if (lens === undefined && !form.isNew) return <Absent thing="lens" />;
  const { texts } = form;
  const last = stopIdsOf(texts).at(-1);
  const keep = () => {
    const now = lensSet(texts, lens);
    const set = lens === undefined ? now : changedOnly({ was: lensSet(stored, lens), now });
    const gone = (lens?.stops ?? []).filter((one) => !stopIdsOf(texts).includes(one.id));
    const removed = Object.fromEntries(gone.map((one) => [`stops.${one.id}.removedAt`, { ...momentNow() }]));
    form.keep(
      [{ id: form.recordId, kind: "lens", set: { ...set, ...removed } }],
      form.isNew ? "Lens put on the shelf" : "Lens changed",
    );
  };
  return (
    <ThingForm
      title={lens === undefined ? "A lens for the shelf" : lensName(lens, lengthUnit)}
      parts={lensParts(texts, { id: lens?.id, usualExtensionMm })}
      texts={texts}
      onPut={form.put}
      keeps={form.isNew ? "Put it on the shelf" : "Keep it so"}
      onKeep={keep}
      waits={lensWaits(texts)}
      granted={lensGranted(texts)}
      more={
        stopIdsOf(texts).length > 1 && (
          <Button
            onPress={() =>
              form.put({
                stops: stopIdsOf(texts)
                  .filter((one) => one !== last)
                  .join(" "),
              })
            }
          >
            Take the last stop off
          </Button>
        )
      }
      onPutAway={form.isNew ? undefined : () => form.putAway("Lens put away")}
    />
  );
}
