/** A time in the tray: 0:19, 12:40, 1:02:05; rounded up, so that 0:00 is the end. */
export function trayTime(seconds: number): string {
  const whole = Math.max(0, Math.ceil(seconds - 0.05));
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  const two = (value: number) => String(value).padStart(2, "0");
  return hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
}

/** A time that has passed: rounded down. */
export function passedTime(seconds: number): string {
  return trayTime(Math.floor(Math.max(0, seconds)));
}

/** The same as it is said: "1 minute 42". */
export function saidTime(seconds: number): string {
  const whole = Math.max(0, Math.round(seconds));
  if (whole < 60) return `${whole} ${whole === 1 ? "second" : "seconds"}`;
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  const rest = whole % 60;
  const said = [
    hours > 0 ? `${hours} ${hours === 1 ? "hour" : "hours"}` : "",
    minutes > 0 ? `${minutes} ${minutes === 1 ? "minute" : "minutes"}` : "",
    rest > 0 && hours === 0 ? `${rest}` : "",
  ];
  return said.filter(Boolean).join(" ");
}

/** "W31", "W31 and W32", "W31, W32 and W33"; of more than four their number. */
export function codesWords(codes: readonly string[]): string {
  if (codes.length === 0) return "The sheet";
  if (codes.length > 4) return `${codes[0]} and ${codes.length - 1} more`;
  const last = codes.at(-1) ?? "";
  return codes.length === 1 ? last : `${codes.slice(0, -1).join(", ")} and ${last}`;
}

/** "goes" or "go". */
export function goWord(codes: readonly string[]): string {
  return codes.length > 1 ? "go" : "goes";
}

/** A name inside a sentence: "the rinse"; one that brings its own article or is a name of its own stays. */
export function theBath(name: string): string {
  const low = name.replace(/^\p{Lu}(?=\p{Ll})/u, (sign) => sign.toLowerCase());
  return /^(the|my|our|a|an)\s/i.test(low) ? low : `the ${low}`;
}

/** A name at the head of a line: "Peroxide". */
export function atHead(name: string): string {
  return name.replace(/^\p{Ll}/u, (sign) => sign.toUpperCase());
}
