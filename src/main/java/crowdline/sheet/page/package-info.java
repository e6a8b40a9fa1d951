/** Pages as data, how they are filled, and how they become paper and PDF. Lengths are points, 72 to the inch. */
@NullMarked
package crowdline.sheet.page;

import org.jspecify.annotations.NullMarked;
