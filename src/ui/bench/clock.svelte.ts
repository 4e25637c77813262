import { prefersReducedMotion } from 'svelte/motion';
import type { Bench } from './bench.svelte.ts';

/** Lets the wire of a bench warm and cool in true time while its component is shown; call it while one is set up. */
export function runBench(bench: () => Bench): void {
	// the browser's frames
	$effect(() => {
		const { isOn, isMoving } = bench();
		if (prefersReducedMotion.current || (!isOn && !isMoving)) return;
		let last = performance.now();
		let frame = requestAnimationFrame(function tick(now) {
			// a page that was hidden does not owe the wire the whole time
			bench().advance(Math.min(0.25, Math.max(0, (now - last) / 1000)));
			last = now;
			frame = requestAnimationFrame(tick);
		});
		return () => cancelAnimationFrame(frame);
	});
}
