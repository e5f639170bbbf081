import type { Quantity } from "#lib/materials/material";
import { ok, type Result } from "#lib/result";
import { readHours, showHours } from "#lib/units/hours";
import type { LengthUnit } from "#lib/units/lengthUnits";
import { readMoney, writeMoney } from "#lib/units/money";
import { readPerMille, showPerMille } from "#lib/units/perMille";
import type { Length, MinorUnits, Minutes, PerMille } from "#lib/units/quantities";
import { readLength } from "#lib/units/readLength";
import { type LengthSystem, writeLength } from "#lib/units/showLength";
import { type Unreadable, unreadable } from "#lib/units/unreadable";
import { type Cell, cell } from "./cell";

const readWhole = (text: string, least: number, most: number): Result<number, Unreadable> => {
  const value = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  return value >= least && value <= most
    ? ok(value)
    : unreadable(text === "" ? "The cell is empty." : `"${text}" is not a count.`, `Write a whole number from ${least} to ${most}.`);
};

export const wholeNumber = (least: number, most: number): Cell<number> => cell((text) => readWhole(text, least, most), String);

/** A length with its unit; a bare number is of the production's own system. */
export const length = (system: LengthSystem): Cell<Length> =>
  cell(
    (text) => readLength(text, system),
    (value) => writeLength(value, system),
  );

/** Of a material sold by the length or by the piece: a unit says which. */
export interface WrittenQuantity {
  readonly measure: "length" | "count";
  readonly quantity: Quantity;
}

/** `25 m` or `10 yd` is a length, `100` a count. */
export const quantity = (system: LengthSystem): Cell<WrittenQuantity> =>
  cell<WrittenQuantity>(
    (text) => {
      const count = readWhole(text, 0, 999_999_999);
      if (count.ok) return ok({ measure: "count", quantity: count.value });
      const read = readLength(text, null as LengthUnit | null);
      return read.ok ? ok({ measure: "length", quantity: read.value }) : read;
    },
    (value) => (value.measure === "count" ? String(value.quantity) : writeLength(value.quantity, system)),
  );

export const money = (currency: string): Cell<MinorUnits> =>
  cell(
    (text) => readMoney(text, currency),
    (amount) => writeMoney(amount, currency),
  );

/** A share with its per cent sign, at most `most` per mille. */
export const share = (most: PerMille): Cell<PerMille> =>
  cell((text) => {
    const read = readPerMille(text);
    return read.ok && read.value > most ? unreadable(`"${text}" is too much.`, `Write at most ${showPerMille(most)}.`) : read;
  }, showPerMille);

export const hours = (): Cell<Minutes> => cell(readHours, showHours);
