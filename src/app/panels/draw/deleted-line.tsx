/** Says what was deleted, with a key that puts it back. */
export function DeletedLine({ name, putBack }: { readonly name: string; putBack(): void }) {
  return (
    <p role="status">
      “{name}” was deleted.{' '}
      <button type="button" className="key" onClick={putBack}>
        Put it back
      </button>
    </p>
  );
}
