import { textWidth } from "../shapes/textWidth.ts";

const shortWords: readonly (readonly [RegExp, string])[] = [
  [/\bdeveloper\b/i, "dev."],
  [/\bdevelopment\b/i, "dev."],
  [/\bRe-exposure\b/i, "Re-exp."],
  [/^First\b/i, "1st"],
  [/^Second\b/i, "2nd"],
];

/** A name as far as it fits: whole, then with the short words of the trade, then its first letters; "" where not even two of them fit. */
export function fitName({
  name,
  size,
  widthPx,
  isBold = false,
}: {
  readonly name: string;
  readonly size: number;
  readonly widthPx: number;
  readonly isBold?: boolean;
}): string {
  const fits = (text: string) => textWidth({ text, size, isBold }) <= widthPx;
  let text = name;
  if (fits(text)) return text;
  for (const [long, short] of shortWords) {
    text = text.replace(long, short);
    if (fits(text)) return text;
  }
  const [first = ""] = text.split(" ");
  for (const whole of [first, name]) {
    for (let letters = whole.length; letters >= 2; letters--) {
      const cut = letters === first.length && whole === first ? first : `${whole.slice(0, letters).trimEnd()}.`;
      if (fits(cut)) return cut;
    }
  }
  return "";
}
