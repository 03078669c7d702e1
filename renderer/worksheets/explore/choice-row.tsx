import Box from '@mui/material/Box';
import { choiceWord } from '../../words';

interface Props {
  label: string;
  choices: readonly string[];
  chosen: readonly string[];
  onChange: (chosen: string[]) => void;
}

/** Some of a few words; the last one stays. */
export function ChoiceRow({ label, choices, chosen, onChange }: Props) {
  return (
    <Box component="fieldset" sx={{ border: 0, m: 0, p: 0, py: 0.75, fontSize: 13, display: 'flex', flexWrap: 'wrap', columnGap: 2 }}>
      <Box component="legend" sx={{ color: 'text.secondary', fontSize: 12, p: 0 }}>
        {label}
      </Box>
      {choices.map((choice) => {
        const isChosen = chosen.includes(choice);
        return (
          <Box key={choice} component="label" sx={{ display: 'flex', alignItems: 'center', gap: 0.75 }}>
            <input
              type="checkbox"
              checked={isChosen}
              disabled={isChosen && chosen.length === 1}
              onChange={() => onChange(choices.filter((each) => (each === choice ? !isChosen : chosen.includes(each))))}
            />
            {choiceWord(choice)}
          </Box>
        );
      })}
    </Box>
  );
}
