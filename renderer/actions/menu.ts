import { desktop, onMenu } from '../desktop';
import { designStore } from '../state/design';
import { resultsStore } from '../state/results';
import { viewStore } from '../state/view';
import { attempt } from './attempt';
import { openWaiting } from './open';
import { actions } from './registry';

/** Gives the host the menu and keeps it up to date; a chosen entry is performed like any other action. */
export function startMenu(): void {
  let sent = '';
  let due = false;
  const send = () => {
    due = false;
    const entries = actions.map(({ id, label, shortcut, group, enabled }) => ({
      id,
      label: label().slice(0, 200),
      ...(shortcut && { shortcut }),
      group,
      enabled: enabled(),
    }));
    const text = JSON.stringify(entries);
    if (text === sent) return;
    sent = text;
    void desktop.setMenu(entries).catch(() => undefined);
  };
  // Typing changes the labels with every key; the menu can wait a moment.
  const schedule = () => {
    if (due) return;
    due = true;
    setTimeout(send, 200);
  };
  designStore.subscribe(schedule);
  resultsStore.subscribe(schedule);
  viewStore.subscribe(schedule);
  send();
  onMenu((id) => {
    if (id === 'design-waiting') void openWaiting().catch(() => undefined);
    const action = actions.find((a) => a.id === id);
    if (action) void attempt(action);
  });
}
