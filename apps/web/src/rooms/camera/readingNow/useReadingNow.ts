import { kitOf } from "@captray/notebook/answers";
import type { Notebook } from "@captray/notebook/journal";
import { useCallback, useMemo, useRef, useState } from "react";
import { createMirror } from "../../../devices/mirror.ts";
import { momentNow } from "../../../devices/momentNow.ts";
import { goTo } from "../../../kit/goTo.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useRecord } from "../../../kit/notebook/useRecord.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { toTheCap } from "../toTheCap.ts";
import { findsIn, useShelfView } from "../useShelfView.ts";
import { type Draft, type DraftEvent, draftFrom, emptyDraft, nextDraft } from "./draft.ts";
import { draftAgain } from "./draftAgain.ts";
import { draftRecords, type FreshIds } from "./draftRecords.ts";
import { type KnownKit, knownKits } from "./kitTexts.ts";
import { readingNowView } from "./readingNowView.ts";

const mirror = createMirror();

/** Binds the page to the notebook: what is typed is mirrored at once, and becomes records when it is used. */
export function useReadingNow({ againId }: { readonly againId: string }) {
  const notebook = useNotebook();
  const shelf = useShelfView();
  const { lengthUnit } = useSettings();
  const again = useRecord(againId);
  const place = `captray-draft-${notebook.id}`;
  const [typed, setTyped] = useState<Draft | undefined>(undefined);
  const [fresh, setFresh] = useState(() => freshIds(notebook));
  const [openedAt] = useState(momentNow);

  const kits = useMemo(() => knownKits(shelf, lengthUnit), [shelf, lengthUnit]);
  const start = useMemo(() => {
    if (againId === "") return startDraft(draftFrom(mirror.read(place)), kits);
    if (typeof again !== "object" || again.kind !== "sheet" || again.sceneId === undefined) return emptyDraft;
    const scene = shelf.scenes.find((one) => one.id === again.sceneId);
    if (scene === undefined) return emptyDraft;
    return draftAgain({ kit: kitOf({ notebook: findsIn(shelf), scene, sheet: again }), shelf, lengthUnit });
  }, [againId, again, shelf, lengthUnit, kits, place]);
  const draft = typed ?? start;

  const view = useMemo(
    () => readingNowView({ draft, shelf, fresh, takenAt: openedAt, lengthUnit }),
    [draft, shelf, fresh, openedAt, lengthUnit],
  );

  // Keys may come faster than the page is drawn: each goes on from what the one before it left.
  const latest = useRef(draft);
  latest.current = draft;
  const put = useCallback(
    (next: Draft) => {
      latest.current = next;
      mirror.write(place, next);
      setTyped(next);
    },
    [place],
  );
  const happen = useCallback((event: DraftEvent) => put(nextDraft(latest.current, event)), [put]);

  /** Writes what was typed: kit on the shelf, the scene with its reading; says which scene it is. */
  const keep = () => {
    const records = draftRecords({ draft, shelf, fresh, takenAt: momentNow() });
    if (records.sets.length > 0) notebook.change(records.sets, "Reading kept").kept.catch(() => undefined);
    const { scene, paperBox, meter } = records.kit;
    put(
      nextDraft(draft, { event: "kept", sceneId: scene.id, paperBoxId: paperBox?.id ?? "", meterId: meter?.id ?? "" }),
    );
    setFresh(freshIds(notebook));
    return records;
  };

  return {
    draft,
    view,
    kits,
    happen,
    takeKit: (kit: KnownKit) => {
      const withKit = nextDraft(draft, { event: "kit", kit: kit.texts });
      const meterFNumber = kit.meterFNumber ?? withKit.texts.meterFNumber;
      const iso = kit.iso ?? withKit.texts.iso;
      put({ ...withKit, texts: { ...withKit.texts, meterFNumber, iso } });
    },
    anotherScene: () => happen({ event: "anotherScene" }),
    openLedger: () => goTo({ path: `/camera/${keep().sceneId}` }),
    toStepTest: () => goTo({ path: `/camera/step/${keep().sceneId}` }),
    toTheCap: () => {
      if (view.plan.kind !== "plan") return;
      const { kit } = keep();
      toTheCap({ notebook, kit, plan: view.plan });
    },
  };
}

/** What was put by, or on a page nobody has typed on yet the last kit. */
function startDraft(put: Draft, kits: readonly KnownKit[]): Draft {
  const [last] = kits;
  const untouched = Object.values(put.texts).every((text) => text.trim() === "");
  if (!untouched || last === undefined) return put;
  const draft = nextDraft(put, { event: "kit", kit: last.texts });
  return {
    ...draft,
    texts: { ...draft.texts, meterFNumber: last.meterFNumber ?? "", iso: last.iso ?? "" },
  };
}

function freshIds(notebook: Notebook): FreshIds {
  const id = () => notebook.newId();
  return {
    lens: id(),
    stop: id(),
    meter: id(),
    box: id(),
    negative: id(),
    positive: id(),
    scene: id(),
    area: id(),
    reading: id(),
  };
}
