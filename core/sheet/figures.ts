/** Numbers as they are written on the sheet: plain digits with the unit a builder's rule or meter shows. Stored SI in, text out. */

const none = '–';

/** A number to so many significant digits, never in exponent form, zeros at the end kept. */
export function digits(value: number, significant = 3): string {
  if (!Number.isFinite(value)) return none;
  if (value === 0) return '0';
  const places = Math.min(6, Math.max(0, significant - 1 - Math.floor(Math.log10(Math.abs(value)))));
  return value.toFixed(places).replace('-', '−');
}

/** At most so many decimals, zeros at the end left out. */
function decimals(value: number, places: number): string {
  return Number.isFinite(value) ? String(Number(value.toFixed(places))).replace('-', '−') : none;
}

export const count = (value: number) => decimals(value, 0);
/** Lengths on the bench, to a tenth of a millimetre. [m] */
export const mm = (metres: number) => `${decimals(metres * 1000, 1)} mm`;
export const bareMm = (metres: number) => decimals(metres * 1000, 1);
/** Wire diameters and enamel, to a thousandth. [m] */
export const wireMm = (metres: number) => `${decimals(metres * 1000, 3)} mm`;
/** Lengths of wire and cable. [m] */
export const metres = (value: number) => `${digits(value, value < 10 ? 3 : 4)} m`;
export const squareMm = (squareMetres: number) => `${digits(squareMetres * 1e6)} mm²`;
export const kilograms = (value: number) => (value < 1 ? `${digits(value * 1000)} g` : `${digits(value)} kg`);
export const ohms = (value: number) => (Math.abs(value) < 1 ? `${digits(value * 1000)} mΩ` : `${digits(value)} Ω`);
export const volts = (value: number) => `${digits(value)} V`;
export const amps = (value: number) => `${digits(value)} A`;
export const watts = (value: number) => `${digits(value)} W`;
export const hertz = (value: number) => `${digits(value)} Hz`;
export const teslas = (value: number) => `${digits(value)} T`;
export const celsius = (value: number) => `${decimals(value, 0)} °C`;
export const rpm = (value: number) => `${decimals(value, 0)} rpm`;
export const windSpeed = (value: number) => `${decimals(value, 1)} m/s`;
export const percent = (share: number) => `${decimals(share * 100, 0)} %`;
/** A plural of a regular noun, as in "1 coil", "9 coils". */
export const many = (number: number, noun: string) => `${number} ${noun}${number === 1 ? '' : 's'}`;
