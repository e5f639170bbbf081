import { connect, createServer } from "node:net";
import { Complaint } from "./complaint.mjs";

/** Listens for a moment. @returns null, or the code of the error */
function tryPort(port, host) {
  return new Promise((done) => {
    const server = createServer();
    server.once("error", (error) => done(error.code));
    server.listen({ port, host, exclusive: true }, () => server.close(() => done(null)));
  });
}

/** @throws Complaint when the port cannot be had. Waits a moment for a server that is just ending. */
export async function needPort(port, host) {
  for (let attempt = 0; ; attempt++) {
    const trouble = await tryPort(port, host);
    if (!trouble) return;
    if (trouble === "EADDRINUSE" && attempt < 6) await new Promise((done) => setTimeout(done, 250));
    else throw new Complaint(sentence(trouble, port, host));
  }
}

function sentence(code, port, host) {
  if (code === "EADDRINUSE") return `Port ${port} is in use. Stop what uses it, or choose another: PORT=${port + 1} npm start`;
  if (code === "EACCES") return `Port ${port} may not be opened by this user. Choose one above 1023: PORT=3000 npm start`;
  if (code === "EADDRNOTAVAIL" || code === "ENOTFOUND") return `HOST=${host} is not an address of this machine.`;
  return `Port ${port} on ${host} cannot be opened (${code}).`;
}

/** A port nobody uses now. */
export function freePort() {
  return new Promise((done, fail) => {
    const server = createServer();
    server.once("error", fail);
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address();
      server.close(() => done(port));
    });
  });
}

/** Whether somebody answers there. */
export function answers(port) {
  return new Promise((done) => {
    const socket = connect({ port, host: "127.0.0.1", timeout: 2000 });
    const end = (result) => {
      socket.destroy();
      done(result);
    };
    socket.once("connect", () => end(true));
    socket.once("error", () => end(false));
    socket.once("timeout", () => end(false));
  });
}
