/**
 * Solves the dense linear system A x = b in place by Gaussian elimination with row scaling and partial pivoting. A is n x n, row by
 * row with the given stride. Returns false when a pivot vanishes (dependent rows). n is 5 to 20 here, so nothing cleverer pays.
 */
export function solveLinear(A: Float64Array, b: Float64Array, n: number, stride: number): boolean {
  for (let i = 0, row = 0; i < n; i++, row += stride) {
    let largest = 0;
    for (let j = row, end = row + n; j < end; j++) {
      const size = Math.abs(A[j]);
      if (size > largest) largest = size;
    }
    if (!(largest > 0)) return false;
    const scale = 1 / largest;
    for (let j = row, end = row + n; j < end; j++) A[j] *= scale;
    b[i] *= scale;
  }
  for (let k = 0, top = 0; k < n; k++, top += stride) {
    let pivot = k;
    let best = Math.abs(A[top + k]);
    for (let i = k + 1, at = top + stride + k; i < n; i++, at += stride) {
      const size = Math.abs(A[at]);
      if (size > best) {
        best = size;
        pivot = i;
      }
    }
    if (!(best > 1e-14)) return false;
    if (pivot !== k) {
      const other = pivot * stride;
      for (let j = k; j < n; j++) {
        const held = A[top + j];
        A[top + j] = A[other + j];
        A[other + j] = held;
      }
      const held = b[k];
      b[k] = b[pivot];
      b[pivot] = held;
    }
    const inverse = 1 / A[top + k];
    for (let i = k + 1, row = top + stride; i < n; i++, row += stride) {
      const factor = A[row + k] * inverse;
      if (factor === 0) continue;
      for (let j = k + 1; j < n; j++) A[row + j] -= factor * A[top + j];
      b[i] -= factor * b[k];
    }
  }
  for (let i = n - 1, row = i * stride; i >= 0; i--, row -= stride) {
    let sum = b[i];
    for (let j = i + 1; j < n; j++) sum -= A[row + j] * b[j];
    b[i] = sum / A[row + i];
  }
  return true;
}
