import { stockAskedOf } from "@captray/notebook/answers";
import { momentNow } from "../../../devices/momentNow.ts";
import { saltName } from "../../../kit/baths/saltName.ts";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";

/** Jars and bottles that were mixed from and are remembered; an empty one is put away. */
export function Bottles() {
  const notebook = useNotebook();
  const stocks = useShelf("stock");
  if (stocks.length === 0) return null;
  return (
    <Section head="Jars and bottles" aside="remembered from mixing">
      <ul className="Trays-Baths-gone">
        {stocks.map((stock) => {
          const { label, formula, name } = stockAskedOf({ stock });
          const empty = () =>
            notebook
              .change([{ id: stock.id, kind: "stock", set: { removedAt: { ...momentNow() } } }], `${name} is empty`)
              .kept.catch(() => undefined);
          return (
            <li key={stock.id}>
              <span>
                <b>{name}</b> <span className="small soft">{label ?? (formula && saltName(formula))}</span>
              </span>
              <Word spoken={`${name} is empty`} onPress={() => void empty()}>
                It is empty
              </Word>
            </li>
          );
        })}
      </ul>
    </Section>
  );
}
