/** At least this many characters, and this many different ones. */
const LEAST_LENGTH = 32;
const LEAST_VARIETY = 12;

/** The secret that signs sessions. A weak one is refused: anybody who guesses it may be anybody. */
export const signingSecret = (secret: string | undefined): string => {
  if (secret === undefined || secret.length < LEAST_LENGTH || new Set(secret).size < LEAST_VARIETY)
    throw new Error(
      `BETTER_AUTH_SECRET is missing or weak: it needs at least ${LEAST_LENGTH} characters, ${LEAST_VARIETY} of them different. \`openssl rand -base64 33\` makes one.`,
    );
  return secret;
};
