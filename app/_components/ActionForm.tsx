"use client";

import { useActionState } from "react";
import type { Action } from "../_gate/action";
import { Said } from "./Said";

/** A form that runs an action and says how it ended. Works before scripts load; then it also shows that it is busy. */
export const ActionForm = ({
  action,
  press,
  busy,
  look = "press second",
  children,
}: {
  readonly action: Action;
  readonly press: string;
  /** On the press while it runs. */
  readonly busy: string;
  readonly look?: "press" | "press second" | "plain";
  readonly children?: React.ReactNode;
}) => {
  const [outcome, submit, waiting] = useActionState(action, null);
  return (
    <form action={submit}>
      {children}
      <Said outcome={outcome} />
      <button type="submit" className={look} disabled={waiting}>
        {waiting ? busy : press}
      </button>
    </form>
  );
};
