/** An instant with the local offset the person lives in, as records keep it. */
export function momentNow(): { readonly at: number; readonly offsetMin: number } {
  const now = new Date();
  return { at: now.getTime(), offsetMin: -now.getTimezoneOffset() };
}
