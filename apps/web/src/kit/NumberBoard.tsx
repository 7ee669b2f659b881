import { useEffect } from "react";
import { type BoardKey, boardKeys, typeOnBoard } from "./boardState.ts";
import { boardKindOf, useBoardField, useBoardWanted, walkFields } from "./useBoard.ts";
import "./NumberBoard.css";

const digits: readonly BoardKey[] = ["1", "2", "3", "4", "5", "6", "7", "8", "9", ".", "0"].map((face) => ({
  face,
  spoken: face === "." ? "point" : face,
}));
const names = {
  time: "a time",
  fNumber: "an f-number",
  ev: "an exposure value",
  mm: "millimetres",
  number: "a number",
  several: "several figures",
} as const;

/** Our own keys at the foot of the screen, while a field has the focus on a phone or in red light. */
export function NumberBoard() {
  const wanted = useBoardWanted();
  const field = useBoardField();
  const open = wanted && field !== undefined;

  useEffect(() => {
    document.documentElement.toggleAttribute("data-board", open);
  }, [open]);

  if (!open) return null;
  const kind = boardKindOf(field);
  const own = boardKeys({ kind });
  const wide = own.length <= 2;
  const rows = [digits.slice(0, 3), digits.slice(3, 6), digits.slice(6, 9), digits.slice(9)];
  const key = (key: BoardKey, isWide = false) => (
    <BoardPress key={key.face} spoken={key.spoken} wide={isWide} onPress={() => press(field, key)}>
      {/^\d\/\d$/.test(key.face) ? <span className="frac">{key.face}</span> : key.face}
    </BoardPress>
  );

  return (
    <section aria-label="Number board">
      {/* biome-ignore lint/a11y/useSemanticElements: a group of keys is no form fieldset */}
      <div className="Kit-NumberBoard" role="group" aria-label={`Number board for ${names[kind]}`}>
        {rows[0]?.map((each) => key(each))}
        <BoardPress spoken="rub out" wide word onPress={() => press(field, "rub out")}>
          rub out
        </BoardPress>
        {rows[1]?.map((each) => key(each))}
        {wide ? ownKey(own[0], key) : own.slice(0, 2).map((each) => key(each))}
        {rows[2]?.map((each) => key(each))}
        {wide ? ownKey(own[1], key) : own.slice(2, 4).map((each) => key(each))}
        {rows[3]?.map((each) => key(each))}
        <BoardPress spoken="back to the field before" word onPress={() => walkFields({ from: field, by: -1 })}>
          back
        </BoardPress>
        <BoardPress spoken="next field" wide word next onPress={() => walkFields({ from: field, by: 1 })}>
          next
        </BoardPress>
      </div>
    </section>
  );
}

function ownKey(own: BoardKey | undefined, key: (key: BoardKey, wide: boolean) => React.ReactNode) {
  return own === undefined ? <span className="Kit-NumberBoard-blank" aria-hidden="true" /> : key(own, true);
}

function BoardPress(props: {
  readonly children: React.ReactNode;
  readonly spoken: string;
  readonly wide?: boolean;
  readonly word?: boolean;
  readonly next?: boolean;
  readonly onPress: () => void;
}) {
  const { children, spoken, wide, word, next, onPress } = props;
  return (
    <button
      type="button"
      tabIndex={-1}
      aria-label={spoken}
      data-wide={wide || undefined}
      data-word={word || (typeof children === "string" && children.length > 2) || undefined}
      data-next={next || undefined}
      onPointerDown={(event) => event.preventDefault()} // the focus stays in the field
      onMouseDown={(event) => event.preventDefault()}
      onClick={onPress}
    >
      {children}
    </button>
  );
}

function press(field: HTMLInputElement, key: BoardKey | "rub out"): void {
  const { value, selectionStart, selectionEnd } = field;
  const typed = typeOnBoard({
    field: { text: value, start: selectionStart ?? value.length, end: selectionEnd ?? value.length },
    key,
  });
  field.setRangeText(typed.text, 0, value.length, "end");
  field.setSelectionRange(typed.start, typed.end);
  field.dispatchEvent(new Event("input", { bubbles: true }));
  field.setSelectionRange(typed.start, typed.end);
}
