"use client";

import { useActionState } from "react";
import { Field } from "../_components/Field";
import { Said } from "../_components/Said";
import { letIn } from "./actions";
import { RoleField } from "./RoleField";

/** Lets a new person in, with a part and a first password. */
export const LetInForm = () => {
  const [outcome, submit, waiting] = useActionState(letIn, null);
  return (
    <form action={submit}>
      <Field name="name" label="Name" autoComplete="off" required outcome={outcome} />
      <Field name="email" label="E-mail" type="email" autoComplete="off" required outcome={outcome} />
      <RoleField value="maker" label="Part" />
      <Field
        name="password"
        label="A first password, ten characters or more"
        type="text"
        autoComplete="off"
        required
        minLength={10}
        outcome={outcome}
      />
      <Said outcome={outcome} />
      <button type="submit" className="press" disabled={waiting}>
        {waiting ? "One moment" : "Let in"}
      </button>
    </form>
  );
};
