// The stretch line as a test finds it on the page.

export const phone = { viewport: { width: 360, height: 740 } };
export const handle = (page) => page.getByRole('slider', { name: 'Stitches a round' });
export const countNow = async (page) => Number(await handle(page).getAttribute('aria-valuenow'));

/** Where the marker and the scale are now. */
export const line = (page) =>
  page.evaluate(() => {
    const shown = [...document.querySelectorAll('[data-stretch]')].find((one) =>
      one.checkVisibility(),
    );
    const [from, to, left, right, width] = shown.dataset.stretch.split(' ').map(Number);
    const box = shown.getBoundingClientRect();
    const unit = box.width / width;
    const bead = shown.querySelector('.bead').getBoundingClientRect();
    return {
      from,
      to,
      perMm: ((right - left) * unit) / (to - from),
      x: bead.left + bead.width / 2,
      y: bead.top + bead.height / 2,
      girths: shown.querySelector('[data-handle]').dataset.girths.split(' ').map(Number),
    };
  });

export const openFiner = (page) => page.locator('.finer > summary').click();
