// @ts-check
// Colours of a screen as WCAG 2.2 measures them. The server has the same in tamabako.showing.safety.

const LINEAR = Array.from({ length: 256 }, (_, i) => {
  const part = i / 255;
  return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
});

/** The linear light of one of the three parts. @param {number} rgb @param {number} shift */
const light = (rgb, shift) => LINEAR[(rgb >> shift) & 255] ?? 0;

/** Relative luminance of 0xRRGGBB, 0 to 1. @param {number} rgb */
export const luminance = (rgb) => 0.2126 * light(rgb, 16) + 0.7152 * light(rgb, 8) + 0.0722 * light(rgb, 0);

/** Whether a colour is a saturated red, which may not flash. @param {number} rgb */
export function isSaturatedRed(rgb) {
  const all = light(rgb, 16) + light(rgb, 8) + light(rgb, 0);
  return all > 0 && light(rgb, 16) / all >= 0.8;
}
