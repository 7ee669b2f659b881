const patch = (sheet: string, area: string, logExposure: number, value: number) => ({
  sheet,
  area,
  logExposure,
  density: { value, sd: 0.01 },
});

/** Two invented sheets of a boatyard in snow, the second with flash: what the tests of learning ask about. */
export const snowAndShed = {
  sheets: [{ sheet: "W30" }, { sheet: "W31", flashS: 4 }],
  patches: [
    patch("W30", "snow", 1.6368, 0.3),
    patch("W30", "hull", 0.7337, 0.83),
    patch("W30", "shed door", -0.4704, 1.98),
    patch("W31", "snow", 1.6368, 0.31),
    patch("W31", "hull", 0.7337, 0.79),
    patch("W31", "shed door", -0.4704, 1.93),
  ],
};
