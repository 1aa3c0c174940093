export default function WordsScreen(_: { readonly beside: boolean }) {
  return null;
}
