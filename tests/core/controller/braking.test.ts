import { describe, expect, test } from 'vitest';
import { brakeCautions, brakingWind } from '../../../core/controller/braking';
import { turbineStage } from '../../../core/turbine/stage';
import { wheelPower } from '../../../core/turbine/wind';

const turbine = turbineStage({ rows: 1, diameter: 2, peakCp: 0.35, tipSpeedRatio: 6, runawayRatio: 11 }, { airDensity: 1.225 });

describe('the wind in which shorting stops the wheel', () => {
  test('a machine that brakes harder than the wheel at every speed stops it in any wind', () => {
    expect(brakingWind(turbine, (speed) => 5 * speed ** 2, 20)).toBe(20);
  });

  test('a machine that hardly brakes stops it in calm only', () => {
    expect(brakingWind(turbine, (speed) => 1e-3 * speed, 20)).toBeLessThan(0.3);
  });

  test('with reactance the brake has a greatest power, and above some wind the wheel overpowers it', () => {
    // Brake power with R = 0.4 Ω, X = 0.01 ω: 3 (0.4 ω)² 0.4/(0.16 + 1e-4 ω²). Above the wind that is found, the wheel gives more at some speed past the stall.
    const brake = (speed: number) => (3 * (0.4 * speed) ** 2 * 0.4) / (0.16 + 1e-4 * speed ** 2);
    const wind = brakingWind(turbine, brake, 40);
    expect(wind).toBeGreaterThan(3);
    expect(wind).toBeLessThan(40);
    const beats = (v: number) =>
      Array.from({ length: 400 }, (_, i) => (v * (3 + (i / 400) * 8)) / 1).some(
        (speed) => wheelPower(turbine.wheel, v, speed) > brake(speed),
      );
    expect(beats(wind)).toBe(false);
    expect(beats(wind + 0.3)).toBe(true);
  });
});

describe('what is said of it', () => {
  const braking = { stopsTo: 9, gustWind: 25, amps: 111.4, seconds: 8.42 };

  test('a brake that fails below the gust is a warning with its wind, amps and seconds', () => {
    const [caution] = brakeCautions(braking);
    expect(caution.severity).toBe('warning');
    for (const words of ['only up to 9.0 m/s', '111 A', '8.4 s']) expect(caution.message).toContain(words);
  });

  test('a brake that holds in the gust is a note', () => {
    expect(brakeCautions({ ...braking, stopsTo: 25 })[0].severity).toBe('note');
  });

  test('a brake that never stops it says so', () => {
    expect(brakeCautions({ ...braking, stopsTo: 0.1 })[0].message).toContain('does not stop');
  });
});
