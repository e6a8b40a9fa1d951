/** One figure: what it is asked to be, the elements it is flown with, what is said in it and what there is to see. */
@NullMarked
package crowdline.show.figure;

import org.jspecify.annotations.NullMarked;
