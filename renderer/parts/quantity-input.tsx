import InputBase from '@mui/material/InputBase';
import { boxStyle } from './box-style';
import { fieldId, FieldRow } from './field-row';
import { useQuantityText, type QuantityTextOptions } from './quantity-text';

interface Props extends QuantityTextOptions {
  path: string;
  /** A complaint about the value together with others. */
  problem?: string;
}

/** A number with its unit, its label and what is wrong with it. */
export function QuantityInput({ path, problem, ...options }: Props) {
  const { text, error: own, unit, span, take, press, leave, scrub } = useQuantityText(options);
  const { label, symbol, meaning } = options.quantity;
  const error = own ?? problem ?? null;
  const id = fieldId(path);
  return (
    <FieldRow id={id} label={label} symbol={symbol} meaning={`${meaning}. From ${span}.`} error={error} scrub={scrub}>
      <InputBase
        id={id}
        value={text}
        error={error !== null}
        onChange={(event) => take(event.target.value)}
        onKeyDown={press}
        onBlur={leave}
        slotProps={{ input: { autoComplete: 'off', spellCheck: false, 'aria-errormessage': error ? `${id}-error` : undefined } }}
        endAdornment={<span className="unit">{unit}</span>}
        sx={boxStyle}
      />
    </FieldRow>
  );
}
