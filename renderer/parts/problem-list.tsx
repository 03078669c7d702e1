import Alert from '@mui/material/Alert';
import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import type { Problem } from '../../core';
import { told } from '../units';
import { quantityAt } from '../words';
import { useUnits } from './unit-preferences';

interface Props {
  title: string;
  problems: Problem[];
  onGo: (where: string) => void;
}

/** Why the design cannot be worked out, entry by entry. */
export function ProblemList({ title, problems, onGo }: Props) {
  const units = useUnits();
  if (problems.length === 0) return null;
  return (
    <Alert severity="error" variant="outlined" role="status" sx={{ mb: 2, py: 0.25, fontSize: 13 }}>
      {title}
      <Box component="ul" sx={{ m: 0, pl: 2 }}>
        {problems.map((problem) => (
          <li key={`${problem.where} ${told(problem, units)}`}>
            {problem.where && (
              <Button size="small" color="inherit" onClick={() => onGo(problem.where)} sx={{ py: 0, px: 0.5, textDecoration: 'underline' }}>
                {quantityAt(problem.where).label}
              </Button>
            )}{' '}
            {told(problem, units)}
          </li>
        ))}
      </Box>
    </Alert>
  );
}
