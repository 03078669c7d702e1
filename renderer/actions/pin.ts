import { designStore } from '../state/design';
import { resultsStore } from '../state/results';
import { pin as pinDesign } from '../state/variants';
import { setView } from '../state/view';
import type { Action } from './action';

export const pin: Action = {
  id: 'pin',
  label: () => 'Pin this design as a variant',
  shortcut: 'Alt+P',
  group: 'View',
  enabled: () => resultsStore.getState().results !== null,
  async perform() {
    const { design, history } = designStore.getState();
    const name = history.past.at(-1)?.name ?? design.title;
    const [problem] = await pinDesign(name, design);
    if (problem)
      setView({ message: { severity: 'error', text: `This design cannot be worked out, and so not be pinned: ${problem.message}` } });
  },
};
