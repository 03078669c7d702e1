import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableRow from '@mui/material/TableRow';
import { useState } from 'react';
import type { Design, InverseAnswer, Results, UnitKind } from '../../../core';
import { QuantityCell } from '../../parts/quantity-cell';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { editEntries, setFault, useDesign } from '../../state/design';
import { entryUnit, format, type UnitPreferences } from '../../units';
import type { FigureProps } from '../worksheet';
import { answerTo } from './threads';

interface QuestionKind {
  kind: 'turnsForCutIn' | 'thinnestWire' | 'widestClearance';
  asks: string;
  unit: UnitKind;
  range: { min: number; max: number };
  /** What is wished for before anything is entered. */
  first: (results: Results) => number;
  /** What an answer says, and what using it changes. */
  says: (design: Design, results: Results, units: UnitPreferences) => string;
  changes: (design: Design) => Record<string, unknown>;
}

const fits = ({ coils }: Results) => (coils.fits ? 'it goes in' : 'but it does not go into the leg');

const questions: readonly QuestionKind[] = [
  {
    kind: 'turnsForCutIn',
    asks: 'How many turns, to cut in at a wind of',
    unit: 'windSpeed',
    range: { min: 0.5, max: 30 },
    first: ({ cutIn }) => Number((cutIn.wind ?? 3).toFixed(1)),
    says: ({ winding }, results, units) =>
      `${winding.turns} turns: cuts in at ${format(results.cutIn.wind, 'windSpeed', units, 3)}; ${fits(results)}.`,
    changes: ({ winding }) => ({ 'winding.turns': winding.turns }),
  },
  {
    kind: 'thinnestWire',
    asks: 'How thin a wire, for coils at rated wind no hotter than',
    unit: 'temperature',
    range: { min: -40, max: 250 },
    first: ({ rated }) => rated.limitTemperature,
    says: ({ winding }, results, units) =>
      `${format(winding.wire.conductorDiameter, 'wireDiameter', units, 3)}: the coils settle at ${format(results.rated.coilTemperature, 'temperature', units)}; ${fits(results)}.`,
    changes: ({ winding }) => ({ 'winding.wire': winding.wire }),
  },
  {
    kind: 'widestClearance',
    asks: 'How wide a clearance each side, for volts at 1000 rpm of',
    unit: 'voltage',
    range: { min: 0.1, max: 5000 },
    first: ({ emf }) => Number(emf.lineRmsPer1000rpm.toPrecision(3)),
    says: ({ discs }, results, units) =>
      `${format(discs.runningClearance, 'length', units, 3)}: gives ${format(results.emf.lineRmsPer1000rpm, 'voltage', units, 3)}.`,
    changes: ({ discs }) => ({ 'discs.runningClearance': discs.runningClearance }),
  },
];

/** Questions asked the other way round: what gives a wished-for result. */
export function InversePanel({ results }: Pick<FigureProps, 'results'>) {
  return (
    <Section title="Asked the other way round">
      <Table size="small">
        <TableBody>
          {questions.map((question) => (
            <QuestionRow key={question.kind} question={question} results={results} />
          ))}
        </TableBody>
      </Table>
    </Section>
  );
}

function QuestionRow({ question, results }: { question: QuestionKind; results: Results }) {
  const { kind, asks, unit, range, first, says, changes } = question;
  const units = useUnits();
  const design = useDesign((s) => s.design);
  const fault = useDesign((s) => s.faults[`asked.${kind}`]);
  const [wish, setWish] = useState<number>();
  const [asking, setAsking] = useState(false);
  const [answer, setAnswer] = useState<{ of: Design; wished: number; got: InverseAnswer<unknown> } | null>(null);
  const wished = wish ?? first(results);
  const ask = async () => {
    setAsking(true);
    const of = design;
    const got = await answerTo({ kind, of: { design, wished } }).catch((error: Error) => ({ ok: false as const, message: error.message }));
    setAnswer({ of, wished, got });
    setAsking(false);
  };
  const got = answer?.of === design && answer.wished === wished ? answer.got : null;
  const sentence = got && (got.ok ? says(got.design, got.results, units) : got.message);
  return (
    <TableRow>
      <TableCell sx={{ width: '34%' }}>{asks}</TableCell>
      <TableCell sx={{ width: 150 }}>
        <Box sx={{ display: 'grid', gridTemplateColumns: 'minmax(0, 1fr) 28px', alignItems: 'center', gap: 0.75 }}>
          <QuantityCell
            name={`${asks}, wished`}
            quantity={{ label: asks, unit, meaning: asks }}
            range={range}
            value={wished}
            onChange={setWish}
            fault={fault}
            onFault={(message) => setFault(`asked.${kind}`, message)}
            onSettle={() => undefined}
          />
          <Box component="span" sx={{ color: 'text.secondary', fontSize: 12 }}>
            {entryUnit(unit, units)}
          </Box>
        </Box>
      </TableCell>
      <TableCell sx={{ width: 64 }}>
        <Button
          variant="outlined"
          size="small"
          disabled={asking || fault !== undefined}
          onClick={() => void ask()}
          aria-label={`Ask: ${asks}`}
        >
          Ask
        </Button>
      </TableCell>
      <TableCell sx={{ color: got && !got.ok ? 'warning.main' : undefined }}>
        <span role="status">{asking ? 'Working it out…' : sentence}</span>
        {got?.ok && (
          <Button size="small" sx={{ ml: 1, py: 0 }} onClick={() => editEntries(changes(got.design), sentence ?? '')}>
            Use
          </Button>
        )}
      </TableCell>
    </TableRow>
  );
}
