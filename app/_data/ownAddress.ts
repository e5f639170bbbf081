import { headers } from "next/headers";

/** Where the reader reached this server, for what is printed and scanned: `http://127.0.0.1:3000`. */
export const ownAddress = async (): Promise<string> => {
  const from = await headers();
  const host = from.get("x-forwarded-host") ?? from.get("host") ?? "127.0.0.1";
  return `${from.get("x-forwarded-proto") ?? "http"}://${host}`;
};
