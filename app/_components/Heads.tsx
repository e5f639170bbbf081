type Head = string | { readonly figures: string };

/** The head of a column of figures, which stand to the right. */
export const figures = (name: string): Head => ({ figures: name });

/** The head of a table: the words of each column, once each. */
export const Heads = ({ of }: { readonly of: readonly Head[] }) => (
  <thead>
    <tr>
      {of.map((head) =>
        typeof head === "string" ? (
          <th key={head} scope="col">
            {head}
          </th>
        ) : (
          <th key={head.figures} scope="col" className="num">
            {head.figures}
          </th>
        ),
      )}
    </tr>
  </thead>
);
