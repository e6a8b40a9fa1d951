/** The threads of the running show: the desk and its journal, the aircraft, and where its positions come from. */
@NullMarked
package crowdline.running;

import org.jspecify.annotations.NullMarked;
