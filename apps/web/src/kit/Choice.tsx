import type { ReactNode } from "react";
import { Label, Radio, RadioGroup } from "react-aria-components";
import "./Choice.css";

export interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly labelUnseen?: boolean;
  readonly value: Value | undefined;
  readonly onChoose: (value: Value) => void;
  /** Up to seven; `detail` stands under the name in the colour of the hand. */
  readonly options: readonly { readonly value: Value; readonly name: string; readonly detail?: ReactNode }[];
}

/** One of a few: radio buttons side by side, the chosen one in a thick frame. */
export function Choice<Value extends string>({ label, labelUnseen, value, onChoose, options }: ChoiceProps<Value>) {
  return (
    <RadioGroup
      className="Kit-Choice"
      value={value ?? null}
      onChange={(next) => onChoose(next as Value)}
      data-field="choice"
    >
      <Label className={labelUnseen ? "unseen" : "Kit-Choice-label"}>{label}</Label>
      <div className="Kit-Choice-options">
        {options.map((option) => (
          <Radio key={option.value} value={option.value} className="Kit-Choice-option">
            {option.detail === undefined ? <b>{option.name}</b> : <span>{option.name}</span>}
            {option.detail !== undefined && <b>{option.detail}</b>}
          </Radio>
        ))}
      </div>
    </RadioGroup>
  );
}
