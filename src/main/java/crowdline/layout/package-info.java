/**
 * Lays out an act: from figures wanted in an order to figures flown one after another, with what a pilot flies between
 * them.
 */
@NullMarked
package crowdline.layout;

import org.jspecify.annotations.NullMarked;
