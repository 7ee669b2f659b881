/** What can be seen to be wrong with a print, in the words of the darkroom. */
export const faultWords = {
  scratch: "scratch",
  tongMark: "tong mark",
  stain: "stain",
  residue: "residue",
  fog: "fog",
  uneven: "uneven",
  finger: "finger mark",
  lightLeak: "light leak",
  blister: "blister",
  dust: "dust spots",
  waterMark: "water mark",
  unbleached: "unbleached patch",
  other: "something else",
} as const;

export type DrawnFault = keyof typeof faultWords;
