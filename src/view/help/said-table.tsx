/** Rows of a word or a deed, and what it means or how it is done. */
export function SaidTable({ rows }: { readonly rows: readonly (readonly [string, string])[] }) {
  return (
    <table className="key-table">
      <tbody>
        {rows.map(([what, says]) => (
          <tr key={what}>
            <th scope="row">{what}</th>
            <td>{says}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
