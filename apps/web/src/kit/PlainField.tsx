import "./PlainField.css";

export interface PlainFieldProps {
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly hint?: string;
  readonly most?: number;
}

/** Words, not figures: a name, a note of one line. */
export function PlainField({ label, text, onText, hint, most = 120 }: PlainFieldProps) {
  return (
    <label className="Kit-PlainField">
      <span>{label}</span>
      <input
        value={text}
        placeholder={hint}
        maxLength={most}
        autoComplete="off"
        onChange={(event) => onText(event.currentTarget.value)}
      />
    </label>
  );
}
