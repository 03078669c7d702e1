import Alert from '@mui/material/Alert';
import Snackbar from '@mui/material/Snackbar';
import { setView, useView } from '../state/view';

const close = () => setView({ message: null });

/** What came of the last action; a failure stays until it is read. */
export function MessageBar() {
  const message = useView((s) => s.message);
  if (!message) return null;
  return (
    <Snackbar
      open
      autoHideDuration={message.severity === 'success' ? 4000 : null}
      onClose={(_event, reason) => {
        if (reason === 'timeout' || message.severity === 'success') close();
      }}
    >
      <Alert severity={message.severity} variant="outlined" onClose={close} sx={{ bgcolor: 'background.paper', maxWidth: 640 }}>
        {message.text}
        {message.lines && (
          <ul style={{ margin: 0, paddingLeft: 18 }}>
            {message.lines.slice(0, 8).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        )}
      </Alert>
    </Snackbar>
  );
}
