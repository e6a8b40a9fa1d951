/**
 * Painting text, shapes and bars in user space with doubles: what every screen is made of.
 */
@NullMarked
package crowdline.console.paint;

import org.jspecify.annotations.NullMarked;
