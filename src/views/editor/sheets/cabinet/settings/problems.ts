import { type Design, designNodes, openingsFrom } from '../../../../../design/index.ts';
import type { FitOut } from '../../../../../fitout/index.ts';
import { KIND_WORDS } from '../../../fittings/kind-words.ts';
import type { Chosen } from '../chosen.ts';

type FitProblem = FitOut['problems'][number];

/** What is wrong at what is selected: at the opening and inside it, at the carcass and all it holds, or at the gear. */
export const problemsOf = (
  design: Design,
  fitOut: FitOut,
  { carcass, opening, gear }: Chosen,
): readonly FitProblem[] => {
  if (fitOut.problems.length === 0) return [];
  if (gear) return fitOut.problems.filter((problem) => problem.at === gear.id);
  const from = opening ?? carcass?.opening;
  if (!from) return [];
  const about = new Set<string>(openingsFrom(from).map((inside) => inside.id));
  for (const item of design.gear) if (item.place && about.has(item.place.opening)) about.add(item.id);
  if (!opening && carcass) {
    about.add(carcass.id);
    for (const { id, from: one, to } of design.cabinet.braces)
      if (one.carcass === carcass.id || to.carcass === carcass.id) about.add(id);
  }
  return fitOut.problems.filter((problem) => about.has(problem.at));
};

/** What a node is called in a sentence: its own name, or what it is. */
export const nodeNames = (design: Design): ((id: string) => string) => {
  const names = new Map<string, string>(designNodes(design).map((node) => [node.id, node.name || 'this opening']));
  for (const carcass of design.cabinet.carcasses)
    for (const opening of openingsFrom(carcass.opening))
      if (opening.name === '')
        names.set(
          opening.id,
          opening.content.kind === 'fitted' ? `the ${KIND_WORDS[opening.content.fitting.kind].name}` : 'this opening',
        );
  return (id) => names.get(id) ?? id;
};
