/** A share as a length on a rule of one. */
export function ShareBar({ share }: { readonly share: number }) {
  return (
    <svg className="share-bar" viewBox="0 0 100 9" preserveAspectRatio="none" aria-hidden="true">
      <rect width={100 * share} height="6" />
      <path d="M0 0V9M50 6V9M100 0V9M0 6.4H100" />
    </svg>
  );
}
