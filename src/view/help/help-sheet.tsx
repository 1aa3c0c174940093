export default function HelpSheet() {
  return null;
}
