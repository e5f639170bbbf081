import { textWidth } from "./textFit";

/** A pin with a name and a smaller line beneath. */
export interface Pin {
  readonly x: number;
  readonly name: string;
  readonly small: string;
}

export interface LabelledPin extends Pin {
  /** Side of the pin its name stands on; null when there is no room, since a name is dropped before it is cut. */
  readonly label: "left" | "right" | null;
  /** Whether the smaller line has room too. */
  readonly both: boolean;
  /** 0, or 1 for a longer pin whose name stands above those of its neighbours. */
  readonly tier: 0 | 1;
}

const PIN_ROOM = 9;
const SMALL = 12;

/**
 * Names stand left of their pins, or right, or on a longer pin above the others; never across another pin. Pins are given from left to
 * right; `letters` is the size of a name.
 */
export const pinLabels = <T extends Pin>(pins: readonly T[], width: number, letters: number): readonly (T & LabelledPin)[] => {
  /** How far each tier is taken: by names in it, and by pins that reach up through it. */
  const taken = [0, 0];
  return pins.map((pin, at) => {
    const next = (pins[at + 1]?.x ?? width + PIN_ROOM) - PIN_ROOM;
    const placed = waysOf(pin, letters).find(({ side, room, tier }) =>
      side === "left" ? pin.x - room >= taken[tier]! : pin.x >= taken[tier]! && pin.x + room <= next,
    );
    const tier = placed?.tier ?? 0;
    for (let level = 0; level <= tier; level++) taken[level] = Math.max(taken[level]!, pin.x + PIN_ROOM);
    if (placed?.side === "right") taken[tier] = pin.x + placed.room;
    return { ...pin, label: placed?.side ?? null, both: placed?.both ?? false, tier };
  });
};

/** Where a name could stand, best first. */
const waysOf = (pin: Pin, letters: number) => {
  const name = textWidth(pin.name, letters) + PIN_ROOM;
  const both = Math.max(name, textWidth(pin.small, SMALL) + PIN_ROOM);
  return [
    { side: "left", tier: 0, room: both, both: true },
    { side: "right", tier: 0, room: both, both: true },
    { side: "left", tier: 1, room: both, both: true },
    { side: "left", tier: 1, room: name, both: false },
    { side: "left", tier: 0, room: name, both: false },
    { side: "right", tier: 0, room: name, both: false },
  ] as const;
};
