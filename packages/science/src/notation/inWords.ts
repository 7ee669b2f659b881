const UP_TO_NINETEEN =
  "nought one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const TENS = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

/** A whole number as it is spoken, up to ninety-nine; larger ones stay digits. */
function numberInWords(count: number): string {
  if (count > 99) return String(count);
  const ten = TENS[Math.floor(count / 10)] ?? "";
  if (ten === "") return UP_TO_NINETEEN[count] ?? String(count);
  return count % 10 === 0 ? ten : `${ten}-${UP_TO_NINETEEN[count % 10]}`;
}

/** Whole seconds from a minute up as they are spoken: one minute twenty. */
export function timeInWords(timeS: number): string {
  const hours = Math.floor(timeS / 3600);
  const minutes = Math.floor((timeS % 3600) / 60);
  const seconds = timeS % 60;
  const words: string[] = [];
  if (hours > 0) words.push(counted(hours, "hour"));
  if (minutes > 0) words.push(counted(minutes, "minute"));
  if (seconds > 0) words.push(minutes > 0 ? numberInWords(seconds) : counted(seconds, "second"));
  return words.join(" ");
}

function counted(count: number, noun: string): string {
  return `${numberInWords(count)} ${noun}${count === 1 ? "" : "s"}`;
}
