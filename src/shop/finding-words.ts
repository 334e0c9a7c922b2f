import type { Design } from '../design/index.ts';
import type { FitOut } from '../fitout/index.ts';
import type { Finding } from '../inspection/index.ts';

/** Until the room `says` has a sentence: the rule in words and the names of the parts it is about. */
export const findingWords = (
  finding: Finding,
  { design, fitout }: { readonly design: Design; readonly fitout: FitOut },
): string => {
  const names = new Map<string, string>([
    ...fitout.openings.map(({ id, name }) => [id, name] as const),
    ...fitout.carcasses.map(({ id, name }) => [id, name] as const),
    ...fitout.bodies.map(({ id, name }) => [id, name] as const),
    ...design.gear.map(({ id, name }) => [id, name] as const),
    ...design.survey.obstacles.map(({ id, name }) => [id, name] as const),
  ]);
  const parts = finding.parts.map((id) => names.get(id) || id);
  return `${finding.rule.replaceAll('-', ' ')}: ${parts.join(', ')}`;
};
