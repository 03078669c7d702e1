import { useState, type RefObject } from 'react';
import { desktop } from '../desktop';
import { useUnits } from '../parts/unit-preferences';
import { csvOf, type Chart } from './chart';
import { pictureOf, pngOf } from './chart-picture';
import { Tool } from './plate';

/** Takes a chart's numbers or its picture elsewhere. */
export function ChartTools({ chart, frame }: { chart: Chart; frame: RefObject<HTMLElement | null> }) {
  const units = useUnits();
  const save = async (kind: 'svg' | 'png') => {
    if (!frame.current) return null;
    const picture = pictureOf(frame.current, chart.title);
    const bytes = kind === 'svg' ? new TextEncoder().encode(picture.text) : await pngOf(picture);
    return (await desktop.exportFile(`${chart.title}.${kind}`, kind, bytes)) && 'Saved';
  };
  return (
    <>
      <TryTool
        words="CSV"
        does={`copy the numbers of ${chart.title}`}
        act={() => navigator.clipboard.writeText(csvOf(chart, units)).then(() => 'Copied')}
      />
      <TryTool words="SVG" does={`save ${chart.title}`} act={() => save('svg')} />
      <TryTool words="PNG" does={`save ${chart.title}`} act={() => save('png')} />
    </>
  );
}

/** A tool that says for a moment what came of it. */
function TryTool({ words, does, act }: { words: string; does: string; act: () => Promise<string | null> }) {
  const [outcome, setOutcome] = useState<string | null>(null);
  const perform = async () => {
    setOutcome(await act().catch(() => 'Could not'));
    setTimeout(() => setOutcome(null), 2000);
  };
  return (
    <Tool label={`${outcome ?? words}: ${does}`} onClick={() => void perform()}>
      <span role="status">{outcome ?? words}</span>
    </Tool>
  );
}
