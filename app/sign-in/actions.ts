"use server";

import { APIError } from "better-auth/api";
import { headers } from "next/headers";
import { z } from "zod";
import { attempts } from "../_auth/attempts";
import { auth } from "../_auth/auth";
import { memberAction, openAction } from "../_gate/action";
import { done, refused } from "../_gate/outcome";

export const signIn = openAction({
  input: z.object({
    email: z.string().trim().min(1, "Write your e-mail address.").max(320),
    password: z.string().min(1, "Write your password.").max(200),
  }),
  run: async ({ email, password }) => {
    const minutes = attempts.wait(email, Date.now());
    if (minutes > 0) return refused(`Too many tries with this address. Try again in ${minutes} min.`);
    try {
      await auth().api.signInEmail({ body: { email, password }, headers: await headers() });
    } catch (error) {
      if (!(error instanceof APIError) || error.statusCode >= 500) throw error;
      attempts.failed(email, Date.now());
      return refused("No one comes in with this e-mail and password. Look at both and try again.");
    }
    attempts.passed(email);
    return done("Come in.", "/");
  },
});

export const signOut = memberAction({
  act: "read",
  name: "sign out",
  input: z.object({}),
  run: async () => {
    await auth().api.signOut({ headers: await headers() });
    return done("Signed out.", "/sign-in");
  },
});
