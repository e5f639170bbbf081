import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { connection } from "next/server";
import { anybodyHere } from "#prisma/people/users";
import { Door } from "../_components/Door";
import { currentMember } from "../_gate/member";
import { SignInForm } from "./SignInForm";

export const metadata: Metadata = { title: "Sign in" };

const SignIn = async () => {
  await connection();
  if (!(await anybodyHere())) redirect("/first-supervisor");
  if (await currentMember()) redirect("/");
  return (
    <Door head="The wardrobe, in time." say="Who dances what, what it takes to make, and who makes it when.">
      <SignInForm />
    </Door>
  );
};

export default SignIn;
