/** What a person sees to before the lights go out, and why: the page cannot do it by itself. */
export const darkList: readonly (readonly [string, string])[] = [
  ["Screen at its least brightness", "by hand; the page cannot do it"],
  ["Do not disturb is on", "no call, no message lights up"],
  ["Rotation is locked", "a turn redraws the whole screen"],
  ["Warm tint and night colours off", "they mix the colours anew"],
  ["Charging light covered", "phone on its battery, no lead"],
  ["Screen faces away from the paper", "half a metre off"],
];
