/** Tells what is being done and how long it took. */
export class Steps {
  #write;
  #begun = performance.now();

  constructor(write = (text) => process.stdout.write(text)) {
    this.#write = write;
  }

  /** Does a piece of work under a name, and gives what it gave. `tell` says more about the result on the same line. */
  async run(name, work, tell = () => "") {
    this.#write(`${name} `.padEnd(44, "."));
    const begun = performance.now();
    try {
      const result = await work();
      this.#write(` ${seconds(begun).padStart(7)}  ${tell(result)}`.trimEnd().concat("\n"));
      return result;
    } catch (error) {
      this.#write(` failed after ${seconds(begun)}\n`);
      throw error;
    }
  }

  total() {
    return seconds(this.#begun);
  }
}

const seconds = (begun) => `${((performance.now() - begun) / 1000).toFixed(1)} s`;
