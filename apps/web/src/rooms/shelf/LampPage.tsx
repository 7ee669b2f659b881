import { Caution } from "../../kit/Caution.tsx";
import { useShelf } from "../../kit/notebook/useShelf.ts";
import { Absent } from "./form/Absent.tsx";
import { changedOnly } from "./form/fromTexts.ts";
import { ThingForm } from "./form/ThingForm.tsx";
import { useForm } from "./form/useForm.ts";
import { lampGranted, lampParts, lampSet, lampTexts } from "./things/otherForms.ts";

/** A lamp that lights the subject: what glows in it, and how warm its light is. */
export default function LampPage({ id }: { readonly id: string }) {
  const lamp = useShelf("lamp").find((one) => one.id === id);
  const stored = lampTexts(lamp);
  const form = useForm({ id, kind: "lamp", stored });
  if (lamp === undefined && !form.isNew) return <Absent thing="lamp" />;
  const { texts } = form;
  const keep = () => {
    const now = lampSet(texts, form.isNew);
    const set = lamp === undefined ? now : changedOnly({ was: lampSet(stored, false), now });
    form.keep([{ id: form.recordId, kind: "lamp", set }], form.isNew ? "Lamp put on the shelf" : "Lamp changed");
  };
  return (
    <ThingForm
      title={lamp === undefined ? "A lamp for the shelf" : lamp.name || "Lamp"}
      parts={lampParts(texts)}
      texts={texts}
      onPut={form.put}
      keeps={form.isNew ? "Put it on the shelf" : "Keep it so"}
      onKeep={keep}
      granted={lampGranted(texts)}
      onPutAway={form.isNew ? undefined : () => form.putAway("Lamp put away")}
    >
      <Caution stuff="Mains and heat.">
        Keep leads, plugs and switches away from water and wet hands, and behind a residual-current switch. A strong
        bulb sets cloth and card alight: leave it room, and never leave it alone. The maker’s sheet and your local rules
        come first.
      </Caution>
    </ThingForm>
  );
}
