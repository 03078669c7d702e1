import { useTheme } from '@mui/material/styles';
import { ChartsReferenceLine } from '@mui/x-charts/ChartsReferenceLine';
import { LineChart, type LineChartProps } from '@mui/x-charts/LineChart';
import { memo, useMemo } from 'react';
import { useUnits } from '../parts/unit-preferences';
import { prepared, type Chart } from './chart';
import { lineInk, otherMark } from './inks';

/** Points of a line laid over from one mark to the next. */
const MARK_EVERY = 12;

/** The plot of a chart; a chunk of its own, loaded when the first chart is shown. What is round it is drawn oftener. */
export default memo(function LinePlot({ chart }: { chart: Chart }) {
  const { palette } = useTheme();
  const { tones, mode } = palette;
  const units = useUnits();
  const plot = useMemo(() => prepared(chart, units), [chart, units]);
  const small = { fontSize: 12, fill: tones.ink };
  const faint = { fontSize: 12, fill: tones.faint };
  // Letters that lie on a line stay legible.
  const halo = { paintOrder: 'stroke', stroke: tones.well, strokeWidth: 4, strokeLinejoin: 'round' } as const;
  const marked = plot.x.data.length <= 2;
  const series: LineChartProps['series'] = plot.series.map(({ id, label, data, told, other }, i) => ({
    id,
    label,
    data,
    color: lineInk(other?.like ?? i, mode).colour,
    curve: 'linear',
    showMark: other ? ({ index }) => index % MARK_EVERY === MARK_EVERY >> 1 : marked,
    ...(other && { shape: otherMark(other.design) }),
    ...(chart.stacked && !other && { area: true, stack: 'all' }),
    valueFormatter: (_, { dataIndex }) => told[dataIndex] ?? '',
  }));
  const lineOf = (seriesId: string | number) => {
    const at = plot.series.findIndex((s) => s.id === seriesId);
    const other = plot.series[at]?.other;
    const isArea = chart.stacked && !other;
    return {
      strokeWidth: isArea ? 0.75 : other ? 1 : 1.75,
      strokeDasharray: isArea ? undefined : lineInk(other?.like ?? at, mode).dash,
    };
  };
  return (
    <LineChart
      skipAnimation
      hideLegend
      grid={{ horizontal: true, vertical: true }}
      margin={{ left: 4, right: 18, top: 14, bottom: 2 }}
      series={series}
      xAxis={[
        {
          data: plot.x.data,
          scaleType: 'linear',
          min: plot.x.scale.min,
          max: plot.x.scale.max,
          tickInterval: plot.x.scale.ticks,
          domainLimit: 'strict',
          label: plot.x.label,
          height: 42,
          labelStyle: faint,
          tickLabelStyle: small,
          valueFormatter: (value: number, { location }) =>
            location === 'tooltip' ? (plot.x.told[plot.x.data.indexOf(value)] ?? '') : plain(value, 6),
        },
      ]}
      yAxis={[
        {
          min: plot.y.scale.min,
          max: plot.y.scale.max,
          tickInterval: plot.y.scale.ticks,
          domainLimit: 'strict',
          label: plot.y.label,
          width: 62,
          labelStyle: faint,
          tickLabelStyle: small,
          valueFormatter: (value: number) => plain(value, 6),
        },
      ]}
      slotProps={{
        line: ({ seriesId }) => lineOf(seriesId),
        area: { fillOpacity: 0.45 },
        tooltip: { trigger: 'axis' },
      }}
      sx={{
        '& .MuiChartsGrid-line': { stroke: tones.rule, strokeWidth: 0.75 },
        '& .MuiChartsAxis-line, & .MuiChartsAxis-tick': { stroke: tones.edge },
      }}
    >
      {plot.limits.map(({ along, at, label, tone, row, side }) => {
        const colour = tone === 'bad' ? tones.bad : tones.faint;
        return (
          <ChartsReferenceLine
            key={`${along}${label}`}
            {...(along === 'x' ? { x: at } : { y: at })}
            label={label}
            labelAlign={along === 'x' || side === 'left' ? 'start' : 'end'}
            spacing={along === 'x' ? { x: side === 'left' ? -5 : 5, y: 2 + 15 * row } : { x: 6, y: 4 }}
            lineStyle={{ stroke: colour, strokeDasharray: '6 3', strokeWidth: 1.25 }}
            labelStyle={{ fontSize: 12, fill: colour, ...halo, ...(along === 'x' && side === 'left' && { textAnchor: 'end' }) }}
          />
        );
      })}
    </LineChart>
  );
});

const plain = (value: number, significant: number) =>
  Number(value.toPrecision(significant))
    .toLocaleString('en', { maximumSignificantDigits: significant, useGrouping: false })
    .replace('-', '−');
