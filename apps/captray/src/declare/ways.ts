/** Ways of saying one thing in an object, of which exactly one is given. */
export interface Ways {
  readonly choices: readonly Way[];
  /** Keys that, standing without their way, are one too many rather than a way begun. */
  readonly strays?: readonly string[];
  /** Whether none need be given: a default then holds. */
  readonly mayLack?: boolean;
}

/** One way: the key that begins it, the keys it also needs, and those it may have. */
export interface Way {
  readonly lead: string;
  readonly needs?: readonly string[];
  readonly mayHave?: readonly string[];
}

/** The first way that is begun, in the order of the table. */
export function wayGiven(ways: Ways, value: Readonly<Record<string, unknown>>): Way | undefined {
  return ways.choices.find(({ lead }) => Object.hasOwn(value, lead));
}

export function keysOfWay({ lead, needs = [], mayHave = [] }: Way): readonly string[] {
  return [lead, ...needs, ...mayHave];
}
