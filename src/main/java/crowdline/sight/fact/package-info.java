/**
 * Facts that a crowd can picture, made of what it sees and hears: how high, how fast, how long, how heavy the pilot feels.
 *
 * <p>Everything here is predicted, for commentary only. A load says nothing about a pilot's health.
 */
@NullMarked
package crowdline.sight.fact;

import org.jspecify.annotations.NullMarked;
