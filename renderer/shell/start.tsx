import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import Dialog from '@mui/material/Dialog';
import DialogActions from '@mui/material/DialogActions';
import DialogContent from '@mui/material/DialogContent';
import DialogTitle from '@mui/material/DialogTitle';
import LinearProgress from '@mui/material/LinearProgress';
import { useEffect, useRef, useState } from 'react';
import type { InHand, Problem } from '../../core';
import { unlessUnsaved } from '../actions/unless-unsaved';
import { ChoiceInput } from '../parts/choice-input';
import { QuantityInput } from '../parts/quantity-input';
import { Section } from '../parts/section';
import { useUnits } from '../parts/unit-preferences';
import { valueAt, withValueAt } from '../path';
import { loadDesign } from '../state/design';
import { workOutFirst } from '../state/first-design';
import { setView } from '../state/view';
import { told } from '../units';
import { firstAnswers, gaugesOf, magnetShapes, questionAt, questionsOf, WIRE_SIZE, type Question } from './start-entries';

const close = () => setView({ dialog: null });

/** What you have, and from it a first design that can be built: the way in for someone without one. */
export function Start() {
  const units = useUnits();
  const [inHand, setInHand] = useState(firstAnswers);
  const [faults, setFaults] = useState<Record<string, string | null>>({});
  const [problem, setProblem] = useState<Problem | null>(null);
  /** How far the calculation is; null when none is under way. */
  const [share, setShare] = useState<number | null>(null);
  const work = useRef<ReturnType<typeof workOutFirst>>(null);
  useEffect(() => () => work.current?.stop(), []);

  const answer = (path: string, value: unknown) => {
    setProblem(null);
    setInHand((now) => answered(now, path, value, units.wire));
  };
  const workOut = async () => {
    setProblem(null);
    setShare(0);
    work.current = workOutFirst(inHand, setShare);
    const found = await work.current.answer;
    setShare(null);
    if (!found.ok) return setProblem(found.problem);
    close();
    unlessUnsaved(() => {
      loadDesign(found.design, null);
      setView({ worksheet: 'magnets' });
    });
  };
  const stop = () => {
    work.current?.stop();
    setShare(null);
  };
  const groups = questionsOf(inHand.magnets.shape, units.wire);
  const about = problem && questionAt(problem.where);
  const isAsked = groups.some(({ questions }) => questions.some(({ path }) => path === about));
  const faulty = Object.values(faults).some((message) => message !== null);
  return (
    <Dialog open onClose={close} maxWidth="md" fullWidth aria-labelledby="start-title">
      <DialogTitle id="start-title" sx={{ fontSize: 16, pb: 0.5 }}>
        What have you got?
      </DialogTitle>
      <DialogContent>
        <Box sx={{ fontSize: 13.5, color: 'text.secondary', mb: 1.5 }}>
          A first machine is worked out that can be built of it. Everything about it can be changed afterwards.
        </Box>
        <Box
          component="form"
          aria-label="What is in hand"
          onSubmit={(event) => event.preventDefault()}
          sx={{ display: 'grid', gridTemplateColumns: 'repeat(auto-fit, minmax(min(320px, 100%), 1fr))', columnGap: 4 }}
        >
          {groups.map(({ title, questions }) => (
            <Section key={title} title={title}>
              {questions.map((question) => (
                <Asked
                  key={question.path}
                  question={question}
                  value={question.path === WIRE_SIZE ? gaugeOf(inHand, units.wire) : valueAt(inHand, question.path)}
                  fault={faults[question.path] ?? undefined}
                  problem={problem && about === question.path ? told(problem, units) : undefined}
                  onAnswer={(value) => answer(question.path, value)}
                  onFault={(message) => setFaults((now) => ({ ...now, [question.path]: message }))}
                />
              ))}
            </Section>
          ))}
        </Box>
        {share !== null && <LinearProgress variant="determinate" value={100 * share} aria-label="Frames tried" sx={{ mb: 0.5 }} />}
        <Box role="status" sx={{ minHeight: 20, fontSize: 13, color: problem ? 'error.main' : 'text.secondary' }}>
          {share !== null ? 'Trying numbers of magnets, thicknesses and turns…' : problem && !isAsked && told(problem, units)}
        </Box>
      </DialogContent>
      <DialogActions>
        <Button onClick={() => setView({ dialog: { kind: 'demos' } })}>Start from a demo…</Button>
        <Button onClick={close}>Start without</Button>
        {share !== null ? (
          <Button variant="outlined" onClick={stop}>
            Stop
          </Button>
        ) : (
          <Button variant="contained" disableElevation disabled={faulty} onClick={() => void workOut()}>
            Work out a first design
          </Button>
        )}
      </DialogActions>
    </Dialog>
  );
}

interface AskedProps {
  question: Question;
  value: unknown;
  fault?: string;
  problem?: string;
  onAnswer: (value: unknown) => void;
  onFault: (message: string | null) => void;
}

function Asked({ question, value, fault, problem, onAnswer, onFault }: AskedProps) {
  const { path, quantity, range, choices } = question;
  const id = `start.${path}`;
  const { label, meaning } = quantity;
  if (choices)
    return (
      <ChoiceInput
        path={id}
        label={label}
        meaning={meaning}
        value={String(value)}
        choices={choices}
        problem={problem}
        onChange={onAnswer}
      />
    );
  if (!range) return null;
  return (
    <QuantityInput
      path={id}
      quantity={quantity}
      range={range}
      value={value as number}
      fault={fault}
      problem={problem}
      onChange={onAnswer}
      onFault={onFault}
      onSettle={nothing}
    />
  );
}

const nothing = () => undefined;

/** What is in hand with one answer changed. */
function answered(inHand: InHand, path: string, value: unknown, sizes: 'metric' | 'awg'): InHand {
  if (path === 'magnets.shape.kind') return withValueAt(inHand, 'magnets.shape', magnetShapes[value as keyof typeof magnetShapes]);
  if (path === 'battery.inSeries') return withValueAt(inHand, path, Number(value));
  if (path !== WIRE_SIZE) return withValueAt(inHand, path, value);
  const gauge = gaugesOf(sizes).find(({ label }) => label === value);
  if (!gauge) return inHand;
  const { conductorDiameter, overallDiameter } = gauge;
  return { ...inHand, wire: { ...inHand.wire, conductorDiameter, overallDiameter } };
}

/** The row of the wire table nearest to the wire in hand. */
function gaugeOf({ wire }: InHand, sizes: 'metric' | 'awg'): string {
  const off = (diameter: number) => Math.abs(Math.log(diameter / wire.conductorDiameter));
  return gaugesOf(sizes).reduce((a, b) => (off(b.conductorDiameter) < off(a.conductorDiameter) ? b : a)).label;
}
