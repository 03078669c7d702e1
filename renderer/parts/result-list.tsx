import { memo } from 'react';
import { wordInstead, type Results } from '../../core';
import { valueAt } from '../path';
import { formatDifference, shown } from '../units';
import { quantityAt } from '../words';
import { SymbolInText } from './mathematics';
import './rows.css';
import { useUnits } from './unit-preferences';

interface Props {
  paths: string[];
  results: Results;
  /** Results to tell by how much each moved. */
  baseline: Results | null;
  onOpen: (path: string) => void;
}

/** Results with label, value and unit; each opens its working. */
export function ResultList({ paths, results, baseline, onOpen }: Props) {
  const units = useUnits();
  const rows = paths.flatMap((path) => {
    const value = valueAt(results, path) as number | null | undefined;
    if (value === undefined) return [];
    const { unit: kind } = quantityAt(path);
    const moved = movement(value, baseline && (valueAt(baseline, path) as number | null));
    const difference = moved === null ? '' : formatDifference(moved, kind, units);
    const word = wordInstead(path, results);
    return [{ path, difference: word ? '' : difference, ...(word ? { text: word, unit: '' } : shown(value, kind, units)) }];
  });
  return (
    <ul className="result-list">
      {rows.map((row) => (
        <Row key={row.path} {...row} onOpen={onOpen} />
      ))}
    </ul>
  );
}

interface RowProps {
  path: string;
  text: string;
  unit: string;
  difference: string;
  onOpen: (path: string) => void;
}

const Row = memo(function Row({ path, text, unit, difference, onOpen }: RowProps) {
  const { label, symbol, meaning } = quantityAt(path);
  return (
    <li>
      <button
        type="button"
        className="row-button"
        data-meaning={meaning}
        onClick={() => onOpen(path)}
        title={`${meaning}. Opens the working.`}
      >
        <span>
          {label}
          {symbol && (
            <span className="symbol" aria-hidden>
              <SymbolInText of={symbol} />
            </span>
          )}
        </span>
        <span className="moved">{difference}</span>
        <span className="value">
          {text}
          <span className="unit">{unit}</span>
        </span>
      </button>
    </li>
  );
});

/** By how much a result moved, or null when it did not move by a visible amount. */
export function movement(now: number | null, before: number | null): number | null {
  if (typeof now !== 'number' || typeof before !== 'number') return null;
  const difference = now - before;
  return Math.abs(difference) > 1e-4 * Math.max(Math.abs(now), Math.abs(before)) ? difference : null;
}
