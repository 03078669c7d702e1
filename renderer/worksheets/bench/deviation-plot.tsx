import Box from '@mui/material/Box';
import { useTheme } from '@mui/material/styles';
import type { Tone } from '../../../core';
import { Plate } from '../../drawing/plate';

export interface Deviation {
  label: string;
  /** In standard deviations, against the plan and against the fitted machine. */
  planned: number;
  fitted?: number;
  tone: Tone;
  /** Said when hovered. */
  told: string;
}

const ROW = 20;
const HEAD = 22;
/** Farther off is drawn at the edge, with an arrow. */
const MOST = 6;
const LABEL = 180;
const WIDTH = 560;

const place = (deviations: number) => LABEL + ((Math.min(MOST, Math.max(-MOST, deviations)) + MOST) / (2 * MOST)) * (WIDTH - LABEL - 12);

/** Every reading's distance from where it should be, in its own standard deviations: filled against the plan, open against the fitted machine. */
export function DeviationPlot({ deviations }: { deviations: readonly Deviation[] }) {
  const { tones } = useTheme().palette;
  const height = HEAD + ROW * deviations.length + 8;
  const colors: Record<Tone, string> = { good: tones.good, warn: tones.warn, bad: tones.bad };
  return (
    <Plate
      title="Measured against predicted"
      note="In standard deviations of meter, speed and winding; the band holds 95 of 100 good readings. Filled: against the plan. Open: against the machine as fitted."
    >
      <Box sx={{ overflowX: 'auto' }}>
        <svg
          viewBox={`0 0 ${WIDTH} ${height}`}
          width="100%"
          style={{ maxWidth: 760, display: 'block' }}
          role="img"
          aria-label="Deviation of every reading"
        >
          <rect x={place(-2)} y={HEAD - 4} width={place(2) - place(-2)} height={height - HEAD} fill={tones.good} opacity={0.13} />
          {[-6, -4, -2, 0, 2, 4, 6].map((tick) => (
            <g key={tick}>
              <line
                x1={place(tick)}
                x2={place(tick)}
                y1={HEAD - 4}
                y2={height - 4}
                stroke={tick === 0 ? tones.edge : tones.rule}
                strokeWidth={tick === 0 ? 1.25 : 0.75}
              />
              <text x={place(tick)} y={13} fontSize={11} fill={tones.faint} textAnchor="middle">
                {tick === 0 ? 'plan' : tick > 0 ? `+${tick}` : `−${-tick}`}
              </text>
            </g>
          ))}
          {deviations.map(({ label, planned, fitted, tone, told }, i) => {
            const y = HEAD + ROW * (i + 0.5);
            return (
              <g key={`${label}${i}`}>
                <title>{told}</title>
                <rect x={0} y={y - ROW / 2} width={WIDTH} height={ROW} fill="transparent" />
                <text x={LABEL - 10} y={y + 4} fontSize={11.5} fill={tones.ink} textAnchor="end">
                  {label}
                </text>
                {Math.abs(planned) > MOST ? (
                  <path
                    d={planned > 0 ? 'm-9 -5 9 5 -9 5z' : 'm9 -5 -9 5 9 5z'}
                    transform={`translate(${place(planned)} ${y})`}
                    fill={colors[tone]}
                  />
                ) : (
                  <circle cx={place(planned)} cy={y} r={4} fill={colors[tone]} />
                )}
                {fitted !== undefined && Math.abs(fitted) <= MOST && (
                  <circle cx={place(fitted)} cy={y} r={4} fill="none" stroke={tones.ink} strokeWidth={1.25} />
                )}
              </g>
            );
          })}
        </svg>
      </Box>
    </Plate>
  );
}
