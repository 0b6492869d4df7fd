/** C(n, k), as a number; 0 outside the triangle. */
export function choose(n: number, k: number): number {
  if (k < 0 || k > n) return 0;
  let value = 1;
  for (let i = 1; i <= Math.min(k, n - k); i++) value = (value * (n - i + 1)) / i;
  return Math.round(value);
}
