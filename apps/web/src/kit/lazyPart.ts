import { type ComponentType, createElement, type ReactNode, Suspense, use } from "react";

interface Fetched<Props> {
  readonly now: () => ComponentType<Props> | undefined;
  readonly fetch: () => Promise<ComponentType<Props>>;
}

/** A part of a page that is fetched by itself; until then the page keeps its place. Drawn at once when it is there. */
export function lazyPart<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  place: ReactNode = null,
): (props: Props) => ReactNode {
  const part = fetched(load);
  return (props) => createElement(Suspense, { fallback: place }, createElement(Part<Props>, { part, props }));
}

// React's own `lazy` waits even for what is there already, and lets whatever stood meanwhile stand for 300 ms.
function Part<Props extends object>({ part, props }: { readonly part: Fetched<Props>; readonly props: Props }) {
  return createElement(part.now() ?? use(part.fetch()), props);
}

function fetched<Props>(load: () => Promise<ComponentType<Props>>): Fetched<Props> {
  let now: ComponentType<Props> | undefined;
  let fetching: Promise<ComponentType<Props>> | undefined;
  return {
    now: () => now,
    fetch: () => {
      fetching ??= load().then(
        (part) => {
          now = part;
          return part;
        },
        (why) => {
          fetching = undefined;
          throw why;
        },
      );
      return fetching;
    },
  };
}
