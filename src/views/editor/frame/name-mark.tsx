/** The name mark: a cabinet under a lifted hatch. */
export const NameMark = () => (
  <svg width="26" height="26" viewBox="0 0 26 26" fill="none" aria-hidden="true">
    <path
      d="M3 9.2 14.6 3.4l8.4 2.8"
      stroke="currentColor"
      strokeWidth="1.9"
      strokeLinecap="round"
      strokeLinejoin="round"
    />
    <path d="M5.5 11.5h15v11h-15z" stroke="currentColor" strokeWidth="1.9" strokeLinejoin="round" />
    <path d="M5.5 17h8.2M13.7 11.5v11" stroke="currentColor" strokeWidth="1.6" />
    <path d="M8.2 19.8h2.8" stroke="var(--petrol)" strokeWidth="1.9" strokeLinecap="round" />
  </svg>
);
