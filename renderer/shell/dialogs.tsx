import Button from '@mui/material/Button';
import Dialog from '@mui/material/Dialog';
import DialogActions from '@mui/material/DialogActions';
import DialogContent from '@mui/material/DialogContent';
import DialogTitle from '@mui/material/DialogTitle';
import List from '@mui/material/List';
import ListItem from '@mui/material/ListItem';
import ListItemButton from '@mui/material/ListItemButton';
import { useEffect, useMemo, useState, type ReactNode } from 'react';
import { parseDesign, workingOf } from '../../core';
import { openText } from '../actions/open-text';
import { unlessUnsaved } from '../actions/unless-unsaved';
import { desktop } from '../desktop';
import { CautionList, type ToHeed } from '../parts/caution-list';
import { WorkingDialog } from '../parts/working-dialog';
import { recoverDesign, useDesign } from '../state/design';
import { useResults } from '../state/results';
import { setView, useView } from '../state/view';
import { goToEntry } from '../worksheets/go-to-entry';
import { Comparison } from './comparison';
import { demos } from './demos';
import { RecentDesigns } from './recent';
import { Start } from './start';

const close = () => setView({ dialog: null });

/** Whichever dialog is open, one at a time, and the working of a result. */
export function Dialogs() {
  const dialog = useView((s) => s.dialog);
  return (
    <>
      {dialog?.kind === 'discard' && <Discard go={dialog.go} />}
      {dialog?.kind === 'start' && <Start />}
      {dialog?.kind === 'demos' && <Demos />}
      {dialog?.kind === 'recent' && (
        <Frame title="Recent designs" actions={<Button onClick={close}>Cancel</Button>}>
          <RecentDesigns />
        </Frame>
      )}
      {dialog?.kind === 'to-heed' && <AllToHeed />}
      {dialog?.kind === 'comparison' && <Comparison />}
      {dialog?.kind === 'recovery' && <Recovery text={dialog.text} />}
      <OpenWorking />
    </>
  );
}

function OpenWorking() {
  const path = useView((s) => s.working);
  const results = useResults((s) => s.results);
  const design = useResults((s) => s.solvedFor);
  const working = useMemo(() => (path && design && results ? workingOf(path, design, results) : undefined), [path, design, results]);
  if (!working || !results) return null;
  const open = (next: string | null) => setView({ working: next });
  return <WorkingDialog working={working} results={results} onClose={() => open(null)} onGo={goToEntry} onOpen={open} />;
}

function Frame({
  title,
  actions,
  children,
  onClose = close,
}: {
  title: string;
  actions: ReactNode;
  children: ReactNode;
  onClose?: () => void;
}) {
  return (
    <Dialog open onClose={onClose} maxWidth="sm" fullWidth aria-labelledby="dialog-title">
      <DialogTitle id="dialog-title" sx={{ fontSize: 16, pb: 1 }}>
        {title}
      </DialogTitle>
      <DialogContent sx={{ fontSize: 13.5 }}>{children}</DialogContent>
      <DialogActions>{actions}</DialogActions>
    </Dialog>
  );
}

function Discard({ go }: { go: () => void }) {
  const title = useDesign((s) => s.design.title);
  return (
    <Frame
      title="Changes are not saved"
      actions={
        <>
          <Button
            color="error"
            onClick={() => {
              close();
              go();
            }}
          >
            Discard changes
          </Button>
          <Button onClick={close} autoFocus>
            Keep working
          </Button>
        </>
      }
    >
      The changes to “{title}” have not been saved and would be lost.
    </Frame>
  );
}

function Demos() {
  return (
    <Frame title="New from a demo" actions={<Button onClick={close}>Cancel</Button>}>
      <List dense disablePadding>
        {demos.map((demo) => (
          <Demo key={demo.id} demo={demo} />
        ))}
      </List>
    </Frame>
  );
}

function Demo({ demo }: { demo: (typeof demos)[number] }) {
  const [about, setAbout] = useState('');
  const [title, setTitle] = useState(demo.title);
  useEffect(() => {
    void demo.read().then((text) => {
      const parsed = parseDesign(text);
      if (!parsed.ok) return;
      setTitle(parsed.design.title);
      setAbout(parsed.design.notes ?? '');
    });
  }, [demo]);
  const start = () => {
    close();
    unlessUnsaved(() => void demo.read().then((text) => openText(text, { name: demo.title })));
  };
  return (
    <ListItem disablePadding>
      <ListItemButton onClick={start} sx={{ display: 'block', px: 1 }}>
        <div style={{ fontWeight: 500 }}>{title}</div>
        <div style={{ fontSize: 12.5, opacity: 0.8 }}>{about.split('\n')[0]}</div>
      </ListItemButton>
    </ListItem>
  );
}

/** Everything that is wrong or dangerous, in one place. */
function AllToHeed() {
  const faults = useDesign((s) => s.faults);
  const problems = useResults((s) => s.problems);
  const cautions = useResults((s) => s.results?.cautions);
  const all: ToHeed[] = [
    ...Object.entries(faults).map(([where, message]) => ({ severity: 'error' as const, where, message })),
    ...problems.map((problem) => ({ severity: 'error' as const, ...problem })),
    ...(cautions ?? []),
  ];
  return (
    <Frame title="Errors and cautions" actions={<Button onClick={close}>Close</Button>}>
      {all.length === 0 ? 'There is nothing this design must be warned of.' : <CautionList cautions={all} onGo={goToEntry} />}
    </Frame>
  );
}

function Recovery({ text }: { text: string }) {
  const parsed = parseDesign(text);
  const discard = () => {
    close();
    void desktop.writeRecovery(null).catch(() => undefined);
  };
  return (
    <Frame
      title="Unsaved work from last time"
      onClose={() => undefined}
      actions={
        <>
          <Button color="error" onClick={discard}>
            Discard it
          </Button>
          <Button
            autoFocus
            onClick={() => {
              close();
              if (parsed.design) recoverDesign(parsed.design);
            }}
          >
            Take it up again
          </Button>
        </>
      }
    >
      “{parsed.design?.title}” had not been saved when the program last stopped.
    </Frame>
  );
}
