/** One site. */
export function SitePage() {
  return null;
}
