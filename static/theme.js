// Runs before the first paint, so that the chosen theme and voltage letter never flash.
try {
	const chosen = JSON.parse(localStorage.getItem('ohm-to-ember:settings') ?? '{}');
	if (chosen.theme === 'light' || chosen.theme === 'dark') document.documentElement.dataset.theme = chosen.theme;
} catch {
	// storage refused or unreadable: the system's own theme applies
}
