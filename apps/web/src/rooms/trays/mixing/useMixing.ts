import { mixedBathSet, stockKept } from "@captray/notebook/answers";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { bathName, roleWords } from "../../../kit/baths/bathWords.ts";
import { useBaths } from "../../../kit/baths/useBaths.ts";
import { useReadCautions } from "../../../kit/cautions/useCautions.ts";
import { goTo } from "../../../kit/goTo.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { type MixingTexts, mixingView, newStocks, recipeOf } from "./mixingState.ts";

/** Binds the mixing page to the notebook: what was typed stays on the page until it is mixed. */
export function useMixing(roleAsked: string) {
  const notebook = useNotebook();
  const recipes = useShelf("recipe");
  const boxes = useShelf("paperBox");
  const stocks = useShelf("stock");
  const { all, passedBy } = useBaths();
  const seen = useReadCautions();
  const [texts, setTexts] = useState<MixingTexts>({});
  const view = mixingView({ texts, recipes, boxes, stocks, roleAsked, seen });
  const { asked, mixing, bath } = view;
  return {
    view,
    texts,
    put: (more: MixingTexts) => setTexts((now) => ({ ...now, ...more })),
    /** One press: the bath is a record, and the bottles it came from are remembered. */
    mixedNow: () => {
      if (asked === undefined || mixing?.kind !== "mix" || bath === undefined) return;
      const now = momentNow();
      const id = notebook.newId();
      const recipe = recipes.find((one) => one.id === view.recipeId);
      const name = bathName({ name: roleWords(bath.role) });
      const set = mixedBathSet({ asked, mixing, name, recipeId: recipe && recipeOf(view), now, baths: all, passedBy });
      const bottles = newStocks(view).map((stock) => ({
        id: notebook.newId(),
        kind: "stock" as const,
        set: { ...stockKept(stock), createdAt: { ...now } },
      }));
      notebook.change([{ id, kind: "bath", set }, ...bottles], `${name} mixed`).kept.catch(() => undefined);
      goTo({ path: `/trays/bath/${id}` });
    },
  };
}
