import { designJsonSchema } from '../../src/design/index.ts';

const BLOCK = /```json\n[\s\S]*?\n```/;

/** The page with the schema of the code put into its code block. */
export const withSchema = (page: string): string => {
  const block = ['```json', JSON.stringify(designJsonSchema(), null, 1), '```'].join('\n');
  return page.replace(BLOCK, () => block);
};
