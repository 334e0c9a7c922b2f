/** Distribution functions that verdicts on readings rest on. Accuracy is stated with each. */

/** ln Γ(x) for x > 0, Lanczos' series (g = 7, nine terms): relative error below 1e-13. */
const logGamma = (x: number): number => {
  const coefficients = [
    676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
    -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
  ];
  const shifted = x - 1;
  const sum = coefficients.reduce((total, c, i) => total + c / (shifted + i + 1), 0.9999999999998099);
  const t = shifted + coefficients.length - 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(t) - t + Math.log(sum);
};

/** Enough terms for the gamma series and fraction at every argument a survey of thousands of readings can reach. */
const MOST_TERMS = 2000;

/** The regularised upper incomplete gamma function Q(a, x): series below a + 1, continued fraction above (Lentz). */
const upperGamma = (a: number, x: number): number => {
  if (x <= 0) return 1;
  const front = Math.exp(-x + a * Math.log(x) - logGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; n < MOST_TERMS && term > sum * Number.EPSILON; n++) {
      term *= x / (a + n);
      sum += term;
    }
    return 1 - front * sum;
  }
  const tiny = Number.MIN_VALUE / Number.EPSILON;
  let b = x + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let h = d;
  for (let n = 1; n < MOST_TERMS; n++) {
    const an = -n * (n - a);
    b += 2;
    d = 1 / (an * d + b || tiny);
    c = b + an / c || tiny;
    const step = d * c;
    h *= step;
    if (Math.abs(step - 1) <= Number.EPSILON) break;
  }
  return front * h;
};

/** The chance that a χ² variable of `degrees` degrees of freedom exceeds `value`. */
export const chiSquareTail = (value: number, degrees: number): number => upperGamma(degrees / 2, value / 2);

/** The chance that a standard normal variable lies further from zero than |value|, on either side. */
export const normalTails = (value: number): number => upperGamma(0.5, (value * value) / 2);

/** The distance from zero beyond which a standard normal variable lies with the given two-sided chance. */
export const normalTwoSided = (chance: number): number => {
  if (!(chance > 0 && chance < 1)) throw new RangeError(`normalTwoSided: ${chance} is not a chance between 0 and 1`);
  let low = 0;
  let high = 1;
  while (normalTails(high) > chance) high *= 2;
  // Sixty halvings reach the last bit of a double.
  for (let i = 0; i < 60; i++) {
    const mid = (low + high) / 2;
    if (normalTails(mid) > chance) low = mid;
    else high = mid;
  }
  return (low + high) / 2;
};
