/** Words as they stand at the beginning of a line: "knocked" becomes "Knocked". */
export function beginning(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
