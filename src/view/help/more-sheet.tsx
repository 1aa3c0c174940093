export default function MoreSheet() {
  return null;
}
