/** What one reads who has only the printed table: which coil ends and terminals are one node. */
export function tableCircuit(rows: string[][], ohms: number) {
  const node = new Map<string, string>();
  const find = (name: string): string => {
    const up = node.get(name);
    return up === undefined || up === name ? name : find(up);
  };
  const join = (a: string, b: string) => node.set(find(a), find(b));
  const plain = (words: string) =>
    words
      .replace(/\s+/g, ' ')
      .replace(/^terminal /, '')
      .toLowerCase();
  const coils: number[] = [];
  for (const row of rows) {
    if (row.length === 7) {
      coils.push(Number(row[0]));
      for (const [end, words] of [
        ['start', row[3]],
        ['finish', row[5]],
      ])
        for (const other of plain(words).split(', ')) join(`${end} of ${row[0]}`, other);
    } else for (const end of plain(row[1]).split(', ')) join(plain(row[0]), end);
  }
  const names = [...new Set(coils.flatMap((coil) => [find(`start of ${coil}`), find(`finish of ${coil}`)]))];
  const at = (name: string) => {
    const found = names.indexOf(find(plain(name)));
    if (found < 0) throw new Error(`no coil is joined to ${name}`);
    return found;
  };
  const ends = coils.map((coil) => ({ coil, start: at(`start of ${coil}`), finish: at(`finish of ${coil}`) }));
  /** Kirchhoff: currents into the nodes in, potentials out. A leak too weak to matter ties islands to earth. */
  const solved = (into: number[]): number[] => {
    const leak = 1e-13 / ohms;
    const matrix = names.map((_, i) => names.map((__, j) => (i === j ? leak : 0)));
    for (const { start, finish } of ends) {
      matrix[start][start] += 1 / ohms;
      matrix[finish][finish] += 1 / ohms;
      matrix[start][finish] -= 1 / ohms;
      matrix[finish][start] -= 1 / ohms;
    }
    return eliminated(matrix, into);
  };
  return {
    /** Each coil raises its start over its finish by its EMF; nothing is connected. */
    potentials(emf: (coil: number) => number) {
      const into = names.map(() => 0);
      for (const { coil, start, finish } of ends) {
        into[start] += emf(coil) / ohms;
        into[finish] -= emf(coil) / ohms;
      }
      const found = solved(into);
      return (name: string) => found[at(name)];
    },
    /** Between two terminals, as a meter reads it. */
    resistance(from: string, to: string) {
      const found = solved(names.map((_, i) => (i === at(from) ? 1 : 0) - (i === at(to) ? 1 : 0)));
      return found[at(from)] - found[at(to)];
    },
  };
}

/** Gauss's elimination with the greatest pivot. */
function eliminated(matrix: number[][], right: number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i]]);
  const size = rows.length;
  for (let k = 0; k < size; k++) {
    const best = rows.slice(k).reduce((top, row, i) => (Math.abs(row[k]) > Math.abs(rows[top][k]) ? k + i : top), k);
    [rows[k], rows[best]] = [rows[best], rows[k]];
    for (let i = k + 1; i < size; i++) {
      const share = rows[i][k] / rows[k][k];
      if (share !== 0) for (let j = k; j <= size; j++) rows[i][j] -= share * rows[k][j];
    }
  }
  const found = new Array<number>(size).fill(0);
  for (let k = size - 1; k >= 0; k--) {
    const rest = rows[k].reduce((sum, value, j) => (j > k && j < size ? sum + value * found[j] : sum), 0);
    found[k] = (rows[k][size] - rest) / rows[k][k];
  }
  return found;
}
