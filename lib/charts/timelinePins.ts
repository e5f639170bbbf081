import { textWidth } from "./textFit";

/** An appointment in the fitting room. */
export interface FittingPin {
  readonly x: number;
  readonly name: string;
}

const LETTERS = 12;
const PIN = 16;

/** Pins in order of time with their names, each dropped when it would run into the next pin or off the picture. */
export const fittingPins = (pins: readonly FittingPin[], right: number): readonly (FittingPin & { readonly label: string | null })[] => {
  const sorted = [...pins].sort((a, b) => a.x - b.x || (a.name < b.name ? -1 : 1));
  return sorted.map((pin, at) => {
    const end = pin.x + PIN + textWidth(pin.name, LETTERS);
    return { ...pin, label: end <= (sorted[at + 1]?.x ?? right) ? pin.name : null };
  });
};
