import type { Kelvin, MetresPerSecond, Pascals } from '#core/quantity/unit.ts';

/** The air and walls around the wire. */
export interface Room {
	/** air and wall temperature, 233…333 K */
	readonly temperature: Kelvin;
	/** ambient pressure, 50 000…110 000 Pa */
	readonly pressure: Pascals;
	/** horizontal cross-draught, 0…5 m/s; 0 is still air */
	readonly draught: MetresPerSecond;
}

/** Still air at 20 °C and one standard atmosphere (ISO 2533). */
export const stillRoom = { temperature: 293.15, pressure: 101_325, draught: 0 } as const satisfies Room;
