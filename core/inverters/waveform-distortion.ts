import { requireInRange } from '../errors.ts'

/**
 * Total harmonic distortion of a quasi-square (modified sine) voltage: in each half cycle a flat pulse of the
 * given width, zero between pulses.
 *
 * @param conductionAngleDeg - Width of the pulse. [deg] 1..180; 180 is a full square wave
 * @returns RMS of all harmonics over that of the fundamental. 0.28..
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @remarks `THD = sqrt(beta pi / (8 sin^2(beta / 2)) - 1)`, beta in radians. Least, 0.2896, at 133.56 degrees;
 * 0.3108 at 120 degrees, where the third harmonic is nil.
 * @source quasi-square-fourier
 * @example quasiSquareDistortionFraction(90) //=> 0.4834
 */
export function quasiSquareDistortionFraction(conductionAngleDeg: number): number {
  requireInRange('conductionAngleDeg', conductionAngleDeg, 1, 180)
  const beta = (conductionAngleDeg * Math.PI) / 180
  return Math.sqrt((beta * Math.PI) / (8 * Math.sin(beta / 2) ** 2) - 1)
}
