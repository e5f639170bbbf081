"use client";

import { useActionState } from "react";
import { Field } from "../_components/Field";
import { Said } from "../_components/Said";
import { signIn } from "./actions";

export const SignInForm = () => {
  const [outcome, submit, waiting] = useActionState(signIn, null);
  return (
    <form action={submit}>
      <Field name="email" label="Your e-mail" type="email" autoComplete="username" required outcome={outcome} />
      <Field name="password" label="Password" type="password" autoComplete="current-password" required outcome={outcome} />
      <Said outcome={outcome} />
      <button type="submit" className="press tall" disabled={waiting}>
        {waiting ? "Coming in" : "Come in"}
      </button>
    </form>
  );
};
