import notes from '../../assets/catalog/sources.json' with { type: 'json' };

/** What stands behind a source tag, in words for the public. */
export interface SourceNote {
  readonly tag: string;
  readonly about: string;
}

/** Every source tag that the standard catalog uses. */
export const SOURCE_NOTES: readonly SourceNote[] = notes;

/** The tags of a record's source, in its order: `slide guides; unverified` gives two. */
export const sourceTags = (source: string): readonly string[] => source.split(';').map((tag) => tag.trim());
