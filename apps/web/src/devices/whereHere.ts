export type WhereHere =
  | { readonly kind: "here"; readonly site: { readonly latitudeDeg: number; readonly longitudeEastDeg: number } }
  | { readonly kind: "unknown"; readonly say: string };

const longestMs = 15_000;

/** Where this device stands, to a hundredth of a degree, when it knows and the person lets it say. */
export function whereHere(): Promise<WhereHere> {
  if (!("geolocation" in navigator)) {
    return Promise.resolve({ kind: "unknown", say: "This device does not say where it is. Type it from a map." });
  }
  return new Promise((found) => {
    navigator.geolocation.getCurrentPosition(
      ({ coords }) =>
        found({
          kind: "here",
          site: { latitudeDeg: hundredth(coords.latitude), longitudeEastDeg: hundredth(coords.longitude) },
        }),
      () => found({ kind: "unknown", say: "This device did not say where it is. Type it from a map." }),
      { timeout: longestMs, maximumAge: 3_600_000 },
    );
  });
}

function hundredth(degrees: number): number {
  return Math.round(degrees * 100) / 100;
}
