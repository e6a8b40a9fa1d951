/**
 * Whose pace the times are for, and the timing of a speaker against a stopwatch. The run of remarks and what is learned
 * of them are values that know no Swing; time is a parameter.
 */
@NullMarked
package crowdline.console.pace;

import org.jspecify.annotations.NullMarked;
