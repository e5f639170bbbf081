"use client";

import { useActionState } from "react";
import { Field } from "../_components/Field";
import { Said } from "../_components/Said";
import { foundCompany } from "./actions";

export const FirstSupervisorForm = () => {
  const [outcome, submit, waiting] = useActionState(foundCompany, null);
  return (
    <form action={submit}>
      <Field name="company" label="The company" autoComplete="organization" required outcome={outcome} />
      <Field name="name" label="Your name" autoComplete="name" required outcome={outcome} />
      <Field name="email" label="Your e-mail" type="email" autoComplete="username" required outcome={outcome} />
      <Field
        name="password"
        label="A password, ten characters or more"
        type="password"
        autoComplete="new-password"
        required
        outcome={outcome}
      />
      <Said outcome={outcome} />
      <button type="submit" className="press tall" disabled={waiting}>
        {waiting ? "Setting up" : "Set up the wardrobe"}
      </button>
    </form>
  );
};
