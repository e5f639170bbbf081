/** The users of a demonstration that was just loaded, or null. Their passwords are kept nowhere in the clear. */
export function newUsers(users) {
  if (users.length === 0) return null;
  const width = (field) => Math.max(...users.map((user) => user[field].length));
  const rows = users.map(({ role, email, password }) => `  ${role.padEnd(width("role"))}  ${email.padEnd(width("email"))}  ${password}`);
  return ["", "Sign in with one of these. The passwords are shown this once:", "", ...rows, ""].join("\n");
}

/** What is said when everything runs: where, how to get in, how to stop. */
export function welcome({ host, port, empty }, { loaded }, total) {
  const address = `http://${host.includes(":") ? `[${host}]` : host}:${port}`;
  const lines = ["", `Tarlatan is served at ${address} (ready in ${total})`];
  if (empty) lines.push("There is no demonstration. While nobody has an account, the page asks for the first supervisor.");
  else lines.push(`Sign in with ${loaded ? "one of the users above" : "the passwords shown at the first start, or your own"}.`);
  lines.push("Ctrl-C stops the app and its database.", "");
  return lines.join("\n");
}
