/** Why marks on a picture tell nothing definite, and what to do. */
export interface MarksFault {
  readonly of: 'scale' | 'line' | 'rectangle' | 'picture';
  readonly what: string;
  readonly cure: string;
}
