/**
 * A flight to practise on: what is asked before it, the sky while it is flown, and what is said of it afterwards.
 */
@NullMarked
package crowdline.console.practice;

import org.jspecify.annotations.NullMarked;
