import { textWidth } from "./textFit";

/** A pin with a name and a smaller line beneath. */
export interface Pin {
  readonly x: number;
  readonly name: string;
  readonly small: string;
}

export interface LabelledPin extends Pin {
  /** Where its name stands; null when there is no room, since a name is dropped before it is cut. */
  readonly label: "left" | "right" | null;
}

const PIN_ROOM = 9;
const SMALL = 12;

/**
 * Names stand left of their pins; right where there is no room; never across another pin. The last pins, the weightier, choose first.
 * Pins are given from left to right; `letters` is the size of a name.
 */
export const pinLabels = <T extends Pin>(pins: readonly T[], width: number, letters: number): readonly (T & LabelledPin)[] => {
  let limit = width;
  return pins
    .map((pin, at) => ({ pin, before: pins[at - 1]?.x ?? -PIN_ROOM }))
    .reverse()
    .map(({ pin, before }) => {
      const room = Math.max(textWidth(pin.name, letters), textWidth(pin.small, SMALL)) + PIN_ROOM;
      const label: LabelledPin["label"] = pin.x - room >= before + PIN_ROOM ? "left" : pin.x + room <= limit ? "right" : null;
      limit = pin.x - (label === "left" ? room : PIN_ROOM);
      return { ...pin, label };
    })
    .reverse();
};
