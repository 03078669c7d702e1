import { parseDesign } from '../../core';
import { desktop } from '../desktop';
import { pin } from '../state/variants';
import { setView } from '../state/view';
import { always, type Action } from './action';

export const compare: Action = {
  id: 'compare',
  label: () => 'Compare with another design…',
  shortcut: 'Alt+C',
  group: 'View',
  enabled: always,
  async perform() {
    const file = await desktop.openDesign();
    if (!file) return;
    const parsed = parseDesign(file.text);
    const problems = parsed.ok ? await pin(parsed.design.title || file.name, parsed.design) : parsed.problems;
    if (problems.length === 0) setView({ dialog: { kind: 'comparison' } });
    else
      setView({
        message: {
          severity: 'error',
          text: `${file.name} cannot be compared.`,
          lines: problems.map(({ where, message }) => `${where} ${message}`.trim()),
        },
      });
  },
};
