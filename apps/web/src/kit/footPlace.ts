// Where the exposure bar lies: the shell says so, a room's bar goes there. In the source it stands after the page.
let place: HTMLElement | undefined;
const listeners = new Set<() => void>();

export const footPlace = {
  /** For the shell: a ref of the place. */
  set: (element: HTMLElement | null): void => {
    place = element ?? undefined;
    for (const listener of listeners) listener();
  },
  now: (): HTMLElement | undefined => place,
  follow: (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
};
