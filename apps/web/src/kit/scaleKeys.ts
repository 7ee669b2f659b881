export interface KeyMoveInput {
  readonly key: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly arrow: number;
  readonly page: number;
  readonly home: number;
}

/** Where a key moves the value of a scale: to the next whole step from the advice; nothing for any other key. */
export function keyMove({ key, value, least, most, arrow, page, home }: KeyMoveInput): number | undefined {
  const within = (next: number) => Math.min(most, Math.max(least, next));
  // A finger stops between the steps of the keys; the next key goes on to a whole one.
  const along = (step: number, direction: 1 | -1) => {
    const steps = ((value - home) / step) * direction;
    return within(home + direction * step * (Math.floor(steps + 1e-6) + 1));
  };
  switch (key) {
    case "ArrowRight":
    case "ArrowUp":
      return along(arrow, 1);
    case "ArrowLeft":
    case "ArrowDown":
      return along(arrow, -1);
    case "PageUp":
      return within(value + page);
    case "PageDown":
      return within(value - page);
    case "Home":
      return within(home);
    case "End":
      return most;
    default:
      return undefined;
  }
}
