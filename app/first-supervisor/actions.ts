"use server";

import { headers } from "next/headers";
import { z } from "zod";
import { createFirstSupervisor } from "#prisma/people/users";
import { auth } from "../_auth/auth";
import { openAction } from "../_gate/action";
import { done, refused } from "../_gate/outcome";

export const foundCompany = openAction({
  input: z.object({
    company: z.string().trim().min(1, "Name the company.").max(200),
    name: z.string().trim().min(1, "Write your name.").max(200),
    email: z.email("Write an e-mail address.").max(320),
    password: z.string().min(10, "Ten characters at least.").max(200),
  }),
  run: async ({ company, name, email, password }) => {
    const made = await createFirstSupervisor({ companyName: company, name, email, password });
    if (!made.ok) return refused("Somebody else has just been named supervisor. Sign in, or ask them to let you in.");
    await auth().api.signInEmail({ body: { email: email.toLowerCase(), password }, headers: await headers() });
    return done("Set up.", "/");
  },
});
