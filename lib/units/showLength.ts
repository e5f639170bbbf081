import { LENGTH_PER_INCH, LENGTH_PER_MM, LENGTH_PER_YARD, type Length } from "./quantities";

/** The system lengths are shown in: inches and yards, or centimetres and metres. */
export type LengthSystem = "in" | "cm";

/** Nearest `15 1/4`: whole number and a lowest-terms fraction. */
const withFraction = (parts: number, per: number): string => {
  const whole = Math.floor(parts / per);
  let over = parts % per;
  let under = per;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  if (over === 0) return String(whole);
  return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
};

const decimal = (value: number, places: number): string => {
  const text = value.toFixed(places);
  return places > 0 ? text.replace(/\.?0+$/, "") : text;
};

/** `15 1/4 in` to the nearest eighth (or sixteenth), or `38.7 cm` to the nearest millimetre; halves upward. */
export const showLength = (length: Length, system: LengthSystem, inchParts: 8 | 16 = 8): string =>
  system === "in"
    ? `${withFraction(Math.floor((length * inchParts) / LENGTH_PER_INCH + 0.5), inchParts)} in`
    : `${decimal(Math.floor(length / LENGTH_PER_MM + 0.5) / 10, 1)} cm`;

/** Cloth by the yard in eighths or by the metre in hundredths, rounded up so that it is never shown short: `3 1/8 yd`, `2.35 m`. */
export const showCloth = (length: Length, system: LengthSystem): string =>
  system === "in"
    ? `${withFraction(Math.ceil((length * 8) / LENGTH_PER_YARD), 8)} yd`
    : `${decimal(Math.ceil(length / (10 * LENGTH_PER_MM)) / 100, 2)} m`;

/** Text that reads back to the same length: the reader's system where it is exact, else the other, else `0.0125 mm` steps. */
export const writeLength = (length: Length, system: LengthSystem): string => {
  const inches = length % (LENGTH_PER_INCH / 16) === 0 ? showLength(length, "in", 16) : null;
  const centimetres = length % (LENGTH_PER_MM / 10) === 0 ? `${decimal(length / (10 * LENGTH_PER_MM), 2)} cm` : null;
  const [first, second] = system === "in" ? [inches, centimetres] : [centimetres, inches];
  return first ?? second ?? `${decimal(length / LENGTH_PER_MM, 4)} mm`;
};
