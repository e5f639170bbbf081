import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { currencyDigits, isCurrency, readMoney, showMoney, writeMoney } from "./money";

const value = (text: string, currency = "GBP") => {
  const read = readMoney(text, currency);
  return read.ok ? read.value : null;
};

describe("money", () => {
  // ISO 4217, minor units: GBP 2, JPY 0, KWD 3 (from memory; the platform's own tables answer).
  it("has the currency's own places", () => {
    expect(["GBP", "USD", "JPY", "KWD"].map(currencyDigits)).toEqual([2, 2, 0, 3]);
    expect(isCurrency("EUR")).toBe(true);
    expect(isCurrency("XQX")).toBe(false);
  });

  it.each([
    ["1,234.50", 123450],
    ["1.234,50", 123450],
    ["1 234,50", 123450],
    ["£1,234.5", 123450],
    ["12 GBP", 1200],
    ["1,234", 123400],
    ["1,234,567", 123456700],
    ["0.05", 5],
  ])("reads %s", (text, amount) => expect(value(text)).toBe(amount));

  it("reads currencies of other places", () => {
    expect(value("1,234", "JPY")).toBe(1234);
    expect(value("1.234,500", "KWD")).toBe(1234500);
  });

  it.each(["", "1.234", "12.345,6,7", "1,23,456.00", "-4", "twelve", "1.005", "12.", "1,234,56"])("refuses %j", (text) =>
    expect(value(text)).toBeNull(),
  );

  it("refuses a comma that may be thousands or three places", () => expect(value("1,234", "KWD")).toBeNull());

  it("writes an amount that reads back to itself", () => {
    fc.assert(
      fc.property(fc.nat(10 ** 12), fc.constantFrom("GBP", "JPY", "KWD"), (amount, currency) => {
        expect(value(writeMoney(amount, currency), currency)).toBe(amount);
      }),
    );
  });

  it("shows and reads back in both usages", () => {
    expect(showMoney(123450, "GBP")).toBe("£1,234.50");
    fc.assert(
      fc.property(fc.nat(10 ** 9), fc.constantFrom("uk" as const, "us" as const), (amount, usage) => {
        expect(value(showMoney(amount, "USD", usage).replace("US$", "$"), "USD")).toBe(amount);
      }),
    );
  });
});
