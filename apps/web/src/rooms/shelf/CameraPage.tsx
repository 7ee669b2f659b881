import { useSettings } from "../../kit/notebook/useSettings.ts";
import { useShelf } from "../../kit/notebook/useShelf.ts";
import { Absent } from "./form/Absent.tsx";
import { changedOnly } from "./form/fromTexts.ts";
import { ThingForm } from "./form/ThingForm.tsx";
import { useForm } from "./form/useForm.ts";
import { cameraParts, cameraSet, cameraTexts } from "./things/otherForms.ts";

/** A camera: its format, how far its bellows go, and where its bed says infinity. */
export default function CameraPage({ id }: { readonly id: string }) {
  const camera = useShelf("camera").find((one) => one.id === id);
  const { lengthUnit } = useSettings();
  const stored = cameraTexts(camera, lengthUnit);
  const form = useForm({ id, kind: "camera", stored });
  if (camera === undefined && !form.isNew) return <Absent thing="camera" />;
  const { texts } = form;
  const keep = () => {
    const now = cameraSet(texts, form.isNew);
    const set = camera === undefined ? now : changedOnly({ was: cameraSet(stored, false), now });
    form.keep([{ id: form.recordId, kind: "camera", set }], form.isNew ? "Camera put on the shelf" : "Camera changed");
  };
  return (
    <ThingForm
      title={camera === undefined ? "A camera for the shelf" : camera.name || "Camera"}
      parts={cameraParts(texts)}
      texts={texts}
      onPut={form.put}
      keeps={form.isNew ? "Put it on the shelf" : "Keep it so"}
      onKeep={keep}
      onPutAway={form.isNew ? undefined : () => form.putAway("Camera put away")}
    />
  );
}
