import type { Outcome } from "../_gate/outcome";

/** A labelled field that keeps what was typed and says what is wrong with it. */
export const Field = ({
  name,
  label,
  outcome,
  ...input
}: {
  readonly name: string;
  readonly label: string;
  readonly outcome: Outcome<unknown> | null;
} & React.InputHTMLAttributes<HTMLInputElement>) => {
  const wrong = outcome && !outcome.ok ? outcome.fields[name] : undefined;
  const kept = outcome && !outcome.ok ? outcome.kept[name] : undefined;
  return (
    <label className="field">
      {label}
      <input name={name} defaultValue={kept} aria-invalid={wrong !== undefined} aria-describedby={wrong && `${name}-wrong`} {...input} />
      {wrong && (
        <span id={`${name}-wrong`} className="bad">
          {wrong}
        </span>
      )}
    </label>
  );
};
