export default function JobsScreen() {
  return null;
}
