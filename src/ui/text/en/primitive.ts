/** Words built into the general parts. */
export const primitive = {
	less: (label: string, step: string) => `${label}: ${step} less`,
	more: (label: string, step: string) => `${label}: ${step} more`,
	oneStep: 'one step',
	scrollTable: (caption: string) => `${caption} (table, scrolls sideways)`,
} as const;
