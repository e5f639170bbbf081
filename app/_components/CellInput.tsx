import type { ShownColumn } from "../_data/columnLabel";

/** What a cell of a file is typed or chosen in: a choice of its few words, a day, a code out of a list, or text. */
export const CellInput = ({
  column: { unit, choices, refersTo, example, empty },
  list,
  ...input
}: {
  readonly column: ShownColumn;
  /** Id of the list of codes the column refers to. */
  readonly list: string;
  readonly name: string;
  readonly defaultValue: string;
} & Omit<React.InputHTMLAttributes<HTMLInputElement & HTMLSelectElement>, "list">) => {
  if (choices.length > 0 && !refersTo)
    return (
      <select key={input.defaultValue} {...input}>
        {(empty !== undefined || input.defaultValue === "") && <option value="">{empty ?? "choose"}</option>}
        {choices.map(({ value, name }) => (
          <option key={value} value={value}>
            {name}
          </option>
        ))}
      </select>
    );
  if (unit === "day") return <input type="date" {...input} />;
  return <input type="text" autoComplete="off" placeholder={`for example ${example}`} {...(refersTo ? { list } : {})} {...input} />;
};

/** The lists of codes that the columns refer to, once a page. */
export const CodeLists = ({ columns, id }: { readonly columns: readonly ShownColumn[]; readonly id: (heading: string) => string }) =>
  columns
    .filter(({ refersTo }) => refersTo)
    .map(({ heading, choices }) => (
      <datalist key={heading} id={id(heading)}>
        {choices.map(({ value, name }) => (
          <option key={value} value={value}>
            {name}
          </option>
        ))}
      </datalist>
    ));
