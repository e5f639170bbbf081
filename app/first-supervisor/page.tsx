import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { connection } from "next/server";
import { anybodyHere } from "#prisma/people/users";
import { Door } from "../_components/Door";
import { FirstSupervisorForm } from "./FirstSupervisorForm";

export const metadata: Metadata = { title: "First supervisor" };

const FirstSupervisor = async () => {
  await connection();
  if (await anybodyHere()) redirect("/sign-in");
  return (
    <Door head="Nobody is here yet." say="Name the company and the supervisor who runs its wardrobe. Everybody else is let in by them.">
      <FirstSupervisorForm />
    </Door>
  );
};

export default FirstSupervisor;
