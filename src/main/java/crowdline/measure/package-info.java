/**
 * What a number is, wherever it comes from: its unit, what it must be, how wide a band around it is, and where a moment lies
 * among others.
 *
 * <p>Feet, knots and miles become metres here and nowhere else, and become themselves again.
 */
@NullMarked
package crowdline.measure;

import org.jspecify.annotations.NullMarked;
