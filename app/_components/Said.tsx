import type { Outcome } from "../_gate/outcome";

/** What an action answered. */
export const Said = ({ outcome }: { readonly outcome: Outcome<unknown> | null }) =>
  outcome && (
    <p role={outcome.ok ? "status" : "alert"} className={outcome.ok ? "slip" : "slip wrong"}>
      {outcome.message}
    </p>
  );
