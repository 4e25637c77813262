// Runs before the first paint, so that the chosen theme, view and voltage letter never flash.
try {
	const chosen = JSON.parse(localStorage.getItem('ohm-to-ember:settings') ?? '{}');
	const { dataset } = document.documentElement;
	if (chosen.theme === 'light' || chosen.theme === 'dark') dataset.theme = chosen.theme;
	if (chosen.view === 'wall') dataset.view = 'wall';
	if (chosen.voltageLetter === 'U') dataset.voltageLetter = 'U';
} catch {
	// storage refused or unreadable: the system's own theme applies
}
