import type { GarmentWork } from "#lib/breakdown/work";
import limits from "./limits.json";
import type { Taking } from "./takings";

type Range = readonly number[];
const byConstruction: Readonly<Record<string, Readonly<Record<string, Range>>>> = limits.constructions;
const any: Readonly<Record<string, Range>> = limits.any;

/** Everything about a garment that no workroom would believe; empty when there is nothing. */
export const absurd = (construction: string, work: GarmentWork, taking: Taking): readonly string[] => {
  const ranges = { ...any, ...byConstruction[construction] };
  const outside = Object.entries(taking).flatMap(([kind, value]) => {
    const [least = Number.NaN, most = Number.NaN] = ranges[kind] ?? [];
    return least <= value && value <= most ? [] : [`${kind} ${value.toFixed(2)} is outside ${least} to ${most}`];
  });
  const odd = work.needs
    .filter(({ quantity }) => !(Number.isInteger(quantity) && quantity > 0))
    .map(({ role }) => `${role} is not a quantity`);
  const order = work.operations
    .filter(({ minutes: [low, likely, high] }) => !(0 <= low && low <= likely && likely <= high))
    .map(({ code }) => `${code} does not rise from low to high`);
  const told = work.notes.filter(({ kind }) => kind === "parameter" || kind === "measurement").map(({ text }) => text);
  return [...outside, ...odd, ...order, ...told];
};
