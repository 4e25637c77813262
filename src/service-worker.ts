/// <reference types="@sveltejs/kit" />
/// <reference no-default-lib="true" />
/// <reference lib="esnext" />
/// <reference lib="webworker" />
import { base, build, files, prerendered, version } from '$service-worker';

// Keeps the whole site on the device: one cache for each version, so that pages and scripts always fit together.
declare const self: ServiceWorkerGlobalScope;

const cacheName = `ohm-to-ember ${version}`;
const olderFaceFormat = /\.(woff|ttf|eot)$/;
const readmePicture = /\/pictures\//;
const needed = [
	...build.filter((path) => !olderFaceFormat.test(path)),
	...files.filter((path) => !readmePicture.test(path)),
	...prerendered,
];
// only pages with facts from the build have these, and a host may name its missing page otherwise
const wanted = [...prerendered.map((path) => `${path.replace(/\/?$/, '/')}__data.json`), `${base}/404.html`];

async function fill(): Promise<void> {
	const cache = await caches.open(cacheName);
	await cache.addAll(needed);
	await Promise.allSettled(wanted.map((path) => cache.add(path)));
}

async function dropOlder(): Promise<void> {
	const names = await caches.keys();
	await Promise.all(names.filter((name) => name !== cacheName).map((name) => caches.delete(name)));
	await self.clients.claim();
}

async function answer(request: Request): Promise<Response> {
	const cache = await caches.open(cacheName);
	const kept = await cache.match(request, { ignoreSearch: true });
	if (kept) return kept;
	if (request.mode !== 'navigate') return fetch(request);
	const url = new URL(request.url);
	const page = url.pathname.endsWith('/') ? undefined : await cache.match(`${url.pathname}/`);
	// a redirect, not the page itself: its relative links count from the address with the slash
	if (page) return Response.redirect(`${url.pathname}/${url.search}`);
	try {
		return await fetch(request);
	} catch {
		return (await cache.match(`${base}/404.html`)) ?? Response.error();
	}
}

self.addEventListener('install', (event) => event.waitUntil(fill()));
self.addEventListener('activate', (event) => event.waitUntil(dropOlder()));
self.addEventListener('fetch', (event) => {
	const { request } = event;
	if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
	event.respondWith(answer(request));
});
