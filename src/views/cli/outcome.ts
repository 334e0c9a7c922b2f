/** What a verb has to say when it is done; it has written its files by then. */
export interface Outcome {
  /** Lines for people. */
  readonly lines: readonly string[];
  /** The same for programs: one JSON document. */
  readonly json: unknown;
  /** 0 done, 1 done and at least one stop finding stands, 2 bad input. */
  readonly exitCode: 0 | 1 | 2;
}
