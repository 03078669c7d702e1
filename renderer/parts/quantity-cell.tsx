import InputBase from '@mui/material/InputBase';
import Tooltip from '@mui/material/Tooltip';
import { boxStyle } from './box-style';
import { useQuantityText, type QuantityTextOptions } from './quantity-text';

interface Props extends QuantityTextOptions {
  /** What the cell is, for a reader who does not see the table. */
  name: string;
}

/** A number in a table's cell; the unit stands in the column's head. */
export function QuantityCell({ name, ...options }: Props) {
  const { text, error, span, take, press, leave } = useQuantityText(options);
  return (
    <Tooltip title={error ?? ''} describeChild open={error !== null} placement="bottom-start">
      <InputBase
        data-meaning={`${options.quantity.meaning}. From ${span}.`}
        value={text}
        error={error !== null}
        onChange={(event) => take(event.target.value)}
        onKeyDown={press}
        onBlur={leave}
        slotProps={{ input: { 'aria-label': name, autoComplete: 'off', spellCheck: false } }}
        sx={[boxStyle as object, { minWidth: 56 }]}
      />
    </Tooltip>
  );
}
