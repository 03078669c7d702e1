import { expect, test } from 'vitest';
import { gradeNamed, grades } from '../../../core/magnets/grades';

test('every grade has its own name, a rising range and a source', () => {
  expect(new Set(grades.map((grade) => grade.name)).size).toBe(grades.length);
  for (const grade of grades) {
    expect(grade.remanence[0]).toBeLessThan(grade.remanence[1]);
    expect(grade.intrinsicCoercivity).toBeGreaterThan(1e5);
    expect(grade.source).not.toBe('');
  }
});

test('a suffix raises limit and coercivity, a number raises remanence', () => {
  const named = (name: string) => gradeNamed(name)!;
  expect(named('N42SH').maxTemperature).toBeGreaterThan(named('N42H').maxTemperature);
  expect(named('N42H').intrinsicCoercivity).toBeGreaterThan(named('N42').intrinsicCoercivity);
  expect(named('N45').remanence[0]).toBeGreaterThan(named('N42').remanence[0]);
});

test('a grade is found however it is written, and nothing is found for another', () => {
  expect(gradeNamed('n 42-sh')?.name).toBe('N42SH');
  expect(gradeNamed('from the drawer')).toBeUndefined();
  expect(gradeNamed(undefined)).toBeUndefined();
});

test('the remanence range goes with the energy product in the name (B_r ≈ 2 √(μ₀ (BH)max) for a straight line)', () => {
  for (const grade of grades.filter(({ material }) => material === 'NdFeB')) {
    const energy = Number(/\d+/.exec(grade.name)![0]) * 7957.7;
    const straight = 2 * Math.sqrt(4e-7 * Math.PI * energy * grade.recoilPermeability);
    expect((grade.remanence[0] + grade.remanence[1]) / 2 / straight).toBeGreaterThan(0.95);
    expect((grade.remanence[0] + grade.remanence[1]) / 2 / straight).toBeLessThan(1.05);
  }
});
