/** WCAG 2.2, definition "relative luminance": linear parts of sRGB, weighted. */
export function relativeLuminance(colour: string): number {
	const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(colour);
	const full = short
		? `#${short
				.slice(1)
				.map((digit) => digit + digit)
				.join('')}`
		: colour;
	const parts = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(full);
	if (!parts) throw new RangeError(`not a colour of six digits: ${colour}`);
	const [red = 0, green = 0, blue = 0] = parts.slice(1).map((hex) => {
		const part = Number.parseInt(hex, 16) / 255;
		return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** WCAG 2.2, definition "contrast ratio", 1…21. */
export function contrast(one: string, other: string): number {
	const [low = 0, high = 0] = [relativeLuminance(one), relativeLuminance(other)].sort((a, b) => a - b);
	return (high + 0.05) / (low + 0.05);
}
