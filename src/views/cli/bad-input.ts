/** Something that the command was given and cannot work with, in words for a person. */
export interface Complaint {
  /** The file it is about, or null where it is about the command line itself. */
  readonly file: string | null;
  /** Where in the file: a path into the document, a line and column, or empty for the file as a whole. */
  readonly at: string;
  readonly says: string;
}

/** Thrown by a verb before it has written anything; every complaint goes to standard error and the exit code is 2. */
export class BadInput extends Error {
  readonly complaints: readonly Complaint[];
  constructor(complaints: readonly Complaint[]) {
    super(complaints.map(complaintLine).join('\n'));
    this.name = 'BadInput';
    this.complaints = complaints;
  }
}

/** One line: file, place, what is wrong. */
export const complaintLine = ({ file, at, says }: Complaint): string =>
  [file, at === '' ? null : at, says].filter((part) => part !== null).join(': ');

export const badInput = (says: string, file: string | null = null, at = ''): BadInput =>
  new BadInput([{ file, at, says }]);
