/**
 * The lower triangle L with L Lᵀ = matrix, row by row. A direction without spread gives a column of zeros, so that a
 * parameter taken as certain stays so.
 */
export function cholesky(matrix: readonly (readonly number[])[]): readonly Float64Array[] {
  const rows = matrix.map((row) => Float64Array.from(row));
  for (let column = 0; column < rows.length; column += 1) {
    const head = rows[column] ?? new Float64Array();
    let left = head[column] ?? 0;
    const before = left;
    for (let k = 0; k < column; k += 1) left -= (head[k] ?? 0) ** 2;
    // What rounding leaves of an exact zero is a zero.
    const diagonal = left > 1e-14 * Math.abs(before) ? Math.sqrt(left) : 0;
    for (let row = 0; row < rows.length; row += 1) {
      const line = rows[row] ?? head;
      if (row < column) line[column] = 0;
      else if (row === column) line[column] = diagonal;
      else {
        let sum = line[column] ?? 0;
        for (let k = 0; k < column; k += 1) sum -= (line[k] ?? 0) * (head[k] ?? 0);
        line[column] = diagonal === 0 ? 0 : sum / diagonal;
      }
    }
  }
  return rows;
}
