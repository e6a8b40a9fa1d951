/**
 * What the crowd sees and hears: where to look, the sun, the delay of sound, and the words for it.
 *
 * <p>The crowd stands on the crowd line in front of the datum, at y = −crowdToLineM of the display frame (X right along
 * the A-axis, Y away, Z up), and looks straight out, along Y. Angles are degrees, right of straight out and above the
 * horizon positive. Twelve o'clock is straight out from the crowd line, three o'clock along it to the right. So a place
 * 200 m right of the datum, on a display line 200 m off, lies 45° to the right. The height of the eye is left out.
 *
 * <p>Everything here is predicted, for commentary only.
 */
@NullMarked
package crowdline.sight;

import org.jspecify.annotations.NullMarked;
