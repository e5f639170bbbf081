import { describe, expect, it } from "vitest";
import { cutAtOnce } from "#lib/cutting/cutAtOnce";
import { stocksQuestion } from "#lib/cutting/question";
import { checkAnswer } from "#lib/cutting/searchCuts";
import { type CutMessage, cutInThread } from "./cutInThread";

/** Eighteen rods cut into three pieces each without a rest: by rules of thumb nineteen are opened. */
const LENGTHS = [
  ...[393, 324, 283, 380, 496, 124, 411, 382, 207, 458, 478, 64, 267, 499, 234, 300, 298, 402, 488, 264, 248, 342, 257, 401, 267, 418, 315],
  ...[471, 452, 77, 427, 265, 308, 398, 373, 229, 298, 473, 229, 266, 450, 284, 285, 256, 459, 421, 434, 145, 457, 454, 89, 450, 435, 115],
];
const question = stocksQuestion(LENGTHS, 1000);

const answersOf = async (signal: AbortSignal, seconds = 20): Promise<readonly CutMessage[]> => {
  const told: CutMessage[] = [];
  await cutInThread(question, { seconds, signal, onAnswer: (message) => told.push(message) });
  return told;
};

describe("a search for better cutting in a thread", () => {
  it("tells a plan at once, better ones as they come, and the proof at the end; every one is legal", async () => {
    const told = await answersOf(new AbortController().signal);
    expect(told[0]?.answer.used).toBeLessThanOrEqual(cutAtOnce(LENGTHS, 1000).length);
    for (const { answer } of told) expect(checkAnswer(question, answer)).toEqual([]);
    expect(told.at(-1)).toMatchObject({ answer: { used: 18, bound: 18 }, done: true });
  });

  it("ends when it is asked to, and what was told before stands", async () => {
    const told = await answersOf(AbortSignal.abort());
    expect(told.length).toBeGreaterThan(0);
    expect(checkAnswer(question, told[0]?.answer ?? { kind: "stocks", used: 0, bound: 0, patterns: [] })).toEqual([]);
  });
});
