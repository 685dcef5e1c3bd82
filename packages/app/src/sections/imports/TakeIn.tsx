export function TakeIn() {
  return <h1>…</h1>;
}
