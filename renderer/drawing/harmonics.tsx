import { useMemo } from 'react';
import { useUnits } from '../parts/unit-preferences';
import { format } from '../units';
import { Bars } from './bars';

/** The harmonics of a wave beside its fundamental; those too small to matter are left out. */
export function Harmonics({
  title,
  orders,
  sizes,
  note,
}: {
  title: string;
  orders: readonly number[];
  sizes: readonly number[];
  note?: string;
}) {
  const units = useUnits();
  const bars = useMemo(() => {
    const first = Math.abs(sizes[0] ?? 0);
    if (first === 0) return [];
    return orders.slice(1, 8).flatMap((order, i) => {
      const share = Math.abs(sizes[i + 1] ?? 0) / first;
      return share < 0.001 ? [] : [{ order, share }];
    });
  }, [orders, sizes]);
  const widest = Math.max(0.1, ...bars.map((b) => b.share));
  return (
    <Bars
      title={title}
      note={bars.length === 0 ? 'No harmonic reaches a thousandth of the fundamental.' : note}
      bars={bars.map(({ order, share }) => ({
        label: `${order}${order === 3 ? 'rd' : 'th'} harmonic`,
        length: share / widest,
        value: format(share, 'percent', units, 2),
        tone: 'accent',
      }))}
    />
  );
}
