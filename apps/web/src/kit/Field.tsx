import type { KeyboardEvent, ReactNode } from "react";
import { Input, Label, Text, TextField } from "react-aria-components";
import type { BoardKind } from "./boardState.ts";
import type { Reading } from "./reading.ts";
import { useBoardWanted, walkFields } from "./useBoard.ts";
import { Word } from "./Word.tsx";
import "./Field.css";

export interface FieldProps {
  readonly label: string;
  /** The label is said but not shown, where the head above already says it. */
  readonly labelUnseen?: boolean;
  /** What stands in the field, kept as typed also where it cannot be read. */
  readonly text: string;
  readonly onText: (text: string) => void;
  /** How the text is read; decides what is said beside the field. */
  readonly read: (text: string) => Reading;
  /** Which keys the number board has. */
  readonly kind: BoardKind;
  /** Before the figures: "f/". */
  readonly before?: string;
  /** After the figures: "mm"; left out once the text brings a unit of its own. */
  readonly after?: string;
  /** Said beside the field instead of how it was understood. */
  readonly aside?: ReactNode;
  /** Says nothing while it can be read. */
  readonly quiet?: boolean;
  /** What is said stands under the field, not at its side. */
  readonly below?: boolean;
  /** A hint while the field is empty. */
  readonly hint?: string;
  /** Width of the box in signs; without it the field takes the room there is. */
  readonly signs?: number;
}

/** A number as people write it: it says at once how it understood, and keeps what it cannot read. */
export function Field(props: FieldProps) {
  const { label, labelUnseen, text, onText, read, kind, before, after, below, hint, signs } = props;
  const board = useBoardWanted();
  const reading = read(text);
  const unreadable = reading.kind === "unreadable";
  const ownUnit = /[a-z″′"']/i.test(text) && !/^f/i.test(text);

  return (
    <TextField
      className="Kit-Field"
      value={text}
      onChange={onText}
      isInvalid={unreadable}
      data-below={below || undefined}
      data-signs={signs !== undefined || undefined}
      {...(signs === undefined ? {} : { style: { "--signs": signs } as React.CSSProperties })}
    >
      <Label className={labelUnseen ? "unseen" : "Kit-Field-label"}>{label}</Label>
      <span className="Kit-Field-box">
        {before !== undefined && <span aria-hidden="true">{before}</span>}
        <Input
          data-field={kind}
          inputMode={board ? "none" : "text"}
          enterKeyHint="next"
          autoComplete="off"
          autoCorrect="off"
          autoCapitalize="none"
          spellCheck={false}
          {...(hint === undefined ? {} : { placeholder: hint })}
          onKeyDown={onKey}
        />
        {after !== undefined && !ownUnit && <span aria-hidden="true">{after}</span>}
      </span>
      <Text slot="description" className="Kit-Field-said" elementType="span">
        <span aria-live="polite">{said(reading, props)}</span>
        {unreadable && reading.likely !== undefined && (
          <Likely likely={reading.likely.text} onTake={() => onText(reading.likely?.text ?? text)} />
        )}
      </Text>
    </TextField>
  );
}

function said(reading: Reading, facts: FieldProps): ReactNode {
  if (reading.kind === "unreadable") return reading.message;
  if (facts.aside !== undefined) return facts.aside;
  if (reading.kind === "empty" || facts.quiet) return null;
  const plain = (words: string) => words.toLowerCase().replace(/[\s/]/g, "");
  const same = [facts.text, facts.text + (facts.after ?? ""), `f${facts.text}`]
    .map(plain)
    .includes(plain(reading.understood));
  return same ? null : reading.understood;
}

function Likely({ likely, onTake }: { readonly likely: string; readonly onTake: () => void }) {
  return (
    <>
      {" was it "}
      <Word inline onPress={onTake} spoken={`It was ${likely}`}>
        {likely}
      </Word>
      ?
    </>
  );
}

function onKey(event: KeyboardEvent<HTMLInputElement>): void {
  if (event.key !== "Enter") return;
  event.preventDefault();
  walkFields({ from: event.currentTarget, by: 1 });
}
