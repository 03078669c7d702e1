/** Numbers as they are written on the sheet: plain digits with the unit a builder's rule or meter shows. Stored SI in, text out. */

const none = '–';
/** Keeps a number and its unit on one line. */
export const nb = '\u00a0';

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
export const mm = (metres: number) => `${decimals(metres * 1000, 1)}${nb}mm`;
export const bareMm = (metres: number) => decimals(metres * 1000, 1);
/** How a drawing writes its lengths: in millimetres on paper, in the user's unit on screen. */
export type LengthText = (metres: number) => string;
/** Wire diameters and enamel, to a thousandth. [m] */
export const wireMm = (metres: number) => `${decimals(metres * 1000, 3)}${nb}mm`;
/** Lengths of wire and cable. [m] */
export const metres = (value: number) => `${digits(value, value < 10 ? 3 : 4)}${nb}m`;
export const squareMm = (squareMetres: number) => `${digits(squareMetres * 1e6)}${nb}mm²`;
export const kilograms = (value: number) => (value < 1 ? `${digits(value * 1000)}${nb}g` : `${digits(value)}${nb}kg`);
export const ohms = (value: number) => (Math.abs(value) < 1 ? `${digits(value * 1000)}${nb}mΩ` : `${digits(value)}${nb}Ω`);
export const volts = (value: number) => `${digits(value)}${nb}V`;
export const amps = (value: number) => `${digits(value)}${nb}A`;
export const watts = (value: number) => `${digits(value)}${nb}W`;
export const hertz = (value: number) => `${digits(value)}${nb}Hz`;
export const teslas = (value: number) => `${digits(value)}${nb}T`;
export const celsius = (value: number) => `${decimals(value, 0)}${nb}°C`;
export const rpm = (value: number) => `${decimals(value, 0)}${nb}rpm`;
export const windSpeed = (value: number) => `${decimals(value, 1)}${nb}m/s`;
export const percent = (share: number) => `${decimals(share * 100, 0)}${nb}%`;
/** A plural of a regular noun, as in "1 coil", "9 coils". */
export const many = (number: number, noun: string) => `${number} ${noun}${number === 1 ? '' : 's'}`;
