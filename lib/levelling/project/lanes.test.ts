import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lanesFor } from "./lanes";

describe("amounts packed into one integer", () => {
  it("fit together exactly when each fits by itself", () => {
    const amounts = fc.array(fc.integer({ min: 0, max: 127 }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(amounts, amounts, (available, required) => {
        const { guard, pack } = lanesFor([127, 127, 127, 127])!;
        const fits = (((pack(available) | guard) - pack(required)) & guard) === guard;
        expect(fits).toBe(required.every((amount, i) => amount <= available[i]!));
      }),
    );
  });

  it("are refused when the capacities need more bits than there are", () => {
    expect(lanesFor([127, 127, 127, 128])).toBeNull();
    expect(lanesFor([127, 127, 127, 127])).not.toBeNull();
  });
});
