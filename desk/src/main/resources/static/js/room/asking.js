// @ts-check
// Waits until the seat may move to this tablet.

const EVERY = 3000;

setInterval(async () => {
  try {
    const answer = await fetch(location.href, { cache: 'no-store', redirect: 'follow' });
    if (answer.status !== 409) location.reload();
  } catch {
    // Without a network it asks again by and by.
  }
}, EVERY);
