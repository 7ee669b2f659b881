import type { Mishap } from "@captray/notebook/records";

/** What went wrong, in the words of the yard. */
export const mishapWords: Readonly<Record<Mishap, string>> = {
  slideLeftIn: "slide left in",
  slideOutCapOff: "slide out with the cap off",
  knocked: "knocked",
  exposedTwice: "exposed twice",
  holderNotSeated: "holder not seated",
  lightLeak: "light leak",
};
