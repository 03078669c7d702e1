import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import { useState } from 'react';
import { limitsOf, type Design, type WhyNot } from '../../../core';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { useDesign } from '../../state/design';
import { format, told, type UnitPreferences } from '../../units';
import { nameOf, objectiveOf, weighedBy } from './machine-words';
import { openMachine } from './open-machine';
import { answerTo } from './threads';
import { useWork } from './work';

const BEATEN_SHOWN = 3;

/** Why the design on screen is not among the machines found: what it breaks, and what beats it. */
export function WhyNotPanel() {
  const design = useDesign((s) => s.design);
  const work = useWork((s) => s.search);
  const [answer, setAnswer] = useState<{ of: Design; why: WhyNot } | { of: Design; fault: string } | null>(null);
  const [asking, setAsking] = useState(false);
  const ask = async () => {
    setAsking(true);
    const of = design;
    setAnswer(
      await answerTo({ kind: 'whyNot', of: { design, limits: limitsOf(design), found: work?.found ?? [] } }).then(
        (why) => ({ of, why }),
        (error: Error) => ({ of, fault: error.message }),
      ),
    );
    setAsking(false);
  };
  return (
    <Section title="Why not this one?">
      <Box sx={{ display: 'flex', gap: 1.5, alignItems: 'center', py: 1, fontSize: 13, color: 'text.secondary' }}>
        <Button variant="outlined" disabled={asking} onClick={() => void ask()} sx={{ flexShrink: 0 }}>
          Ask about the design on screen
        </Button>
        <span>Wish for any design on the other pages, then ask here which limit it breaks and what beats it.</span>
      </Box>
      <div role="status" aria-label="Why not">
        {answer?.of === design &&
          ('why' in answer ? <Verdict why={answer.why} design={design} isSearched={work !== null} /> : answer.fault)}
      </div>
    </Section>
  );
}

function Verdict({ why, design, isSearched }: { why: WhyNot; design: Design; isSearched: boolean }) {
  const units = useUnits();
  const searched = useWork((s) => s.search?.design);
  const { faults, breaches, beatenBy } = why;
  const against = faults.length + breaches.length;
  return (
    <Box component="ul" sx={{ m: 0, pl: 2.5, fontSize: 13.5, '& li': { pb: 0.5 } }}>
      {faults.map((fault) => (
        <Box component="li" key={fault.message} sx={{ color: 'error.main' }}>
          {told(fault, units)}
        </Box>
      ))}
      {breaches.map(({ objective: { id }, value, limit }) => {
        const objective = objectiveOf(id, design);
        const shown = (v: number) => format(v, objective.unit, units, 3);
        return (
          <Box component="li" key={objective.id} sx={{ color: 'error.main' }}>
            {objective.label}: {Number.isFinite(value) ? shown(value) : 'never'}, where{' '}
            {objective.best === 'least' ? 'at most' : 'at least'} {shown(limit)} is asked for.
          </Box>
        );
      })}
      {beatenBy.slice(0, BEATEN_SHOWN).map((each) => (
        <li key={nameOf(each.candidate)}>
          Beaten by {nameOf(each.candidate)}: {gains(why, each.objectives, design, units)}.
          {searched && (
            <Button size="small" onClick={() => openMachine(searched, each.candidate)} sx={{ ml: 1, py: 0 }}>
              Open
            </Button>
          )}
        </li>
      ))}
      {beatenBy.length > BEATEN_SHOWN && <li>… and by {beatenBy.length - BEATEN_SHOWN} more.</li>}
      {against === 0 && beatenBy.length === 0 && (
        <li>
          {isSearched
            ? 'Nothing stands against it: no machine found beats it.'
            : 'It breaks no limit. Search first, to see whether another beats it.'}
        </li>
      )}
    </Box>
  );
}

/** Where the other is better, and by how much it stands there. */
function gains({ objectives: own }: WhyNot, other: WhyNot['objectives'], design: Design, units: UnitPreferences): string {
  return weighedBy(design)
    .filter(({ id, best }) => (best === 'least' ? other[id] < own[id] : other[id] > own[id]))
    .map((objective) => {
      const shown = (v: number) => format(v, objective.unit, units, 3);
      return `${objective.label.toLowerCase()} ${shown(other[objective.id])} instead of ${shown(own[objective.id])}`;
    })
    .join(', ');
}
