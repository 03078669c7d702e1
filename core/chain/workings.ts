import type { Design } from '../design/schema';
import type { Working } from '../problem';
import type { Results } from './results';

const n = (value: number, digits = 4) => String(Number(value.toPrecision(digits)));

/** How the headline results come about: formula, numbers, what is left out, source. */
export function workingsOf(design: Design, { gap, coils, emf, cutIn, rated, year, stages }: Omit<Results, 'workings'>): Working[] {
  const { winding, discs, magnets, site, turbine } = design;
  const { wire } = winding;
  const serpentine = winding.layout.kind === 'serpentine';
  const layers = stages.winding.copperHeight / winding.thickness;
  const made: (Working | undefined)[] = [
    {
      result: 'gap.length',
      formula: 'g = layers · t + 2 s + 2 c',
      numbers: `${n(layers)} · ${n(winding.thickness)} m + 2 · ${n(winding.skin)} m + 2 · ${n(discs.runningClearance)} m = ${n(gap.length)} m`,
      inputs: ['winding.thickness', 'winding.skin', 'discs.runningClearance'],
      limits: 'Flat, true discs; run-out eats clearance.',
      source: 'Geometry.',
    },
    {
      result: 'gap.peak',
      formula: 'B = Σ magnets and images B_magnet(r), times recoil and saturation factors',
      numbers: `Br at ${n(design.surroundings.magnetTemperature)} °C ${n(stages.magnets.remanence)} T; recoil factor ${n(stages.field.recoil)}, saturation factor ${n(stages.field.saturation)}; B = ${n(gap.peak)} T`,
      inputs: ['magnets.remanence', 'magnets.shape', 'discs.pitchRadius', 'discs.backing'],
      limits: 'Uniformly magnetised magnets; plates flat and wider than the magnets.',
      source:
        'Furlani 2001, Permanent Magnet and Electromechanical Devices, ch. 4; Derby & Olbert 2010, Am. J. Phys. 78, 229; method of images.',
    },
    {
      result: 'emf.peakPerRadPerSecond',
      formula: 'Ke = p · N · Σ coils λ₁ cos(angle) / a',
      numbers: `p = ${discs.poles / 2}, N = ${winding.turns}, ${coils.count} coil${coils.count > 1 ? 's' : ''} in ${winding.phases} phase${winding.phases > 1 ? 's' : ''}, a = ${winding.parallelPaths}: Ke = ${n(emf.peakPerRadPerSecond)} V·s/rad`,
      inputs: ['winding.turns', 'winding.layout', 'discs.poles', 'winding.parallelPaths'],
      limits: 'Flux linkage averaged over width and height of the leg; steel teeth: none.',
      source: 'Faraday’s law on the three-dimensional field; Stokes’s theorem along each turn.',
    },
    {
      result: 'emf.phaseRmsPer1000rpm',
      formula: 'E = ω · √(Σ Ke,n² / 2)',
      numbers: `ω = ${n((1000 * 2 * Math.PI) / 60)} rad/s, distortion ${n(100 * emf.distortion, 3)} %: E = ${n(emf.phaseRmsPer1000rpm)} V`,
      inputs: ['winding.turns', 'winding.layout'],
      limits: 'Open circuit, magnets at their running temperature.',
      source: 'Parseval.',
    },
    {
      result: 'coils.wireLength',
      formula: 'ℓ = (Q · N · ℓ_turn + m · ℓ_lead) · strands',
      numbers: `(${coils.count} · ${winding.turns} · ${n(stages.winding.meanTurn)} m + ${winding.phases} · ${n(winding.leadLength)} m) · ${wire.inHand} = ${n(coils.wireLength)} m`,
      inputs: ['winding.turns', 'winding.layout', 'winding.leadLength', 'winding.wire.inHand'],
      limits: 'No waste; the sheet adds an allowance.',
      source: 'Mean length of the turns as drawn.',
    },
    {
      result: 'coils.fill',
      formula: 'fill = N · strands · π d² / 4 / (width · thickness)',
      numbers: `${winding.turns} · ${wire.inHand} · π · (${n(wire.overallDiameter)} m)² / 4 / (${n(winding.layout.legWidth)} m · ${n(winding.thickness)} m) = ${n(coils.fill)}`,
      inputs: ['winding.turns', 'winding.wire.overallDiameter', 'winding.layout.legWidth', 'winding.thickness'],
      limits: 'Hand winding reaches 0.55–0.65; 0.60 is taken as the most.',
      source: 'Common practice, no source.',
    },
    {
      result: 'coils.phaseResistance20',
      formula: 'R = ρ₂₀ · (N · ℓ_turn · coils in series / a + ℓ_lead) / A',
      numbers: `A = ${n(stages.wire.metalSection * 1e6)} mm², ${n(stages.winding.seriesCoils)} coil(s) in series, a = ${winding.parallelPaths}: R = ${n(coils.phaseResistance20)} Ω`,
      inputs: ['winding.turns', 'winding.wire.conductorDiameter', 'winding.parallelPaths', 'winding.leadLength'],
      limits: 'Direct current; joints left out.',
      source: 'IEC 60028: ρ₂₀ = 1/58 Ω·mm²/m.',
    },
    {
      result: 'coils.phaseResistance',
      formula: 'R(T) = R₂₀ · [1 + α (T − 20)]',
      numbers: `${n(coils.phaseResistance20)} Ω at 20 °C, coils at ${n(rated.coilTemperature, 3)} °C: ${n(coils.phaseResistance)} Ω`,
      inputs: ['winding.wire.metal'],
      limits: 'One temperature for all the copper.',
      source: 'IEC 60028: α = 0.00393 /K.',
    },
    serpentine && coils.pegDistance !== undefined
      ? {
          result: 'coils.pegDistance',
          formula: 's = [ℓ_turn − π (peg + bundle)] / 2',
          numbers: `[${n(stages.winding.meanTurn)} m − π (${n(stages.winding.pegs?.diameter ?? 0)} m + ${n(stages.winding.pegs?.bundleDepth ?? 0)} m)] / 2 = ${n(coils.pegDistance)} m`,
          inputs: ['winding.layout.innerRadius', 'winding.layout.outerRadius', 'discs.poles'],
          limits: 'The skein keeps its length when folded.',
          source: 'Belt round two equal pegs.',
        }
      : undefined,
    cutIn.rpm !== null && cutIn.wind !== null
      ? {
          result: 'cutIn.rpm',
          formula: 'ω = (V_load + 2 Vt) / Ê_dc',
          numbers: `${n(cutIn.rpm)} rpm; unloaded, the wheel reaches it in ${n(cutIn.wind)} m/s`,
          inputs: ['load', 'rectifier.diode.threshold', 'winding.turns', 'turbine.runawayRatio'],
          limits: 'Bearing drag lifts the wind a little.',
          source: 'Peak of the rectified open-circuit EMF.',
        }
      : undefined,
    {
      result: 'rated.dcAmps',
      formula: 'L i′ + R i + diodes + load = e, periodic; wheel power = shaft power',
      numbers: `At ${n(site.ratedWind)} m/s the pair settles at ${n(rated.rpm)} rpm: ${n(rated.dcVolts)} V · ${n(rated.dcAmps)} A = ${n(rated.dcWatts)} W`,
      inputs: ['site.ratedWind', 'turbine.diameter', 'turbine.peakCp', 'load', 'cable.section'],
      limits: 'Steady wind; no furling.',
      source: 'Periodic steady state solved from diode event to diode event; equilibrium of torques.',
    },
    {
      result: 'rated.coilTemperature',
      formula: 'P_copper(T) + P_eddy = h A (T − T_air)',
      numbers: `settles at ${n(rated.coilTemperature, 3)} °C, limit ${n(rated.limitTemperature, 3)} °C, current density ${n(rated.currentDensity / 1e6, 3)} A/mm²`,
      inputs: ['winding.wire.conductorDiameter', 'winding.skin', 'surroundings.airTemperature'],
      limits: 'Both faces cooled across the clearance by still and stirred air and by radiation; wind blown through the machine left out.',
      source: 'Churchill & Chu 1975; free rotating disc, Cobb & Saunders 1956.',
    },
    {
      result: 'year.energy',
      formula: 'E = 1 year · ∫ P(v) f(v) dv',
      numbers: `Weibull shape ${n(site.weibullShape)}, mean ${n(site.meanWind)} m/s, wheel ${n(turbine.diameter)} m: ${n(year.energy / 3.6e6)} kWh`,
      inputs: ['site.meanWind', 'site.weibullShape'],
      limits: 'Nothing counted above the greatest wind of the curve; no down time.',
      source: 'Weibull distribution.',
    },
    {
      result: 'gap.fundamental',
      formula: 'B_z = Σ b_n cos(n p θ)',
      numbers: `b₁ = ${n(gap.fundamental)} T, Br = ${n(magnets.remanence)} T at 20 °C`,
      inputs: ['magnets.shape', 'discs.pitchRadius'],
      limits: 'At pitch radius in the mid-plane; the volts use all radii and heights.',
      source: 'Fourier series round the disc.',
    },
  ];
  return made.filter((working) => working !== undefined);
}
