/** One of a list, or as it is; `now` says what that is when all the pieces agree. */
export const Choice = ({
  name,
  label,
  now,
  chosen,
  options,
  wrong,
}: {
  readonly name: string;
  readonly label: string;
  /** Null when they differ. */
  readonly now: string | null;
  readonly chosen: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly wrong?: string;
}) => (
  <label className="field">
    {label}
    <select name={name} defaultValue={chosen} aria-invalid={wrong !== undefined}>
      <option value="">{now === null ? "as each is" : `as it is: ${now}`}</option>
      {options.map((option) => (
        <option key={option.value} value={option.value}>
          {option.label}
        </option>
      ))}
    </select>
    {wrong && <span className="bad">{wrong}</span>}
  </label>
);

/** Something typed; empty leaves it as it is. */
export const Typed = ({
  name,
  label,
  now,
  typed,
  hint,
  wrong,
}: {
  readonly name: string;
  readonly label: string;
  readonly now: string | null;
  readonly typed: string;
  readonly hint?: string;
  readonly wrong?: string;
}) => (
  <label className="field">
    {label}
    {hint && <span className="cap"> {hint}</span>}
    <input
      name={name}
      defaultValue={typed}
      placeholder={now === null ? "as each is" : `as it is: ${now}`}
      autoComplete="off"
      aria-invalid={wrong !== undefined}
    />
    {wrong && <span className="bad">{wrong}</span>}
  </label>
);
