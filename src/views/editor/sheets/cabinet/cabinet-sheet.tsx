/** The sheet of the third step. */
export const CabinetSheet = () => <div />;
