import type { PlainDate } from "#lib/calendar/plainDate";
import { showDate } from "#lib/calendar/showDay";
import type { FittedAt } from "#lib/fittings/answer";
import type { KeptAnswer } from "#prisma/fittings/answers";
import { AnswerForm } from "./AnswerForm";

const content = ({ fit, movement, look }: KeptAnswer): string => {
  const signed = [fit && "fit", movement && "movement", look && "look"].filter(Boolean);
  return signed.length > 0 ? `signed off: ${signed.join(", ")}` : "nothing signed off";
};

/** How the fitting went, each time, and the form that says how it went now. */
export const Answers = ({
  at,
  answers,
  production,
  today,
  canAnswer,
}: {
  readonly at: FittedAt;
  /** The newest first. */
  readonly answers: readonly KeptAnswer[];
  readonly production: string;
  readonly today: PlainDate;
  readonly canAnswer: boolean;
}) => (
  <section className="part" aria-labelledby="went">
    <h2 id="went">How it went</h2>
    {answers.length > 0 ? (
      <ul className="lines">
        {answers.map((answer) => (
          <li key={answer.at.toISOString()}>
            <b>{answer.answer}</b>, {showDate(answer.on)}; {content(answer)}
            {answer.note && <>: {answer.note}</>} <span className="cap">{answer.who}</span>
          </li>
        ))}
      </ul>
    ) : (
      <p className="q">Not answered yet.</p>
    )}
    {canAnswer && <AnswerForm at={at} production={production} today={today} />}
  </section>
);
