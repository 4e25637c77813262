import katex from 'katex';
import { Marked, type Tokens } from 'marked';

/**
 * Sets limited Markdown with formulas between dollar signs. Only for the build: neither Markdown nor formulas are set
 * in the browser. A formula with \volt is set twice, with V and with U; the style sheets show the chosen one.
 */
export function typeset(markdown: string): string {
	const isBlock = /\n\s*\n/.test(markdown.trim());
	return isBlock ? limited.parse(markdown, { async: false }) : limited.parseInline(markdown.trim(), { async: false });
}

const allowed = new Set(['paragraph', 'text', 'strong', 'em', 'space', 'list', 'list_item', 'escape', 'br', 'formula']);

const limited = new Marked({
	gfm: false,
	extensions: [
		{
			name: 'formula',
			level: 'inline',
			start: (source: string) => source.indexOf('$'),
			tokenizer(source: string) {
				const found = /^(\${1,2})([^$]+)\1/.exec(source);
				if (found === null) return undefined;
				const [raw, fence, tex] = found;
				return { type: 'formula', raw, tex, isDisplay: fence === '$$' };
			},
			renderer: (token: Tokens.Generic) => bothLetters(String(token['tex']), token['isDisplay'] === true),
		},
	],
	walkTokens(token) {
		if (!allowed.has(token.type)) throw new Error(`not-allowed: ${token.type}`);
	},
});

function bothLetters(tex: string, isDisplay: boolean): string {
	if (!tex.includes('\\volt')) return formula(tex, isDisplay, 'V');
	const version = (letter: 'V' | 'U') =>
		`<span class="letter-${letter.toLowerCase()}">${formula(tex, isDisplay, letter)}</span>`;
	return version('V') + version('U');
}

function formula(tex: string, displayMode: boolean, letter: 'V' | 'U'): string {
	return katex.renderToString(tex, {
		displayMode,
		output: 'htmlAndMathml',
		trust: false,
		strict: 'error',
		throwOnError: true,
		maxExpand: 200,
		macros: { '\\volt': letter, '\\unit': '\\,\\mathrm{#1}' },
	});
}
