/** What is seen, as a text file and as a workbook: `href` without its ending. */
export const SaveFiles = ({ href }: { readonly href: string }) => (
  <>
    <a className="press second" href={`${href}.csv`} download>
      Save for the office
    </a>
    <a className="press second" href={`${href}.xlsx`} download>
      As a workbook
    </a>
  </>
);
