/** Keeps unfinished work on this device as text, by a key. */
export interface DraftStore {
	/** false when the work lasts only until the page is closed */
	readonly isKept: boolean;
	read(key: string): string | undefined;
	write(key: string, text: string): void;
	remove(key: string): void;
}

/** The part of the browser's storage that drafts need. */
export type DraftStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

const prefix = 'ohm-to-ember:draft:';

/** Drafts that last until the page is closed. */
export function memoryDrafts(): DraftStore {
	const texts = new Map<string, string>();
	return {
		isKept: false,
		read: (key) => texts.get(key),
		write: (key, text) => void texts.set(key, text),
		remove: (key) => void texts.delete(key),
	};
}

/** Drafts in the browser's storage; memory takes over where storage is refused or full. */
export function storedDrafts(storage: DraftStorage): DraftStore {
	const memory = memoryDrafts();
	return {
		isKept: true,
		read(key) {
			try {
				return memory.read(key) ?? storage.getItem(prefix + key) ?? undefined;
			} catch {
				return memory.read(key);
			}
		},
		write(key, text) {
			try {
				storage.setItem(prefix + key, text);
				memory.remove(key);
			} catch {
				memory.write(key, text);
			}
		},
		remove(key) {
			memory.remove(key);
			try {
				storage.removeItem(prefix + key);
			} catch {
				// storage refused: nothing was kept there
			}
		},
	};
}
