import { nextBoxOf } from "@captray/notebook/answers";
import { momentNow } from "../../devices/momentNow.ts";
import { Button } from "../../kit/Button.tsx";
import { goTo } from "../../kit/goTo.ts";
import { useNotebook } from "../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../kit/notebook/useShelf.ts";
import { Absent } from "./form/Absent.tsx";
import { changedOnly } from "./form/fromTexts.ts";
import { dayWords } from "./form/readers.ts";
import { ThingForm } from "./form/ThingForm.tsx";
import { type ShelfSet, useForm } from "./form/useForm.ts";
import { boxParts, boxSet, boxTexts, guessedIndex, indexIdsOf, indexSet, nextBoxName } from "./things/boxForm.ts";

/** A box of paper by your own name for it, with an exposure index for each thing it becomes. */
export default function BoxPage({ id }: { readonly id: string }) {
  const notebook = useNotebook();
  const boxes = useShelf("paperBox");
  const box = boxes.find((one) => one.id === id);
  const indexes = useShelf("exposureIndex");
  const recipes = useShelf("recipe");
  const size = useShelf("camera").at(-1)?.format;
  const form = useForm({ id, kind: "paperBox", stored: {} });
  const stored = boxTexts({ box, indexes, fresh: form.freshIds, ...(size && { size }) });
  if (box === undefined && !form.isNew) return <Absent thing="box" />;
  const texts = { ...stored, ...form.texts };
  const keep = () => {
    const now = boxSet(texts, form.isNew);
    const set = box === undefined ? now : changedOnly({ was: boxSet(stored, false), now });
    const sets = indexIdsOf(texts).flatMap((indexId): ShelfSet[] => {
      const known = indexes.find((one) => one.id === indexId);
      const asked = { paperBoxId: form.recordId, known };
      const written = indexSet(texts, indexId, asked);
      if (written === undefined) {
        if (known !== undefined)
          return [{ id: indexId, kind: "exposureIndex", set: { removedAt: { ...momentNow() } } }];
        if (!form.isNew) return [];
        const result = texts[`${indexId}.result`] === "negative" ? "negative" : "positive";
        return [{ id: indexId, kind: "exposureIndex", set: guessedIndex(result, form.recordId) }];
      }
      if (known === undefined) return [{ id: indexId, kind: "exposureIndex", set: written }];
      const changed = changedOnly({ was: indexSet(stored, indexId, asked) ?? {}, now: written });
      const confirmed = changed.value !== undefined && known.assumed !== undefined ? { assumed: null } : {};
      return [{ id: indexId, kind: "exposureIndex", set: { ...changed, ...confirmed } }];
    });
    form.keep(
      [{ id: form.recordId, kind: "paperBox", set }, ...sets],
      form.isNew ? "Box put on the shelf" : "Box changed",
    );
  };
  const another = () => {
    if (box === undefined) return;
    const newBoxId = notebook.newId();
    const name = nextBoxName(
      box.name || "Box",
      boxes.map((one) => one.name),
    );
    const next = nextBoxOf({ box, indexes, name, newBoxId });
    const createdAt = { ...momentNow() };
    const sets = [
      { id: newBoxId as string, kind: "paperBox" as const, set: { ...next.box, createdAt } },
      ...next.indexes.map((set) => ({
        id: notebook.newId(),
        kind: "exposureIndex" as const,
        set: { ...set, createdAt },
      })),
    ];
    notebook.change(sets, "Another box of the same paper").kept.catch(() => undefined);
    goTo({ path: `/shelf/box/${newBoxId}` });
  };
  const todayText = () => {
    const { at, offsetMin } = momentNow();
    return dayWords(at + offsetMin * 60_000);
  };
  return (
    <ThingForm
      key={id}
      title={box === undefined ? "A box for the shelf" : box.name || "Box"}
      parts={boxParts(texts, { recipes, todayText })}
      texts={texts}
      onPut={form.put}
      keeps={form.isNew ? "Put it on the shelf" : "Keep it so"}
      onKeep={keep}
      more={box !== undefined && <Button onPress={another}>A new box of the same paper</Button>}
      onPutAway={form.isNew ? undefined : () => form.putAway("Box put away")}
    />
  );
}
