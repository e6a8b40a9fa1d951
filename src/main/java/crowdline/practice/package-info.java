/** Flights to practise on, which do not keep to the plan, and what became of them. */
@NullMarked
package crowdline.practice;

import org.jspecify.annotations.NullMarked;
