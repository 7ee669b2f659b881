type Wanted = "value" | "valueOrClose" | "key" | "keyOrClose" | "commaOrClose";

/**
 * The place of the first character that is not JSON; the length of the text where it only ends too early.
 *
 * Engines word this differently or not at all, so it is looked for here. Inner helper: asked only once `JSON.parse` failed.
 */
export function whereJsonBreaks(text: string): number {
  const open: ("]" | "}")[] = [];
  let wanted: Wanted = "value";
  for (let at = afterBlanks(text, 0); at < text.length; at = afterBlanks(text, at)) {
    const character = text.charAt(at);
    const closes = character === open.at(-1) && (wanted === "commaOrClose" || wanted.endsWith("OrClose"));
    if (closes) {
      open.pop();
      at++;
      if (open.length === 0) return afterBlanks(text, at);
      wanted = "commaOrClose";
    } else if (wanted === "commaOrClose") {
      if (character !== ",") return at;
      at++;
      wanted = open.at(-1) === "}" ? "key" : "value";
    } else if (wanted === "key" || wanted === "keyOrClose") {
      if (character !== '"') return at;
      const end = endOfString(text, at);
      if (end.broken) return end.at;
      at = afterBlanks(text, end.at);
      if (at < text.length && text.charAt(at) !== ":") return at;
      at++;
      wanted = "value";
    } else if (character === "[" || character === "{") {
      open.push(character === "[" ? "]" : "}");
      at++;
      wanted = character === "[" ? "valueOrClose" : "keyOrClose";
    } else {
      const end = character === '"' ? endOfString(text, at) : endOfWord(text, at);
      if (end.broken) return end.at;
      at = end.at;
      if (open.length === 0) return afterBlanks(text, at);
      wanted = "commaOrClose";
    }
  }
  return text.length;
}

interface End {
  readonly at: number;
  readonly broken: boolean;
}

function afterBlanks(text: string, from: number): number {
  let at = from;
  while (at < text.length && " \t\n\r".includes(text.charAt(at))) at++;
  return at;
}

function endOfString(text: string, from: number): End {
  for (let at = from + 1; at < text.length; at++) {
    const character = text.charAt(at);
    if (character === '"') return { at: at + 1, broken: false };
    if (character < " ") return { at, broken: true };
    if (character !== "\\") continue;
    at++;
    if (at >= text.length) break;
    const escaped = text.charAt(at);
    if (escaped !== "u" && !'"\\/bfnrt'.includes(escaped)) return { at, broken: true };
    if (escaped !== "u") continue;
    for (let digit = 0; digit < 4; digit++) {
      at++;
      if (at < text.length && !/[0-9a-fA-F]/.test(text.charAt(at))) return { at, broken: true };
    }
  }
  return { at: text.length, broken: true };
}

function endOfWord(text: string, from: number): End {
  let at = from;
  while (at < text.length && /[-+.0-9a-zA-Z]/.test(text.charAt(at))) at++;
  const word = text.slice(from, at);
  if (/^(true|false|null|-?(0|[1-9]\d*)(\.\d+)?([eE][-+]?\d+)?)$/.test(word)) return { at, broken: false };
  const mayGoOn = at === text.length && word !== "" && /^(t(ru?)?|f(a(ls?)?)?|n(ul?)?|-|.*[.eE][-+]?)$/.test(word);
  return { at: mayGoOn ? text.length : from, broken: true };
}
