/**
 * The Walk through place: pilot and commentator go through an act on the ground, with the prediction or a pass flown on
 * the screen, time a pass by key, and practise what is to be said.
 */
@NullMarked
package crowdline.console.walk;

import org.jspecify.annotations.NullMarked;
