// In place and flat: these run at every step of a fit. Both answer false, or leave the list as it is, where nothing can be done.

/** Turns the lower triangle of a symmetric matrix, row by row in one list, into L with L Lᵀ = matrix; false if it has none. */
export function choleskyFlat(matrix: Float64Array, size: number): boolean {
  for (let row = 0; row < size; row += 1) {
    const start = row * size;
    for (let column = 0; column <= row; column += 1) {
      const other = column * size;
      let sum = matrix[start + column] ?? 0;
      for (let k = 0; k < column; k += 1) sum -= (matrix[start + k] ?? 0) * (matrix[other + k] ?? 0);
      if (column < row) matrix[start + column] = sum / (matrix[other + column] ?? 1);
      else if (sum > 0) matrix[start + row] = Math.sqrt(sum);
      else return false;
    }
  }
  return true;
}

/** Solves L Lᵀ x = right side, where the right side stands in `vector`; so does the answer. */
export function solveFlat(triangle: Float64Array, size: number, vector: Float64Array): void {
  for (let row = 0; row < size; row += 1) {
    let sum = vector[row] ?? 0;
    for (let k = 0; k < row; k += 1) sum -= (triangle[row * size + k] ?? 0) * (vector[k] ?? 0);
    vector[row] = sum / (triangle[row * size + row] ?? 1);
  }
  for (let row = size - 1; row >= 0; row -= 1) {
    let sum = vector[row] ?? 0;
    for (let k = row + 1; k < size; k += 1) sum -= (triangle[k * size + row] ?? 0) * (vector[k] ?? 0);
    vector[row] = sum / (triangle[row * size + row] ?? 1);
  }
}

/** The inverse of the matrix whose triangle this is, whole and symmetric. */
export function inverseFlat(triangle: Float64Array, size: number): Float64Array {
  const inverse = new Float64Array(size * size);
  const unit = new Float64Array(size);
  for (let column = 0; column < size; column += 1) {
    unit.fill(0);
    unit[column] = 1;
    solveFlat(triangle, size, unit);
    for (let row = 0; row < size; row += 1) inverse[row * size + column] = unit[row] ?? 0;
  }
  // Rounding leaves the two halves a digit apart.
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < row; column += 1) {
      const mean = ((inverse[row * size + column] ?? 0) + (inverse[column * size + row] ?? 0)) / 2;
      inverse[row * size + column] = mean;
      inverse[column * size + row] = mean;
    }
  }
  return inverse;
}
