/**
 * Solves the dense linear system A x = b in place by Gaussian elimination with row scaling and partial pivoting. A is n x n, row by
 * row with the given stride. Returns false when a pivot vanishes (dependent rows). n is 5 to 20 here, so nothing cleverer pays.
 */
export function solveLinear(A: Float64Array, b: Float64Array, n: number, stride: number): boolean {
  for (let i = 0; i < n; i++) {
    let largest = 0;
    for (let j = 0; j < n; j++) largest = Math.max(largest, Math.abs(A[i * stride + j]));
    if (!(largest > 0)) return false;
    const scale = 1 / largest;
    for (let j = 0; j < n; j++) A[i * stride + j] *= scale;
    b[i] *= scale;
  }
  for (let k = 0; k < n; k++) {
    let pivot = k;
    let best = Math.abs(A[k * stride + k]);
    for (let i = k + 1; i < n; i++) {
      const size = Math.abs(A[i * stride + k]);
      if (size > best) {
        best = size;
        pivot = i;
      }
    }
    if (!(best > 1e-14)) return false;
    if (pivot !== k) {
      for (let j = k; j < n; j++) {
        const held = A[k * stride + j];
        A[k * stride + j] = A[pivot * stride + j];
        A[pivot * stride + j] = held;
      }
      const held = b[k];
      b[k] = b[pivot];
      b[pivot] = held;
    }
    const inverse = 1 / A[k * stride + k];
    for (let i = k + 1; i < n; i++) {
      const factor = A[i * stride + k] * inverse;
      if (factor === 0) continue;
      for (let j = k + 1; j < n; j++) A[i * stride + j] -= factor * A[k * stride + j];
      b[i] -= factor * b[k];
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i];
    for (let j = i + 1; j < n; j++) sum -= A[i * stride + j] * b[j];
    b[i] = sum / A[i * stride + i];
  }
  return true;
}
