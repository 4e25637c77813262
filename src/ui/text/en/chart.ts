/** Words around every chart. */
export const chart = {
	showTable: 'Show as table',
	hideTable: 'Hide the table',
	readAlong: 'Read along the line',
	notReading: 'Tap the line, or use the arrow keys here.',
	reading: (xLetter: string, x: string, yLetter: string, y: string) => `At ${xLetter} ${x}: ${yLetter} ${y}`,
	failure: 'The chart cannot be drawn. Its table is below.',
} as const;
