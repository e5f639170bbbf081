import type { Source } from "#lib/casting/wardrobe";
import type { BothWords } from "#lib/constructions/construction";
import { both } from "./bothWords";

export const SOURCE_LABELS: Readonly<Record<Source, BothWords>> = {
  build: both("Make", "Build"),
  pull: both("Pull from stock"),
  alter: both("Alter"),
  hire: both("Hire", "Rent"),
  buy: both("Buy"),
};
