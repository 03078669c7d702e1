import type { Design, Reel } from '../../../core';
import { Bars, type Bar } from '../../drawing/bars';
import { useUnits } from '../../parts/unit-preferences';
import { format } from '../../units';
import type { FigureProps } from '../worksheet';

/** What is left on each reel against what the machine takes as it is designed now. */
export function Figure({ design, results }: FigureProps) {
  const units = useUnits();
  const reels = design.shelf ?? [];
  if (reels.length === 0) return null;
  const need = results.coils.wireMass;
  const full = 1.05 * Math.max(need, ...reels.map((r) => r.mass));
  const bars = reels.map(({ label, metal, mass, conductorDiameter }): Bar => {
    const [word, tone] = standing(design, { metal, conductorDiameter }, mass >= need);
    return {
      label: `${label || 'Reel'}: ${metal}, ${format(conductorDiameter, 'wireDiameter', units)}`,
      length: mass / full,
      mark: need / full,
      value: `${format(mass, 'mass', units, 3)} left`,
      word,
      tone,
    };
  });
  return (
    <Bars
      title="Wire left on the reels"
      bars={bars}
      note={`The upright mark is what this machine takes as it stands: ${format(need, 'mass', units, 3)}.`}
    />
  );
}

/** Only wire of the design's own kind can be weighed against what it takes. */
function standing(
  { winding: { wire } }: Design,
  reel: Pick<Reel, 'metal' | 'conductorDiameter'>,
  enough: boolean,
): [Bar['word'], Bar['tone']] {
  if (reel.metal !== wire.metal) return ['other metal', 'faint'];
  if (Math.abs(reel.conductorDiameter - wire.conductorDiameter) > 1e-6) return ['other size', 'faint'];
  return enough ? ['enough', 'good'] : ['too little', 'warn'];
}
