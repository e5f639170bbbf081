import { MessageChannel, type MessagePort, receiveMessageOnPort, type Worker } from "node:worker_threads";
import type { LevellingProblem, Plan } from "#lib/levelling/problem";
import type { Beside } from "#lib/levelling/search";

/** What the thread of an island is given. */
export interface IslandOrder {
  readonly island: number;
  readonly problem: LevellingProblem;
  readonly seed: number;
  readonly first: Plan;
  readonly port: MessagePort;
  /** One integer: how many answers have been posted. */
  readonly answered: SharedArrayBuffer;
}

export type IslandRequest = { readonly kind: "round" } | { readonly kind: "adopt"; readonly plan: Plan };

export interface IslandAnswer extends Pick<Beside, "standing" | "plan" | "rule" | "schedules" | "isSpent"> {
  /** What went wrong, a defect; null when nothing did. */
  readonly error: string | null;
}

/** Longer than any round takes: after it the other thread is given up for lost. */
const LOST = 600_000;

/** An island that searches in a thread of its own while this one does its own round; this one then sleeps until the answer is there. */
export class IslandElsewhere implements Beside {
  private answer: IslandAnswer | null = null;
  private asked = 0;
  private readonly port;
  private readonly answered: Int32Array;

  constructor(order: Omit<IslandOrder, "port" | "answered">, start: (order: IslandOrder) => Worker) {
    const { port1, port2 } = new MessageChannel();
    const answered = new SharedArrayBuffer(4);
    this.port = port1;
    this.answered = new Int32Array(answered);
    start({ ...order, port: port2, answered }).unref();
  }

  begin(): void {
    this.ask({ kind: "round" });
  }

  end(): void {
    this.answer = this.wait();
  }

  adopt(plan: Plan): void {
    this.ask({ kind: "adopt", plan });
    this.answer = this.wait();
  }

  get standing() {
    return this.known.standing;
  }

  get plan(): Plan {
    return this.known.plan;
  }

  get rule(): string {
    return this.known.rule;
  }

  get schedules(): number {
    return this.known.schedules;
  }

  get isSpent(): boolean {
    return this.answer?.isSpent ?? false;
  }

  private get known(): IslandAnswer {
    if (this.answer === null) throw new Error("An island elsewhere was asked before its first round.");
    return this.answer;
  }

  private ask(request: IslandRequest): void {
    this.asked++;
    this.port.postMessage(request);
  }

  private wait(): IslandAnswer {
    while (Atomics.load(this.answered, 0) < this.asked)
      if (Atomics.wait(this.answered, 0, this.asked - 1, LOST) === "timed-out") throw new Error("A thread of the search gave no answer.");
    const { message } = receiveMessageOnPort(this.port) as { message: IslandAnswer };
    if (message.error !== null) throw new Error(message.error);
    return message;
  }
}
