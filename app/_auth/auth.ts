import { betterAuth } from "better-auth";
import { prismaAdapter } from "better-auth/adapters/prisma";
import { nextCookies } from "better-auth/next-js";
import { database } from "#prisma/client";
import { signingSecret } from "./secret";

const DAY = 86_400;

const build = () =>
  betterAuth({
    secret: signingSecret(process.env.BETTER_AUTH_SECRET),
    database: prismaAdapter(database(), { provider: "postgresql" }),
    emailAndPassword: { enabled: true, minPasswordLength: 10, maxPasswordLength: 200 },
    session: { expiresIn: 14 * DAY, updateAge: DAY },
    // A company reaches its own server by http inside the house; with an https address cookies never travel without it.
    advanced: { cookiePrefix: "tarlatan", useSecureCookies: process.env.BETTER_AUTH_URL?.startsWith("https:") ?? false },
    telemetry: { enabled: false },
    // It warns that no base URL is set; nothing here makes links or callbacks from one.
    logger: { level: "error" },
    plugins: [nextCookies()],
  });

let built: ReturnType<typeof build> | null = null;

/** Sign-in and sessions. Built at the first request, so that a build of the app needs neither secret nor database. No HTTP route of its own: every call passes an action. */
export const auth = () => {
  built ??= build();
  return built;
};
