const EULER = 0.5772156649015329;

/** Beyond this the integrals are below the smallest double. */
const NOTHING_LEFT = 745;

/**
 * E₂ and E₃, the exponential integrals ∫₁^∞ e^(−x t) t^(−n) dt, for x ≥ 0.
 *
 * E₁ by its series near 0, else by its continued fraction; then E_(n+1) = (e^(−x) − x E_n) / n.
 */
export function exponentialIntegrals(x: number): { readonly second: number; readonly third: number } {
  if (x === 0) return { second: 1, third: 0.5 };
  if (x > NOTHING_LEFT) return { second: 0, third: 0 };
  const fading = Math.exp(-x);
  const first = x <= 1.5 ? series(x) : fading * continuedFraction(x);
  const second = fading - x * first;
  return { second, third: (fading - x * second) / 2 };
}

function series(x: number): number {
  let sum = -EULER - Math.log(x);
  let power = 1;
  for (let k = 1; k <= 30; k += 1) {
    power *= -x / k;
    sum -= power / k;
  }
  return sum;
}

/** e^x E₁(x), evaluated from the front (Lentz). */
function continuedFraction(x: number): number {
  let b = x + 1;
  let c = Number.POSITIVE_INFINITY;
  let d = 1 / b;
  let value = d;
  for (let k = 1; k <= 200; k += 1) {
    const a = -k * k;
    b += 2;
    d = 1 / (a * d + b);
    c = b + a / c;
    const step = c * d;
    value *= step;
    if (Math.abs(step - 1) < 1e-16) break;
  }
  return value;
}
