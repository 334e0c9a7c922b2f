/** Who, and on which day; letters that run the other way keep to themselves. */
export const By = ({ who, on }: { readonly who: string; readonly on: string }) => (
  <>
    <bdi>{who}</bdi>
    {on === '' ? null : (
      <>
        , <bdi>{on}</bdi>
      </>
    )}
  </>
);
