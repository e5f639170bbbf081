/**
 * Aborts when somebody wants this process to end: Ctrl-C, SIGTERM, a closed terminal, or the death of the process that started it
 * (npm does not pass SIGTERM on; it just goes).
 */
export function stopSignal() {
  const controller = new AbortController();
  const stop = () => controller.abort();
  for (const name of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(name, stop);
  onOrphaned(stop);
  return controller.signal;
}

/** Calls back once when the parent process is gone. */
export function onOrphaned(call) {
  const parent = process.ppid;
  const timer = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(timer);
    call();
  }, 250);
  timer.unref();
}
