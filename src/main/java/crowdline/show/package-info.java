/** What a show is: records, validation and the figure catalogue. No input or output. */
@NullMarked
package crowdline.show;

import org.jspecify.annotations.NullMarked;
