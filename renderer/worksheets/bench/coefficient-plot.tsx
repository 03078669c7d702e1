import { useTheme } from '@mui/material/styles';
import type { FieldTest } from '../../../core';
import { Plate } from '../../drawing/plate';
import { scaleFor } from '../../drawing/scale';

const WIDTH = 420;
const HEIGHT = 250;
const EDGE = { left: 40, right: 12, top: 12, bottom: 34 };
const colors = { possible: 'good', doubtful: 'warn', impossible: 'bad' } as const;

/** Power coefficient against tip-speed ratio: the plan's curve, the ceiling, and every test with the band its wind leaves. */
export function CoefficientPlot({ tests, curve }: { tests: readonly FieldTest[]; curve: { ratio: number[]; coefficient: number[] } }) {
  const { tones } = useTheme().palette;
  const ceiling = tests[0]?.ceiling ?? 16 / 27;
  const across = scaleFor([0, ...curve.ratio, ...tests.map(({ tipSpeedRatio = 0 }) => tipSpeedRatio)], { count: 6, fromZero: true });
  const up = scaleFor([0, ceiling * 1.1, ...tests.map(({ high }) => Math.min(high, 2 * ceiling))], { count: 5, fromZero: true });
  const x = (ratio: number) => EDGE.left + ((ratio - across.min) / (across.max - across.min)) * (WIDTH - EDGE.left - EDGE.right);
  const y = (coefficient: number) =>
    HEIGHT -
    EDGE.bottom -
    ((Math.min(up.max, Math.max(up.min, coefficient)) - up.min) / (up.max - up.min)) * (HEIGHT - EDGE.top - EDGE.bottom);
  const drawn = curve.ratio.map((ratio, i) => [ratio, curve.coefficient[i] ?? 0] as const).filter(([, c]) => c >= 0);
  return (
    <Plate
      title="Power coefficient"
      note="Line: the plan’s wheel. Dots: tests, with 95 % bounds for the wind. A test without a speed stands at the left edge."
    >
      <svg
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        width="100%"
        style={{ display: 'block' }}
        role="img"
        aria-label="Power coefficient against tip-speed ratio"
      >
        {up.ticks.map((tick) => (
          <g key={`y${tick}`}>
            <line x1={EDGE.left} x2={WIDTH - EDGE.right} y1={y(tick)} y2={y(tick)} stroke={tones.rule} strokeWidth={0.75} />
            <text x={EDGE.left - 6} y={y(tick) + 4} fontSize={11} fill={tones.ink} textAnchor="end">
              {Number(tick.toPrecision(3))}
            </text>
          </g>
        ))}
        {across.ticks.map((tick) => (
          <text key={`x${tick}`} x={x(tick)} y={HEIGHT - EDGE.bottom + 15} fontSize={11} fill={tones.ink} textAnchor="middle">
            {Number(tick.toPrecision(3))}
          </text>
        ))}
        <text x={(WIDTH + EDGE.left) / 2} y={HEIGHT - 4} fontSize={11} fill={tones.faint} textAnchor="middle">
          Tip-speed ratio
        </text>
        <line
          x1={EDGE.left}
          x2={WIDTH - EDGE.right}
          y1={y(ceiling)}
          y2={y(ceiling)}
          stroke={tones.bad}
          strokeDasharray="6 3"
          strokeWidth={1.25}
        />
        <text x={WIDTH - EDGE.right} y={y(ceiling) - 4} fontSize={11} fill={tones.bad} textAnchor="end">
          ceiling {ceiling.toFixed(3)}
        </text>
        <polyline
          points={drawn.map(([ratio, c]) => `${x(ratio)},${y(c)}`).join(' ')}
          fill="none"
          stroke={tones.accent}
          strokeWidth={1.75}
        />
        {tests.map((test) => {
          const at = x(test.tipSpeedRatio ?? 0);
          const ink = tones[colors[test.verdict]];
          return (
            <g key={test.row}>
              <line x1={at} x2={at} y1={y(test.low)} y2={y(test.high)} stroke={ink} strokeWidth={5} opacity={0.3} />
              <circle cx={at} cy={y(test.coefficient)} r={4} fill={ink} />
            </g>
          );
        })}
      </svg>
    </Plate>
  );
}
